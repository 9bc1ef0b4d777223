/** Does work with as many hands as there are cores. */
import { availableParallelism } from "node:os";

/** Each picture of twelve million pixels takes some 100 MB while it is made. */
const mostHands = 8;

export const handsHere = (): number => Math.min(availableParallelism(), mostHands);

/** Results in the order of the items. Rejects when all that was begun has ended, if one failed. */
export async function pooled<Item, Result>(
  items: readonly Item[],
  hands: number,
  work: (item: Item) => Promise<Result>,
): Promise<Result[]> {
  const results: Result[] = [];
  let next = 0;
  const hand = async (): Promise<void> => {
    while (next < items.length) {
      const at = next++;
      results[at] = await work(items[at]!);
    }
  };
  const all = Array.from({ length: Math.min(hands, items.length) }, hand);
  await Promise.allSettled(all);
  await Promise.all(all);
  return results;
}
