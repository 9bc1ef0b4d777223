/** Of what a module needs, what is learned last: the rest of it is needed by that already. */
import type { ModuleCard } from "../../src/model/site.ts";

/** A function from a card to those of its needs that no other of them leads over. O(modules × needs) for all. */
export function lastNeedsAmong(cards: ReadonlyMap<string, ModuleCard>): (card: ModuleCard) => string[] {
  const known = new Map<string, ReadonlySet<string>>();
  const before = (id: string): ReadonlySet<string> => {
    const found = known.get(id);
    if (found !== undefined) return found;
    const ids = new Set<string>();
    known.set(id, ids);
    for (const need of cards.get(id)?.needs ?? []) for (const each of [need, ...before(need)]) ids.add(each);
    return ids;
  };
  return ({ needs }) => needs.filter((id) => !needs.some((other) => other !== id && before(other).has(id)));
}
