/** Where a thing is at a moment: in which assemblies it lies, and under which covers. */
import type { ActKind } from "./procedure.ts";
import type { Relations } from "./relations.ts";

export interface Place {
  /** The assemblies, inmost first, as far as the first that is off the machine; of a set, the parts that it holds too. */
  readonly lies: ReadonlySet<string>;
  /** The covers that hide it when they are on. */
  readonly under: ReadonlySet<string>;
}

/**
 * The place of a part or set when an act is done to it, given the parts that are off. A part on the bench lies in nothing
 * and under nothing; one in an assembly on the bench is under no cover left behind on the machine. A part being refitted
 * counts as on: it is the place where it goes that matters. O(depth · covers).
 */
export function placeOfAct(
  kind: ActKind,
  target: string,
  relations: Relations,
  off: ReadonlySet<string>,
): Place {
  const isOn = (part: string): boolean => !off.has(part) || (kind === "refit" && part === target);
  const isPart = relations.part(target) !== undefined;
  const reaches = (isPart ? [target] : relations.heldBy(target)).map((part) =>
    reach(relations.chain(part), isOn),
  );
  const standing = reaches.flatMap(({ on }) => on);
  // A cover may hide a set alone, wherever something stands that it holds; where it holds nothing, the machine itself stands.
  const covered = !isPart && (standing.length > 0 || reaches.length === 0) ? [...standing, target] : standing;
  return {
    lies: new Set(reaches.flatMap(({ through }) => (isPart ? through.slice(1) : through))),
    under: new Set(
      relations
        .coversOf(target)
        .filter((cover) => covered.some((thing) => relations.coveredBy(cover).has(thing))),
    ),
  };
}

/** Of a chain of assemblies, inmost first: those that are on before the first that is off; and these with that one. */
function reach(chain: readonly string[], isOn: (part: string) => boolean) {
  const firstOff = chain.findIndex((part) => !isOn(part));
  const on = firstOff < 0 ? chain : chain.slice(0, firstOff);
  return { on, through: firstOff < 0 ? chain : chain.slice(0, firstOff + 1) };
}
