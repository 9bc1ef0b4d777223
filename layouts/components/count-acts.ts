/** How many of a fastener set each act of a step moves, where the step itself says "all". */
import { fastenerActs } from "../../src/engine/procedure/fastener-acts.ts";
import type { Act } from "../../src/engine/procedure/procedure.ts";
import type { Tray } from "../../src/engine/procedure/tray.ts";

/** How many each act moves; undefined for acts on parts and for work. */
export function countActs(list: readonly Act[], before: Tray): (number | undefined)[] {
  const sets = new Map(before.sets);
  return list.map(({ kind, target, count }) => {
    const counts = sets.get(target);
    if (counts === undefined || kind === "work") return count;
    const { there, done } = fastenerActs[kind];
    const moved = count ?? there(counts);
    sets.set(target, done(counts, moved));
    return moved;
  });
}
