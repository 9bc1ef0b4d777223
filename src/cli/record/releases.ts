/** The releases of a content folder: as it stands now, and as they were kept. */

import { soundGraph } from "../../derive/module.ts";
import { practicesOf } from "../../derive/practices.ts";
import { releaseOf } from "../../derive/release.ts";
import type { Release } from "../../engine/competency/release.ts";
import type { Content } from "../../model/content.ts";

/** Of every module as it stands; without what only pages need. Expects sound content. */
export function presentReleases(content: Content): Release[] {
  return [...content.modules.values()].map((module) => {
    const practices = practicesOf(module, soundGraph(module));
    return releaseOf({ module, quiz: content.quizzes.get(module.id), practices }, content);
  });
}
