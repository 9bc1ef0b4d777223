import type { z } from "zod";
import type { Revisions } from "../../model/released.ts";
import type { Source } from "../../model/source.ts";
import type * as schema from "../schema/revisions.ts";

export const makeRevisions = (
  { id, path }: Source,
  { revisions }: z.output<typeof schema.revisions>,
): Revisions => ({ module: id, path, revisions });
