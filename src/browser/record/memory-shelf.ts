/** Keeps a record until the page is left. */
import { inOrder } from "../../engine/competency/merge.ts";
import { beginning, type Kept, NotEmpty, OtherOwner, type Shelf } from "./shelf.ts";

export function memoryShelf(): Shelf {
  let kept: Kept | undefined;
  const of = (owner: string): Kept => {
    if (kept?.owner.did !== owner) throw new OtherOwner();
    return kept;
  };
  return {
    read: async () => kept,
    async begin(owner) {
      kept ??= { ...beginning(owner), events: [] };
      return kept;
    },
    async add(owner, events) {
      const before = of(owner);
      kept = { ...before, events: inOrder([...before.events, ...events]) };
    },
    async change(owner, change) {
      kept = { ...of(owner), ...change };
    },
    async replace(owner, by) {
      const before = of(owner);
      if (before.events.length > 0) throw new NotEmpty();
      kept = { ...before, owner: by };
    },
    async erase() {
      kept = undefined;
    },
  };
}
