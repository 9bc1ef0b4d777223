/** A module as evidence refers to it, with the digests of what trainees are given. Only for programmes that keep records. */
import { portable } from "../engine/competency/libraries.ts";
import type { Release, ReleaseCard, ReleasedPractice, ReleasedQuiz } from "../engine/competency/release.ts";
import {
  asJson,
  digestOfContent,
  digestOfPractice,
  digestOfQuiz,
  digestOfRun,
} from "../engine/competency/release-digests.ts";
import type { SignOffRules } from "../engine/competency/rules.ts";
import { packProcedure } from "../engine/procedure/packed.ts";
import { performingPrecedence } from "../engine/procedure/performing-graph.ts";
import type { Quiz } from "../engine/quiz/quiz.ts";
import type { Content } from "../model/content.ts";
import type { Module } from "../model/module.ts";
import type { Revisions } from "../model/released.ts";
import { remembered } from "../model/remembered.ts";
import type { ModuleView, Practice } from "../model/site.ts";
import { rulesFor } from "./rules.ts";

/** What of a module's view is released. */
export type Released = Pick<ModuleView, "module" | "quiz" | "practices">;

/** As the content stands. O(size of the module); not made twice of the same view. */
export function releaseOf(view: Released, { programme, hazards, sources }: Content): Release {
  const { path } = view.module;
  const named = view.module.hazards.map((hazard) => ({
    id: hazard,
    title: hazards.get(hazard)?.title ?? hazard,
  }));
  return releaseFrom(view, sources.get(path)!.text, JSON.stringify(named), programme.signOff);
}

/** `hazards` as JSON, so that it is the same for the same ones. */
const releaseFrom = remembered(
  ({ module, quiz, practices }: Released, text: string, hazards: string, asked: SignOffRules): Release => {
    const { id, title, summary, revision, needs, phases, asLeft } = module;
    const released = quiz && releasedQuiz(quiz.quiz);
    const release: Release = {
      ...{ module: id, title, summary, revision },
      content: digestOfContent(text, released?.digest, portable),
      needs,
      hazards: JSON.parse(hazards) as Release["hazards"],
      steps: module.procedure.steps.map(({ id: step, title: name, critical, check, phase }) => ({
        ...{ id: step, title: name, critical, check, phase },
      })),
      phases: [...phases].map(([phase, name]) => ({ id: phase, title: name })),
      asLeft,
      quiz: released,
      practices: practices.map((practice) => releasedPractice(practice, module)),
      run: releasedRun(module),
      rules: rulesFor(module, asked, quiz?.quiz),
    };
    return asJson(release) as unknown as Release;
  },
);

function releasedQuiz(quiz: Quiz): ReleasedQuiz {
  const supervised = quiz.supervised === true;
  return { digest: digestOfQuiz(quiz, portable), quiz: supervised ? undefined : quiz, supervised };
}

function releasedPractice({ id, title, graph, mixedIn }: Practice, { procedure }: Module): ReleasedPractice {
  const shown = new Set([...graph.steps, ...mixedIn]);
  const titles = procedure.steps
    .filter((step) => shown.has(step.id))
    .map((step) => [step.id, step.title] as const);
  return { id, title, digest: digestOfPractice({ title, graph, mixedIn, titles }, portable), graph, mixedIn };
}

function releasedRun({ procedure }: Module): Release["run"] {
  if (procedure.steps.length === 0) return undefined;
  const run = { precedence: performingPrecedence(procedure), procedure: packProcedure(procedure) };
  return { digest: digestOfRun(run, portable), ...run };
}

/** With the revisions that were released, and the present content among them. */
export function releaseCard(release: Release, released: Revisions | undefined): ReleaseCard {
  const { quiz, practices, run, ...rest } = release;
  return {
    ...rest,
    quiz: quiz && { digest: quiz.digest, supervised: quiz.supervised },
    practices: practices.map(({ id, title, digest }) => ({ id, title, digest })),
    run: run && { digest: run.digest },
    revisions: withPresent(release, released?.revisions ?? []),
  };
}

function withPresent(
  { revision, content }: Release,
  released: Revisions["revisions"],
): ReleaseCard["revisions"] {
  const known = released.find((one) => one.revision === revision) ?? { revision, content: [] };
  const present = { ...known, content: [...new Set([...known.content, content])] };
  return [...released.filter((one) => one.revision !== revision), present].sort(
    (a, b) => a.revision - b.revision,
  );
}
