/** Where the number and the seed of a sitting come from: by lot, or, where there is a record, from its owner's key. */
import { newSeed } from "../page/seed.ts";
import type { Sitting } from "./sitting.ts";

export interface Seeds {
  /** The number of the next sitting, which is at least this. */
  next(number: number): number;
  seedOf(number: number): string;
  /** Whether a sitting that was kept may be gone on with. */
  fits(sitting: Sitting): boolean;
}

export const seedsByLot: Seeds = {
  next: (number) => number,
  seedOf: () => newSeed(),
  fits: () => true,
};
