/** How far a module's text has come, for its title block. */
import type { Release } from "../engine/competency/release.ts";
import type { Content } from "../model/content.ts";
import { isDraft } from "../model/draft.ts";
import type { Module } from "../model/module.ts";
import type { Status } from "../model/site.ts";

/** `release` is of the content as it stands; undefined where the programme keeps no records. */
export function statusOf(module: Module, release: Release | undefined, content: Content): Status | undefined {
  if (isDraft(module)) return "draft";
  const kept = content.revisions.get(module.id)?.revisions;
  // A programme without mentors need not release anything.
  if (release === undefined || (kept === undefined && content.programme.mentors.length === 0))
    return undefined;
  const known = kept?.find(({ revision }) => revision === release.revision);
  return known?.content.includes(release.content) === true ? "released" : "not released";
}
