/** Derived precedence: every right order walks clean, and what the rules bind is what a repairer would expect. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { accountsOf, conflict } from "../../../src/engine/procedure/conflicts.ts";
import { boundPairs, derivePrecedence } from "../../../src/engine/procedure/derive.ts";
import type { Precedence } from "../../../src/engine/procedure/precedence.ts";
import type { Procedure, Step } from "../../../src/engine/procedure/procedure.ts";
import { walk } from "../../../src/engine/procedure/walk.ts";
import { act, emptyStep, fastenerSet, part, procedureOf, soundProcedure } from "./random-procedure.ts";

/** One right order, the next step chosen by `choose` among those that are free. */
function rightOrder({ steps, pairs }: Precedence, choose: (free: number) => number): string[] {
  const waiting = new Map(steps.map((step) => [step, pairs.filter((pair) => pair.then === step).length]));
  const order: string[] = [];
  while (waiting.size > 0) {
    const free = [...waiting].filter(([, needs]) => needs === 0).map(([step]) => step);
    const next = free[choose(free.length)]!;
    waiting.delete(next);
    order.push(next);
    for (const pair of pairs) if (pair.first === next) waiting.set(pair.then, waiting.get(pair.then)! - 1);
  }
  return order;
}

const inOrder = (procedure: Procedure, order: readonly string[]): Step[] =>
  order.map((id) => procedure.steps.find((step) => step.id === id)!);

describe("every right order walks clean (the property on which practice rests)", () => {
  test("sampled right orders of random procedures, and all of them end with the same tray", () => {
    let reordered = 0;
    fc.assert(
      fc.property(soundProcedure, fc.infiniteStream(fc.nat(1000)), (procedure, dice) => {
        expect(walk(procedure).faults).toEqual([]);
        const written = walk(procedure).trays.at(-1);
        const order = rightOrder(derivePrecedence(procedure), (free) => dice.next().value! % free);
        if (order.some((id, index) => id !== procedure.steps[index]!.id)) reordered++;
        const walked = walk(procedure, inOrder(procedure, order));
        expect(walked.faults).toEqual([]);
        if (written !== undefined) expect(sorted(walked.trays.at(-1)!)).toEqual(sorted(written));
      }),
      { numRuns: 1000 },
    );
    expect(reordered).toBeGreaterThan(500);
  });

  test("two steps of which one changes what the other reads are always bound", () => {
    let conflicts = 0;
    fc.assert(
      fc.property(soundProcedure, (procedure) => {
        const bound = new Set(boundPairs(procedure).map(({ first, then }) => `${first} ${then}`));
        const accounts = accountsOf(procedure);
        for (const [later, b] of accounts.entries()) {
          for (const [earlier, a] of accounts.slice(0, later).entries()) {
            if (!conflict(a, b)) continue;
            conflicts++;
            expect(bound).toContain(`${procedure.steps[earlier]!.id} ${procedure.steps[later]!.id}`);
          }
        }
      }),
      { numRuns: 1000 },
    );
    expect(conflicts).toBeGreaterThan(1000);
  });
});

function sorted({ parts, sets, states }: ReturnType<typeof walk>["trays"][number]) {
  return { parts: [...parts].sort(), sets: [...sets].sort(), states: [...states].sort() };
}

/** A gearbox: the guard covers the train, two bolts hold the case to the bed, the wheel lies in the case. */
function gearbox(steps: readonly Step[]): Procedure {
  return procedureOf(
    [
      part("guard", {
        name: "gear guard",
        heldBy: new Map([["guard-screws", { out: 2, slack: 0 }]]),
        covers: ["case"],
      }),
      part("case", { name: "gear case", heldBy: new Map([["bolts", { out: 2, slack: 0 }]]) }),
      part("wheel", { name: "wheel", in: "case" }),
      part("new-wheel", { name: "new wheel", replaces: "wheel" }),
      part("bed", { name: "bed" }),
      part("rail", { name: "rail", covers: ["bolts"] }),
    ],
    [
      { ...fastenerSet("guard-screws", 2), name: "guard screws" },
      { ...fastenerSet("bolts", 2), name: "case bolts" },
    ],
    steps,
    [{ id: "brake", name: "brake", values: ["on", "off"], starts: "on", ends: "off" }],
  );
}

const reasonOf = (first: Partial<Step>, then: Partial<Step>): readonly string[] | undefined =>
  derivePrecedence(gearbox([emptyStep("a", first), emptyStep("b", then)])).pairs[0]?.because;

describe("the rules, one by one (design of the precedence graph, a to g; reasons: common practice)", () => {
  const remove = (id: string) => ({ acts: [act("remove", id)] });
  const refit = (id: string) => ({ acts: [act("refit", id)] });
  const work = (id: string) => ({ acts: [act("work", id)] });

  test.each([
    ["a: the same part", remove("wheel"), work("wheel"), "the wheel is worked on after coming off"],
    [
      "a: a part and its replacement",
      remove("wheel"),
      refit("new-wheel"),
      "the wheel and the new wheel share one place, one taking over from the other",
    ],
    [
      "b: a fastener and what it holds",
      remove("bolts"),
      remove("case"),
      "the case bolts still hold the gear case",
    ],
    [
      "b: back again",
      refit("case"),
      refit("bolts"),
      "the gear case must be in place before the case bolts, which hold it",
    ],
    ["c: a cover", remove("guard"), work("wheel"), "the gear guard is still on: it covers the wheel"],
    [
      "c: fasteners under a cover",
      remove("guard"),
      remove("bolts"),
      "the gear guard is still on: it covers the case bolts",
    ],
    [
      "c: fasteners that a cover hides alone",
      remove("rail"),
      remove("bolts"),
      "the rail is still on: it covers the case bolts",
    ],
    [
      "c: a cover going back",
      work("wheel"),
      refit("guard"),
      "once the gear guard is back on, it covers the wheel",
    ],
    [
      "c: fasteners before a cover comes off",
      { acts: [act("tighten", "bolts")] },
      remove("guard"),
      "the case bolts are seen to before the removal of the gear guard, lying on top",
    ],
    [
      "c: work through a cover",
      { ...work("bed"), through: ["guard"] },
      remove("guard"),
      "the work is done through the gear guard, which must still be on",
    ],
    [
      "d: an assembly",
      remove("case"),
      work("wheel"),
      "the wheel lies in the gear case, which must come out first",
    ],
    [
      "e: work on an assembly",
      remove("wheel"),
      work("case"),
      "the gear case is worked on with the wheel out",
    ],
    [
      "f: tightening",
      work("case"),
      { acts: [act("tighten", "bolts")] },
      "the gear case is seen to before being held tight by the case bolts",
    ],
    [
      "g: a state",
      { makes: new Map([["brake", "off"]]) },
      { while: new Map([["brake", "off"]]) },
      "the brake must be off",
    ],
    [
      "g: a state brought to one value, then to another",
      { makes: new Map([["brake", "off"]]) },
      { makes: new Map([["brake", "on"]]) },
      "the brake must first be off, then on",
    ],
    [
      "g: a state that is needed before it changes",
      { while: new Map([["brake", "on"]]) },
      { makes: new Map([["brake", "off"]]) },
      "the brake must still be on",
    ],
  ])("%s", (_, first, then, because) => {
    expect(reasonOf(first, then)).toContain(because);
  });

  test.each([
    ["a cover and its own screws", remove("guard"), { acts: [act("work", "bed")] }],
    ["two parts that have nothing to do with each other", remove("wheel"), work("bed")],
    ["work on an assembly and taking out what holds it", work("case"), remove("bolts")],
    ["work on a part and on a fastener that holds it", work("case"), work("bolts")],
    ["work in an assembly and work on it", work("wheel"), work("case")],
    ["a cover of fasteners, and work on the part that they hold", remove("rail"), work("case")],
    [
      "two steps that leave a state alike",
      { makes: new Map([["brake", "off"]]) },
      { makes: new Map([["brake", "off"]]) },
    ],
    [
      "one that needs a state, and one that leaves it so",
      { while: new Map([["brake", "on"]]) },
      { makes: new Map([["brake", "on"]]) },
    ],
  ])("free: %s", (_, first, then) => {
    expect(reasonOf(first, then)).toBeUndefined();
  });

  test("a cover does not bind its own screws as covered", () => {
    expect(reasonOf(remove("guard-screws"), remove("guard"))).toEqual([
      "the guard screws still hold the gear guard",
    ]);
  });
});

describe("what lies on the bench is bound to nothing left on the machine (common practice)", () => {
  const off = emptyStep("off", { acts: [act("remove", "wheel")] });
  const guardOff = emptyStep("guard-off", { acts: [act("remove", "guard-screws"), act("remove", "guard")] });
  const others = (id: string): Partial<Step>[] => [
    { acts: [act("remove", "case")] },
    { acts: [act("refit", "guard")] },
    { acts: [act("work", id)] },
  ];
  const pairsWith = (...steps: Step[]) =>
    derivePrecedence(gearbox(steps)).pairs.map(({ first, then }) => `${first} ${then}`);

  test("work on a part that is off, and moving its assembly or a cover over its place", () => {
    for (const other of others("case")) {
      const pairs = pairsWith(
        guardOff,
        off,
        emptyStep("clean", { acts: [act("work", "wheel")] }),
        emptyStep("other", other),
      );
      expect(pairs).toContain("off clean");
      expect(pairs).not.toContain("clean other");
    }
  });

  test("putting the part back is bound to both again", () => {
    for (const other of others("case")) {
      expect(
        pairsWith(
          guardOff,
          off,
          emptyStep("back", { acts: [act("refit", "wheel")] }),
          emptyStep("other", other),
        ),
      ).toContain("back other");
    }
  });
});

describe("explicit precedence and what may swap", () => {
  test("after: gives its reason first, and may mark the pair critical", () => {
    const after = new Map([["a", { because: "the paint is wet", critical: true }]]);
    const { pairs } = derivePrecedence(gearbox([emptyStep("a"), emptyStep("b", { after })]));
    expect(pairs).toEqual([
      { first: "a", then: "b", because: ["the paint is wet"], critical: true, lifted: false },
    ]);
  });

  test("a pair is critical where its first step is", () => {
    const { pairs } = derivePrecedence(
      gearbox([
        emptyStep("a", { acts: [act("work", "bed")], critical: true }),
        emptyStep("b", { acts: [act("work", "bed")] }),
      ]),
    );
    expect(pairs.map(({ critical }) => critical)).toEqual([true]);
  });

  test("may-swap lifts a derived pair, whichever step names the other, and never one that after demands", () => {
    const both = { acts: [act("work", "bed")] };
    const swap = (id: string) => new Map([[id, "either will do"]]);
    expect(
      derivePrecedence(gearbox([emptyStep("a", both), emptyStep("b", { ...both, maySwap: swap("a") })]))
        .pairs,
    ).toEqual([]);
    expect(
      derivePrecedence(gearbox([emptyStep("a", { ...both, maySwap: swap("b") }), emptyStep("b", both)]))
        .pairs,
    ).toEqual([]);
    const demanded = {
      ...both,
      maySwap: swap("a"),
      after: new Map([["a", { because: "so", critical: false }]]),
    };
    expect(derivePrecedence(gearbox([emptyStep("a", both), emptyStep("b", demanded)])).pairs).toHaveLength(1);
  });

  test("step ids may be names that JavaScript objects have", () => {
    const bed = { acts: [act("work", "bed")] };
    const { pairs } = derivePrecedence(gearbox([emptyStep("constructor", bed), emptyStep("__proto__", bed)]));
    expect(pairs.map(({ first, then }) => [first, then])).toEqual([["constructor", "__proto__"]]);
  });
});
