/** Which paper the next sitting gets: by lot, or, where there is a record, as it follows from its owner's key. */
import { newSeed } from "../page/seed.ts";
import type { Sitting } from "./sitting.ts";

/** What draws a paper, and the number of its sitting. */
export type PaperOf = Pick<Sitting, "number" | "seed" | "preferred">;

export interface Papers {
  /** Of the next sitting; `number` and `preferred` are what this device alone would make of it. */
  next(number: number, preferred: readonly string[]): PaperOf;
  /** Whether a sitting that was kept may be gone on with. */
  fits(sitting: Sitting): boolean;
}

export const papersByLot: Papers = {
  next: (number, preferred) => ({ number, seed: newSeed(), preferred }),
  fits: () => true,
};
