import type { Machine } from "./procedure.ts";

/** How many a thing is: the pieces of a part, the screws of a set; 1 of what is not known. */
export const piecesOf = (id: string, { parts, fasteners }: Pick<Machine, "parts" | "fasteners">): number =>
  (parts.get(id) ?? fasteners.get(id))?.count ?? 1;
