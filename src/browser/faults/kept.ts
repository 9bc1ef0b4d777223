/** What went wrong on the pages of a module, as it is kept in the browser for the list of faults to go over. */
import type { Go } from "../../engine/review/faults.ts";
import type { Kept, See } from "../../model/page-data.ts";
import { fieldsOf, type Store, storeAt } from "../page/store.ts";

/** A question or step in words, as it was when it went wrong. */
export interface FaultWords {
  readonly text: string;
  /** What to read again; its link is that of the page on which it went wrong. */
  readonly see: See | undefined;
  /** What was wrong, in sentences. */
  readonly notes: readonly string[];
}

/** A quiz, a practice or a dry run. */
export interface KeptPlace {
  readonly title: string;
  /** In order, each with what tells it from others. */
  readonly goes: readonly (readonly [key: string, go: Go])[];
  /** By the ids of what was missed. */
  readonly words: ReadonlyMap<string, FaultWords>;
}

/** By "quiz", "dry-run" or "practice:" and its id. */
export type Places = ReadonlyMap<string, KeptPlace>;

/** A fresh one each time, for pages in other windows keep there as well. */
export const faultsStore = ({ module, revision }: Kept): Store => storeAt(`faults:${module}@${revision}`);

/** As JSON. */
export function keepPlaces(places: Places): unknown {
  return [...places].map(([where, { title, goes, words }]) => [where, { title, goes, words: [...words] }]);
}

/** Reads what was kept; what can't be read counts for nothing. */
export function readPlaces(kept: unknown): Map<string, KeptPlace> {
  return new Map(
    pairs(kept).map(([where, place]) => {
      const { title, goes, words } = fieldsOf(place);
      return [
        where,
        {
          title: typeof title === "string" ? title : where,
          goes: pairs(goes).map(([key, go]) => [key, readGo(go)] as const),
          words: new Map(pairs(words).map(([id, each]) => [id, readWords(id, each)])),
        },
      ];
    }),
  );
}

function readGo(kept: unknown): Go {
  const { asked, missed, critical } = fieldsOf(kept);
  return { asked: texts(asked), missed: texts(missed), critical: texts(critical) };
}

function readWords(id: string, kept: unknown): FaultWords {
  const { text, see, notes } = fieldsOf(kept);
  const { href, text: name } = fieldsOf(see);
  const isSee = typeof href === "string" && typeof name === "string";
  return {
    text: typeof text === "string" ? text : id,
    see: isSee ? { href, text: name } : undefined,
    notes: texts(notes),
  };
}

const pairs = (value: unknown): [string, unknown][] =>
  Array.isArray(value)
    ? value.filter(
        (pair): pair is [string, unknown] =>
          Array.isArray(pair) && pair.length === 2 && typeof pair[0] === "string",
      )
    : [];

const texts = (value: unknown): string[] =>
  Array.isArray(value) ? value.filter((one) => typeof one === "string") : [];
