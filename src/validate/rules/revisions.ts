/** What was released of a module: in order, and the present content among it once mentors may sign for it. */
import { portable } from "../../engine/competency/libraries.ts";
import { digestOfContent, digestOfQuiz } from "../../engine/competency/release-digests.ts";
import type { Quiz } from "../../engine/quiz/quiz.ts";
import type { Content } from "../../model/content.ts";
import { isDraft } from "../../model/draft.ts";
import type { Module } from "../../model/module.ts";
import type { Revisions } from "../../model/released.ts";
import { remembered } from "../../model/remembered.ts";
import type { Reporter } from "../reporter.ts";
import { hasErrors } from "./advice.ts";
import { inFile, moduleRule } from "./rule.ts";

export const revisions = moduleRule("revisions", (module, content, reporter) => {
  const released = content.revisions.get(module.id);
  if (released !== undefined) checkOrder(module, released, content, reporter);
  const { identifier, mentors } = content.programme;
  if (identifier === undefined || mentors.length === 0 || hasErrors(module, reporter)) return;
  // Nobody may sign for what is still to be written; releasing it is no advice.
  if (isDraft(module)) return;
  const known = released?.revisions.find(({ revision }) => revision === module.revision);
  if (known?.content.includes(presentDigest(module, content))) return;
  const words =
    known === undefined
      ? `revision ${module.revision} is not released`
      : `what stands here is not what was released as revision ${module.revision}`;
  reporter.report("revision-unreleased", inFile(content, module, ["revision"]), words);
});

function checkOrder(module: Module, released: Revisions, content: Content, reporter: Reporter): void {
  for (const [index, { revision }] of released.revisions.entries()) {
    const before = released.revisions[index - 1]?.revision ?? 0;
    const spot = inFile(content, released, ["revisions", index, "revision"]);
    if (revision <= before)
      reporter.report("revision-order", spot, `revision ${revision} stands after revision ${before}`);
    else if (revision > module.revision)
      reporter.report(
        "revision-order",
        spot,
        `revision ${revision} was released, and the module is at ${module.revision}`,
      );
  }
}

function presentDigest({ id, path }: Module, { sources, quizzes }: Content): string {
  const quiz = quizzes.get(id)?.quiz;
  return digestOfContent(sources.get(path)!.text, quiz && quizDigest(quiz), portable);
}

const quizDigest = remembered((quiz: Quiz) => digestOfQuiz(quiz, portable));
