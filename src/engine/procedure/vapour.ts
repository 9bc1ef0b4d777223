/** Whether vapour that can burn has gone before there is heat or a spark, or before it is shut in. */
import { placeOfAct } from "./place.ts";
import type { Act, Machine, Step } from "./procedure.ts";
import { type Relations, relationsOf } from "./relations.ts";
import { startingTray } from "./tray.ts";
import type { TreatmentOf } from "./treatment.ts";

export type VapourFault =
  /** Hot work while something is wet with what can burn; `since` is the step that wetted it, which may be the same. */
  | { readonly kind: "hot"; readonly step: string; readonly since: string }
  /** A cover is refitted over what is wet with it. */
  | {
      readonly kind: "shut-in";
      readonly step: string;
      readonly cover: string;
      readonly target: string;
      readonly since: string;
    };

/**
 * What is wrong with vapour that can burn, in the written order. A step that takes a flammable substance wets what it works
 * on, and its own place, until a step dries the thing or any step waits; one that dries what it works on wets nothing that
 * lasts, and is itself no place for hot work. O(steps · wet things · covers).
 */
export function vapourFaults<S extends Step>(
  machine: Machine,
  steps: readonly S[],
  treatmentOf: TreatmentOf<S>,
): VapourFault[] {
  const bench: Bench = {
    relations: relationsOf(machine),
    off: new Set(startingTray(machine).parts),
    wet: new Map(),
  };
  return steps.flatMap((step) => {
    const { flammable, dries, hotWork } = treatmentOf(step);
    const worked = step.acts.filter(({ kind }) => kind === "work").map(({ target }) => target);
    if (flammable && !dries) for (const target of [...worked, place]) bench.wet.set(target, step.id);
    if (dries) for (const target of [...worked, place]) bench.wet.delete(target);
    const faults = [
      ...(hotWork ? hotOver(step, flammable, bench) : []),
      ...step.acts.flatMap((act) => shutIn(step, act, bench)),
    ];
    if (step.wait > 0) bench.wet.clear();
    return faults;
  });
}

/** Stands for the place of a step, which the vapour is in whatever was worked on; no id is empty. */
const place = "";

interface Bench {
  readonly relations: Relations;
  readonly off: Set<string>;
  /** What is wet with something flammable, with the step that wetted it. */
  readonly wet: Map<string, string>;
}

function hotOver(step: Step, isFlammable: boolean, { wet }: Bench): VapourFault[] {
  const since = new Set([...wet.values(), ...(isFlammable ? [step.id] : [])]);
  return [...since].map((one) => ({ kind: "hot", step: step.id, since: one }));
}

/** Takes parts off and puts them on, as the walk does. */
function shutIn(step: Step, { kind, target }: Act, { relations, off, wet }: Bench): VapourFault[] {
  if (kind === "remove") off.add(target);
  if (kind !== "refit") return [];
  off.delete(target);
  return [...wet]
    .filter(([thing]) => thing !== place && placeOfAct("work", thing, relations, off).under.has(target))
    .map(([thing, since]) => ({ kind: "shut-in", step: step.id, cover: target, target: thing, since }));
}
