/** `revisions.yaml` of a module, as the tool writes it. */
import { stringify } from "yaml";
import type { AcceptedRevision } from "../../engine/competency/release.ts";
import { revisionsPath } from "../../model/released.ts";
import { writeWhole } from "../write-whole.ts";

/** Gives the file's path in the content folder. */
export const writeRevisions = (
  folder: string,
  module: string,
  revisions: readonly AcceptedRevision[],
): string =>
  writeWhole(
    folder,
    revisionsPath(module),
    `# Written by benchwright record release. A sign-off counts as long as the content that it names is listed here.\n${stringify({ revisions })}`,
  );
