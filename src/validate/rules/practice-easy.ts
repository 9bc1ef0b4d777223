/** A practice that is put right by lot too often says little of who has put it right. */
import { type Luck, luckOf, strayCount } from "../../engine/procedure/luck.ts";
import type { Module } from "../../model/module.ts";
import { type PracticeSteps, practiceSteps } from "../../model/practice.ts";
import { adviceRule, spotOfPractice } from "./advice.ts";
import { canFail } from "./practice-cannot-fail.ts";

/** One in twenty, as the trade of testing takes it for chance (R. A. Fisher, Statistical Methods, 1925, from memory). */
const most = 0.05;

export const practiceEasy = adviceRule("easy practices", (module, graph, content, reporter) => {
  for (const practice of practiceSteps(module)) {
    const others = othersOf(practice, module);
    // With all steps of the module in it already there is nothing that would mend it.
    if (others === 0 || !canFail(practice, graph)) continue;
    const luck = luckOf(graph, practice.steps, practice.mixedIn.length);
    if (luck === null || luck.chance <= most) continue;
    const spot = spotOfPractice(practice, module, content);
    reporter.report("practice-easy", spot, found(practice, luck), undefined, mend(practice, luck, others));
  }
});

const othersOf = ({ steps, mixedIn }: PracticeSteps, module: Module): number =>
  module.procedure.steps.length - steps.length - mixedIn.length;

function found({ title }: PracticeSteps, { orders, lots, chance }: Luck): string {
  const percent = (chance * 100).toLocaleString("en", { maximumSignificantDigits: 2 });
  return `"${title}" is put right by lot in ${orders} of ${lots} cases (${percent} %); more than ${most * 100} % shows little`;
}

function mend({ steps, mixedIn, chosen }: PracticeSteps, { orders }: Luck, others: number): string {
  const have = mixedIn.length;
  const needed = strayCount(orders, steps.length, have + others, most);
  const more = needed === null ? "" : `, or mix in ${needed - have} more that do not belong (mixed-in:)`;
  return chosen === undefined
    ? `Join the phase to another, or choose what is put in order under practices: and ask for more steps with it${more}.`
    : `Ask for more steps with it${more}.`;
}
