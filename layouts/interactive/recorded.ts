/** What a page's script needs to write into the record; nothing where the programme keeps none. */
import { portable } from "../../src/engine/competency/libraries.ts";
import type { Digest } from "../../src/engine/competency/release.ts";
import { digestOfPractice, digestOfQuiz, digestOfRun } from "../../src/engine/competency/release-digests.ts";
import type { Quiz } from "../../src/engine/quiz/quiz.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Module } from "../../src/model/module.ts";
import type { DryRunData, QuizData, Recorded } from "../../src/model/page-data.ts";
import type { Programme } from "../../src/model/programme.ts";
import type { Practice } from "../../src/model/site.ts";

/** Undefined where the programme keeps no records. */
export function recordedOn({ identifier }: Programme, from: Address): Recorded | undefined {
  if (identifier === undefined) return undefined;
  return { programme: identifier, href: linkTo(from, { kind: "plain", id: "record" }) };
}

/** The scripts of a page on which things are done: the recorder first, where there is one to be. */
export const scriptsOf = ({ identifier }: Programme, script: string): string[] =>
  identifier === undefined ? [script] : ["recorder", script];

export function recordedQuiz(quiz: Quiz, programme: Programme, from: Address): QuizData["record"] {
  const recorded = recordedOn(programme, from);
  return recorded && { ...recorded, digest: digestOfQuiz(quiz, portable) };
}

export function recordedRun(
  run: Pick<DryRunData, "precedence" | "procedure">,
  programme: Programme,
  from: Address,
): DryRunData["record"] {
  const { precedence, procedure } = run;
  const recorded = recordedOn(programme, from);
  return recorded && { ...recorded, digest: digestOfRun({ precedence, procedure }, portable) };
}

/** The titles are those of all steps shown, in the written order. */
export function practiceDigest(
  { title, graph, mixedIn }: Practice,
  { procedure }: Module,
  { identifier }: Programme,
): Digest | undefined {
  if (identifier === undefined) return undefined;
  const shown = new Set([...graph.steps, ...mixedIn]);
  const steps = procedure.steps.filter(({ id }) => shown.has(id));
  const titles = steps.map((step) => [step.id, step.title] as const);
  return digestOfPractice({ title, graph, mixedIn, titles }, portable);
}
