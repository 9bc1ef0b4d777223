/** What a module asks before it is signed for. */
import type { SignOffRules } from "../engine/competency/rules.ts";
import { strictest } from "../engine/competency/rules-of.ts";
import type { Quiz } from "../engine/quiz/quiz.ts";
import type { Module } from "../model/module.ts";

/** `asked` are the programme's rules. The pass mark is the highest of the programme's rule, the module's and the quiz's own. */
export function rulesFor(
  { signOff }: Pick<Module, "signOff">,
  asked: SignOffRules,
  quiz: Pick<Quiz, "pass"> | undefined,
): SignOffRules {
  const rules = strictest(asked, signOff);
  return { ...rules, pass: Math.max(rules.pass, quiz?.pass ?? 0) };
}
