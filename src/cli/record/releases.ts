/** The modules of a content folder as releases. */
import { soundGraph } from "../../derive/module.ts";
import { practicesOf } from "../../derive/practices.ts";
import { releaseOf } from "../../derive/release.ts";
import type { Release } from "../../engine/competency/release.ts";
import { asJson } from "../../engine/competency/release-digests.ts";
import type { Content } from "../../model/content.ts";

/**
 * Of every module as it stands, with the keys of supervised quizzes: whoever holds the content folder marks those. Expects
 * sound content.
 */
export function presentReleases(content: Content): Release[] {
  return [...content.modules.values()].map((module) => {
    const quiz = content.quizzes.get(module.id);
    const release = releaseOf({ module, quiz, practices: practicesOf(module, soundGraph(module)) }, content);
    if (release.quiz?.supervised !== true) return release;
    return asJson({ ...release, quiz: { ...release.quiz, quiz: quiz?.quiz } }) as unknown as Release;
  });
}
