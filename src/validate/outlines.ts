/** What other files may name of each content file: all that rules need to know of modules of another share. */

import { rowOf } from "../model/address.ts";
import type { Content, ModuleQuiz, Outline } from "../model/content.ts";
import { placesOn } from "../model/link.ts";
import { resolvePath } from "../model/path.ts";
import type { Source } from "../model/source.ts";
import { handoverOf } from "./handover.ts";
import { looksLikeStep } from "./looks-like-step.ts";
import { defaultProgramme } from "./make/programme.ts";

type Items = Omit<Content, "outlines">;

export function outlinesOf(items: Items): Outline[] {
  return [...items.sources.values()].map((source) => outlineOf(source, items));
}

function outlineOf(source: Source, items: Items): Outline {
  const module = source.kind === "module" ? items.modules.get(source.id) : undefined;
  const figures = [module?.figure, ...(module?.procedure.steps ?? []).map(({ figure }) => figure)].flatMap(
    (figure) => (figure === undefined ? [] : [figure.file]),
  );
  const asked = source.kind === "quiz" ? picturesOf(items.quizzes.get(source.id)) : [];
  const shown = source.pictures.map(({ src }) => resolvePath(source.path, src));
  return {
    path: source.path,
    places: [...placesOn(source), ...[...(module?.procedure.fasteners.keys() ?? [])].map(rowOf)],
    hasAllPlaces: isWhole(source),
    pictures: [...shown, ...figures, ...asked].filter((path) => path !== undefined),
    needs: module?.needs ?? [],
    handover: module && handoverOf(module),
    isSound: isSound(source, items),
  };
}

const picturesOf = (quiz: ModuleQuiz | undefined): string[] =>
  quiz?.quiz.questions.flatMap((question) => (question.kind === "point" ? [question.figure.file] : [])) ?? [];

/** A step that can't be read may have any id, and a page that can't be read any place. */
const isWhole = ({ path, sections, otherBlocks }: Source): boolean =>
  (sections.length > 0 || path.endsWith(".yaml")) &&
  !otherBlocks.some(looksLikeStep) &&
  sections.every(({ steps }) => steps.every(({ value }) => value !== undefined));

/** The programme always has a stand-in; it is sound where it was made from its own file. */
function isSound({ kind, id }: Source, items: Items): boolean {
  if (kind === "programme") return items.programme !== defaultProgramme;
  return kind === "release" || kind === "words" || items[listOf[kind]].has(id);
}

const listOf = {
  tool: "tools",
  substance: "substances",
  hazard: "hazards",
  module: "modules",
  quiz: "quizzes",
  revisions: "revisions",
  withdrawals: "withdrawals",
} as const;
