/** Every place on a page has one name, and Markdown holds no HTML. */
import type { Content } from "../../model/content.ts";
import { anchorOf } from "../../model/link.ts";
import type { ProseToken, Section, Source } from "../../model/source.ts";
import type { Reporter } from "../reporter.ts";
import type { Rule } from "./rule.ts";

export const headings: Rule = {
  name: "headings",
  check(content: Content, reporter: Reporter) {
    for (const source of content.sources.values()) {
      checkPlaces(source, reporter);
      for (const section of source.sections) checkHtml(source, section, reporter);
    }
  },
};

/** Two steps with one id are reported by the rule of duplicate ids. */
function checkPlaces(source: Source, reporter: Reporter): void {
  const seen = new Map<string, Section>();
  for (const section of source.sections) {
    const anchor = anchorOf(section);
    const first = seen.get(anchor);
    if (section.level === 0) continue;
    if (first === undefined) seen.set(anchor, section);
    else if (first.steps.length === 0 || section.steps.length === 0) {
      const other = { source, offset: first.offset, message: "the first one stands here" };
      reporter.report(
        "duplicate-id",
        { source, offset: section.offset },
        `two headings of this page are the place "${anchor}"`,
        other,
      );
    }
  }
}

const tag = /<\/?[a-z][a-z0-9-]*(\s[^<>]*)?\/?>/i;

function checkHtml(source: Source, section: Section, reporter: Reporter): void {
  const text = section.prose
    .flatMap((token) => token.children ?? [])
    .find((child: ProseToken) => child.type === "text" && tag.test(child.content));
  if (text === undefined) return;
  const found = tag.exec(text.content)![0];
  const offset = Math.max(section.offset, source.text.indexOf(found, section.offset));
  reporter.report("raw-html", { source, offset }, `"${found.slice(0, 60)}" looks like HTML`);
}
