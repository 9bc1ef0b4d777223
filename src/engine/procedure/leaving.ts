/** Whether work may be left as it stands: nothing wet, under tension or loose that must not be left so. */
import type { Machine, Step } from "./procedure.ts";
import { relationsOf } from "./relations.ts";
import type { Tray } from "./tray.ts";

/** How a fastener set may be loose: some of it slack, some of it out. */
export type Loose = "slack" | "out";

/** What the module says must never be left so, whoever comes back to it and when. */
export interface NeverLeft {
  /** Parts that must not be left off the machine, such as the lid of a spring barrel. */
  readonly parts: ReadonlySet<string>;
  readonly fasteners: ReadonlyMap<string, readonly Loose[]>;
  /** Values in which a state must not be left, by state. */
  readonly states: ReadonlyMap<string, readonly string[]>;
}

/** What a step does to what it works on: wets it with what has to dry, or leaves it dry. */
export type Dampness = "wets" | "dries" | undefined;

export type Unsafe =
  | { readonly kind: "state"; readonly state: string; readonly value: string }
  | { readonly kind: "open"; readonly part: string }
  | { readonly kind: "loose"; readonly set: string; readonly how: Loose; readonly count: number }
  /** `since` is the step that wetted it. */
  | { readonly kind: "wet"; readonly target: string; readonly since: string };

/**
 * What is unsafe to be left after each step. `trays` are those of the steps. Wet is a part or set that a step wetted as long
 * as no step dries it and none waits: any wait dries whatever is wet, that of the step itself too, for it goes on while
 * nobody is there. A place is open where a part must not be left off and no part that takes its place is on. A slack screw
 * counts as long as something hangs by it: a part that it holds is in its place, on the machine or in an assembly on the bench.
 * O(steps · (parts + sets + states)).
 */
export function unsafeAfter<S extends Step>(
  machine: Machine,
  steps: readonly S[],
  trays: readonly Tray[],
  neverLeft: NeverLeft,
  dampness: (step: S) => Dampness,
): Unsafe[][] {
  const watch = watchOf(machine, neverLeft);
  const wet = new Map<string, string>();
  return steps.map((step, index) => {
    soak(step, dampness(step), wet);
    const inTray = unsafeIn(trays[index]!, neverLeft, watch);
    return [...inTray, ...[...wet].map(([target, since]): Unsafe => ({ kind: "wet", target, since }))];
  });
}

function soak(step: Step, dampness: Dampness, wet: Map<string, string>): void {
  for (const { kind, target } of step.acts) {
    if (kind !== "work") continue;
    if (dampness === "wets") wet.set(target, step.id);
    if (dampness === "dries") wet.delete(target);
  }
  if (step.wait > 0) wet.clear();
}

interface Watch {
  /** For each part that must not be left off, all that may stand in its place. */
  readonly families: ReadonlyMap<string, readonly string[]>;
  /** For each set that must not be left loose, the parts that it holds. */
  readonly held: ReadonlyMap<string, readonly string[]>;
}

/** Most machines have nothing to be watched, and need no relations for it. */
function watchOf(machine: Machine, { parts, fasteners }: NeverLeft): Watch {
  if (parts.size + fasteners.size === 0) return { families: new Map(), held: new Map() };
  const { isReplacement, heldBy } = relationsOf(machine);
  const others = (part: string) => [...machine.parts.keys()].filter((other) => isReplacement(part, other));
  return {
    families: new Map([...parts].map((part) => [part, [part, ...others(part)]])),
    held: new Map([...fasteners.keys()].map((set) => [set, heldBy(set)])),
  };
}

function unsafeIn(tray: Tray, neverLeft: NeverLeft, { families, held }: Watch): Unsafe[] {
  const hangs = (set: string): boolean => {
    const parts = held.get(set)!;
    return parts.length === 0 || parts.some((part) => !tray.parts.has(part));
  };
  return [
    ...[...neverLeft.states].flatMap(([state, values]): Unsafe[] => {
      const value = tray.states.get(state) ?? "";
      return values.includes(value) ? [{ kind: "state", state, value }] : [];
    }),
    ...[...families].flatMap(([part, family]): Unsafe[] =>
      family.every((one) => tray.parts.has(one)) ? [{ kind: "open", part }] : [],
    ),
    ...[...neverLeft.fasteners].flatMap(([set, ways]) =>
      ways.flatMap((how): Unsafe[] => {
        const count = tray.sets.get(set)?.[how] ?? 0;
        return count > 0 && (how === "out" || hangs(set)) ? [{ kind: "loose", set, how, count }] : [];
      }),
    ),
  ];
}
