/** Safety messages stand before the step, as data, and not in words that are read when it is done. */
import type { ModuleStep } from "../../model/module.ts";
import type { Section, Source } from "../../model/source.ts";
import type { Reporter } from "../reporter.ts";
import { inStep, type Rule } from "./rule.ts";

/** "WARNING: …", "**Caution** …", and a heading that is the word alone. English only. */
const word = "(?:danger|warning|caution|notice)";
const opening = RegExp(String.raw`^\W*${word}\b(?:\W*$|\s*[:!.–—-]|[*_]{1,3})`, "i");

export const messages: Rule = {
  name: "safety messages",
  check(content, reporter) {
    for (const module of content.modules.values()) {
      const source = content.sources.get(module.path)!;
      for (const section of module.sections) checkProse(source, section, reporter);
      for (const step of module.procedure.steps) {
        for (const [path, text] of readAfterwards(step)) {
          if (!opening.test(text)) continue;
          const found = `a safety message stands in what is read when the step is done: "${text.slice(0, 60)}"`;
          reporter.report("message-in-prose", inStep(content, module, step, path), found);
        }
      }
    }
  },
};

function checkProse(source: Source, section: Section, reporter: Reporter): void {
  if (opening.test(section.title)) {
    const found = `a heading begins a safety message: "${section.title.slice(0, 60)}"`;
    reporter.report("message-in-prose", { source, offset: section.offset }, found);
    return;
  }
  const inline = section.prose.find(({ type, content }) => type === "inline" && opening.test(content));
  if (inline === undefined) return;
  const start = source.text.indexOf(inline.content.slice(0, 40), section.offset);
  reporter.report(
    "message-in-prose",
    { source, offset: Math.max(section.offset, start) },
    `a safety message stands in the prose of "${section.title}": "${inline.content.slice(0, 60)}"`,
  );
}

/** What a step says that stands below its work on the page, by the place of each text in its block. */
function readAfterwards({ check, feel, mistakes, ifNot }: ModuleStep): [(string | number)[], string][] {
  return [
    ...one("check", check),
    ...one("feel", feel),
    ...mistakes.flatMap(({ mistake, result }, at) => [
      ...one(["mistakes", at, "mistake"], mistake),
      ...one(["mistakes", at, "result"], result),
    ]),
    ...ifNot.flatMap((remedy, at) => one(["if-not", at, "do"], remedy.do)),
  ];
}

const one = (at: string | (string | number)[], text: string | undefined): [(string | number)[], string][] =>
  text === undefined ? [] : [[[at].flat(), text]];
