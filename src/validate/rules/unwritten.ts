/** Words of a draft that still stand where the author's own belong: one warning for a step, one for what the module says of itself. */
import type { ModuleStep } from "../../model/module.ts";
import type { Section } from "../../model/source.ts";
import { isUnwritten, unwritten } from "../../model/unwritten.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

export const unwrittenWords = moduleRule("unwritten words", (module, content, reporter) => {
  const { title, summary, figure, sections, procedure } = module;
  const own = sections.filter(({ steps }) => steps.length === 0);
  const ofModule = unwrittenOf({
    title: [title],
    summary: [summary],
    "alt text": figure === undefined ? [] : [figure.alt],
    text: own.flatMap((section) => [section.title, ...textsOf(section)]),
  });
  if (ofModule.length > 0)
    reporter.report(
      "unwritten",
      inFile(content, module, ["summary"]),
      `the module is still a draft in its ${listed(ofModule)}`,
    );
  for (const step of procedure.steps) {
    const left = unwrittenOf(wordsOf(step));
    if (left.length > 0)
      reporter.report(
        "unwritten",
        inStep(content, module, step, ["id"]),
        `step "${step.id}" is still a draft in its ${listed(left)}`,
        undefined,
        `Write what is said to be “${unwritten}”.`,
      );
  }
});

const wordsOf = ({ title, figure, section }: ModuleStep) => ({
  title: [title],
  "alt text": figure === undefined ? [] : [figure.alt],
  text: textsOf(section),
});

const unwrittenOf = (words: Readonly<Record<string, readonly string[]>>): string[] =>
  Object.entries(words).flatMap(([name, texts]) => (texts.some(isUnwritten) ? [name] : []));

const textsOf = ({ prose }: Section): string[] =>
  prose.flatMap(({ type, content }) => (type === "inline" ? [content] : []));

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
