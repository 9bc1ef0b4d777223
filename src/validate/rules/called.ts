/** How messages speak of a part or fastener set: by id and name, with a verb that fits how many it is. */
import { piecesOf } from "../../engine/procedure/pieces.ts";
import type { Module } from "../../model/module.ts";

export interface Called {
  /** `"lid" (lid)`. */
  name(id: string): string;
  is(id: string): "is" | "are";
  /** `one` of a single thing, `many` of several screws or pieces. */
  agree<Word>(id: string, one: Word, many: Word): Word;
}

export function calledIn({ procedure: { parts, fasteners } }: Module): Called {
  const name = (id: string): string => `"${id}" (${(parts.get(id) ?? fasteners.get(id))?.name ?? id})`;
  const agree = <Word>(id: string, one: Word, many: Word): Word =>
    piecesOf(id, { parts, fasteners }) > 1 ? many : one;
  return { name, is: (id) => agree(id, "is", "are"), agree };
}
