/** Safety messages stand before the step, as data; their signal words mean what the standards say. */
import type { Section, Source } from "../../model/source.ts";
import type { Reporter } from "../reporter.ts";
import { inFile, type Rule } from "./rule.ts";

const signalInProse = /^\W*(danger|warning|caution|notice)\b\s*[:!.–—-]/i;
/** What happens to people; NOTICE is for damage (ANSI Z535.6, ISO 3864-2). English only. */
const harmToPeople =
  /\b(injur|burn|cut|wound|poison|blind|skin|eyes?\b|breath|lung|finger|hand\b|hands\b|scald|dizz|kill|death|hurt)/i;

export const messages: Rule = {
  name: "safety messages",
  check(content, reporter) {
    for (const source of content.sources.values()) {
      if (source.kind !== "module") continue;
      for (const section of source.sections) checkProse(source, section, reporter);
    }
    for (const hazard of content.hazards.values()) {
      if (hazard.signal !== "notice" || !harmToPeople.test(`${hazard.hazard} ${hazard.consequence}`))
        continue;
      reporter.report(
        "notice-injury",
        inFile(content, hazard, ["signal"]),
        `the signal word is notice, and the text speaks of harm to people ("${harmToPeople.exec(`${hazard.hazard} ${hazard.consequence}`)![0]}")`,
      );
    }
  },
};

function checkProse(source: Source, section: Section, reporter: Reporter): void {
  const inline = section.prose.find(({ type, content }) => type === "inline" && signalInProse.test(content));
  if (inline === undefined) return;
  const start = source.text.indexOf(inline.content.slice(0, 40), section.offset);
  reporter.report(
    "message-in-prose",
    { source, offset: Math.max(section.offset, start) },
    `a safety message stands in the prose of "${section.title}": "${inline.content.slice(0, 60)}"`,
  );
}
