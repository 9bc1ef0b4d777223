/** Random procedures whose written order walks clean: acts are drawn, and kept where the walk finds no fault. */
import fc from "fast-check";
import type {
  Act,
  ActKind,
  FastenerSet,
  Left,
  Part,
  Procedure,
  StateVariable,
  Step,
} from "../../../src/engine/procedure/procedure.ts";
import { faultsAtEnd, startWalk, walk } from "../../../src/engine/procedure/walk.ts";

export function emptyStep(id: string, change: Partial<Step> = {}): Step {
  return {
    id,
    title: id,
    acts: [],
    makes: new Map(),
    through: [],
    while: new Map(),
    after: new Map(),
    maySwap: new Map(),
    critical: false,
    time: 0,
    wait: 0,
    stop: false,
    ...change,
  };
}

export function act(kind: ActKind, target: string, count?: number): Act {
  return { kind, target, count };
}

export function part(id: string, change: Partial<Part> = {}): Part {
  return {
    id,
    name: id,
    count: 1,
    heldBy: new Map(),
    covers: [],
    in: undefined,
    replaces: undefined,
    onlyWhile: new Map(),
    keep: undefined,
    ...change,
  };
}

export function fastenerSet(id: string, count: number): FastenerSet {
  return { id, name: id, count, keep: undefined };
}

export function procedureOf(
  parts: readonly Part[],
  fasteners: readonly FastenerSet[],
  steps: readonly Step[],
  states: readonly StateVariable[] = [],
  leaves: ReadonlyMap<string, Left> = new Map(),
): Procedure {
  const byId = <Item extends { id: string }>(items: readonly Item[]) =>
    new Map(items.map((item) => [item.id, item]));
  return { parts: byId(parts), fasteners: byId(fasteners), states: byId(states), steps, leaves };
}

interface Draw {
  readonly kind: ActKind | "makes" | "while" | "through";
  readonly target: number;
  readonly count: number | undefined;
}

const draw: fc.Arbitrary<Draw> = fc.record({
  kind: fc.constantFrom<Draw["kind"]>(
    "slacken",
    "remove",
    "remove",
    "work",
    "work",
    "refit",
    "refit",
    "tighten",
    "makes",
    "while",
    "through",
  ),
  target: fc.nat(99),
  count: fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined }),
});

/** Part i may lie in, cover or replace earlier ones only, so that nothing goes round in a circle; it may cover a fastener set too. */
const machine = fc
  .array(
    fc.record({
      in: fc.nat(99),
      cover: fc.nat(99),
      hides: fc.nat(11),
      held: fc.nat(99),
      only: fc.nat(5),
      replaces: fc.nat(99),
      slack: fc.boolean(),
    }),
    { minLength: 2, maxLength: 7 },
  )
  .map((drawn) => {
    const fasteners = [fastenerSet("f0", 2), fastenerSet("f1", 3), fastenerSet("f2", 1)];
    const states: StateVariable[] = [
      { id: "power", name: "power", values: ["on", "off"], starts: "on", ends: "on" },
    ];
    const parts: Part[] = [];
    for (const [i, one] of drawn.entries()) {
      const earlier = (n: number): string | undefined => (i > 0 && n < 50 ? `p${n % i}` : undefined);
      const replaces = earlier(one.replaces + 30);
      const held = one.held < 60 ? fasteners[one.held % 3]! : undefined;
      const hold = one.slack ? { out: 0, slack: 1 } : { out: held?.count ?? 0, slack: 0 };
      parts.push(
        part(`p${i}`, {
          in: earlier(one.in),
          covers: [earlier(one.cover), fasteners[one.hides]?.id].filter(
            (id) => id !== undefined && id !== held?.id,
          ) as string[],
          heldBy: new Map(held === undefined ? [] : [[held.id, hold]]),
          onlyWhile: new Map(one.only === 0 ? [["power", "off"]] : []),
          replaces: parts.some((other) => other.replaces === replaces) ? undefined : replaces,
        }),
      );
    }
    return { parts, fasteners, states };
  });

export const soundProcedure: fc.Arbitrary<Procedure> = fc
  .tuple(
    machine,
    fc.array(fc.array(draw, { minLength: 1, maxLength: 2 }), { minLength: 20, maxLength: 60, size: "max" }),
  )
  .map(([{ parts, fasteners, states }, draws]) => {
    const bare = procedureOf(parts, fasteners, [], states);
    const steps: Step[] = [];
    for (const acts of draws) {
      const step = stepOf(acts, bare, `s${steps.length}`);
      const walked = { ...bare, steps: [...steps, step] };
      const isSound = walk(walked).faults.every((fault) => fault.step === undefined);
      if (isSound && steps.length < 12) steps.push(step);
    }
    return closed({ ...bare, steps });
  });

function stepOf(draws: readonly Draw[], { parts, fasteners }: Procedure, id: string): Step {
  const partIds = [...parts.keys()];
  const all = [...partIds, ...fasteners.keys()];
  const made = {
    acts: [] as Act[],
    makes: new Map<string, string>(),
    while: new Map<string, string>(),
    through: [] as string[],
  };
  const order: ActKind[] = ["slacken", "remove", "work", "refit", "tighten"];
  for (const { kind, target, count } of draws) {
    if (kind === "makes" || kind === "while") made[kind].set("power", target % 2 === 0 ? "on" : "off");
    else if (kind === "through") made.through.push(partIds[target % partIds.length]!);
    else {
      const id = all[target % all.length]!;
      const isPart = parts.has(id);
      if (isPart && (kind === "slacken" || kind === "tighten")) continue;
      made.acts.push(act(kind, id, isPart || kind === "work" ? undefined : count));
    }
  }
  made.acts.sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
  return emptyStep(id, made);
}

/** Says of everything that is off or slack at the end that it is left so. */
function closed(procedure: Procedure): Procedure {
  const walker = startWalk(procedure);
  for (const step of procedure.steps) walker.do(step);
  const leaves = new Map<string, Left>();
  const left = { fate: "left", to: undefined } as const;
  const states = new Map(procedure.states);
  for (const fault of faultsAtEnd(procedure, walker.tray())) {
    if (fault.kind === "ends-off") leaves.set(fault.part, { out: 1, slack: 0, ...left });
    if (fault.kind === "ends-out") leaves.set(fault.set, { out: fault.out, slack: fault.slack, ...left });
    if (fault.kind === "ends-state")
      states.set(fault.state, { ...states.get(fault.state)!, ends: fault.value });
  }
  return { ...procedure, states, leaves };
}
