/** Words that agree with how many a thing is: a set of screws and a part of several pieces are many. */
import { t } from "../../words.ts";
import type { Relations } from "../relations.ts";

type Number = Pick<Relations, "isPlural">;

export const isOrAre = (id: string, { isPlural }: Number): string => (isPlural(id) ? t`are` : t`is`);
export const holdsOrHold = (id: string, { isPlural }: Number): string => (isPlural(id) ? t`hold` : t`holds`);
export const itOrThem = (id: string, { isPlural }: Number): string => (isPlural(id) ? t`them` : t`it`);

/** "the lid is still on: it covers the belt". */
export const stillOver = (cover: string, covered: string, { the, isPlural }: Relations): string =>
  isPlural(cover)
    ? t`${the(cover)} are still on: they cover ${the(covered)}`
    : t`${the(cover)} is still on: it covers ${the(covered)}`;
