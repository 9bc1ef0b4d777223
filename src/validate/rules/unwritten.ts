/** Words of a draft that still stand where the author's own belong: one warning for a step, one for what the module says of itself. */
import { sheetsOf } from "../../model/content.ts";
import { unwrittenIn, unwrittenOfSheet } from "../../model/draft.ts";
import { unwritten } from "../../model/unwritten.ts";
import { inFile, inStep, moduleRule, type Rule } from "./rule.ts";

export const unwrittenWords = moduleRule("unwritten words", (module, content, reporter) => {
  const left = unwrittenIn(module);
  if (left.module.length > 0)
    reporter.report(
      "unwritten",
      inFile(content, module, ["summary"]),
      `the module is still a draft in its ${listed(left.module)}`,
    );
  for (const [step, names] of left.steps)
    reporter.report(
      "unwritten",
      inStep(content, module, step, ["id"]),
      `step "${step.id}" is still a draft in its ${listed(names)}`,
      undefined,
      `Write your own in place of “${unwritten}” and of the sentences that something new begins with.`,
    );
});

export const unwrittenSheets: Rule = {
  name: "unwritten sheets",
  check(content, reporter) {
    for (const sheet of sheetsOf(content)) {
      const left = unwrittenOfSheet(sheet);
      if (left.length > 0)
        reporter.report(
          "unwritten",
          inFile(content, sheet, ["summary"]),
          `the sheet of this ${sheet.kind} is still a draft in its ${listed(left)}`,
        );
    }
  },
};

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
