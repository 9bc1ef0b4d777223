/** Performing step by step, against the walk, the written reasons and slow, plain ways to find what must come first. */
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { hasBit } from "../../../src/engine/procedure/bits.ts";
import { accountsOf, conflict } from "../../../src/engine/procedure/conflicts.ts";
import { criticalPairs } from "../../../src/engine/procedure/critical.ts";
import { boundPairs } from "../../../src/engine/procedure/derive.ts";
import type { Graph } from "../../../src/engine/procedure/graph.ts";
import { graphOfProcedure } from "../../../src/engine/procedure/graph-of-procedure.ts";
import { hindrances } from "../../../src/engine/procedure/hindrances.ts";
import { doneIn, performSteps, tellingPairs, tryStep } from "../../../src/engine/procedure/perform.ts";
import { performingGraph, performingPrecedence } from "../../../src/engine/procedure/performing-graph.ts";
import type { Procedure, Step } from "../../../src/engine/procedure/procedure.ts";
import { restrict } from "../../../src/engine/procedure/restrict.ts";
import { walk } from "../../../src/engine/procedure/walk.ts";
import { read } from "../../../src/read/read.ts";
import { validate } from "../../../src/validate/validate.ts";
import { projectDir } from "../../support/project.ts";
import { sampleRightOrder } from "../../support/right-order.ts";
import { act, emptyStep, part, procedureOf, soundProcedure } from "./random-procedure.ts";

const stepsById = ({ steps }: Procedure) => new Map(steps.map((step) => [step.id, step]));
const inOrder = (procedure: Procedure, ids: readonly string[]): Step[] => {
  const steps = stepsById(procedure);
  return ids.map((id) => steps.get(id)!);
};

/** Marks some steps as critical and binds some by an `after` that no rule asks for. */
const procedure = fc.tuple(soundProcedure, fc.infiniteStream(fc.nat(99))).map(([drawn, dice]): Procedure => {
  const roll = () => dice.next().value!;
  const steps = drawn.steps.map((step, index) => {
    const earlier = drawn.steps[roll() % Math.max(1, index)];
    const bound = index > 0 && roll() < 25 && earlier !== undefined;
    const after = new Map(
      bound ? [[earlier.id, { because: "the author says so", critical: roll() < 40 }]] : [],
    );
    return { ...step, after, critical: roll() < 20 };
  });
  return { ...drawn, steps };
});

const graphOf = (of: Procedure): Graph => performingGraph(performingPrecedence(of));

/** Every step that must come before another one, by going back along all bound pairs, redundant ones too. */
function musts(of: Procedure, step: string): Set<string> {
  const before = new Set<string>();
  const waiting = [step];
  for (const then of waiting) {
    for (const pair of boundPairs(of)) {
      if (pair.lifted || pair.then !== then || before.has(pair.first)) continue;
      before.add(pair.first);
      waiting.push(pair.first);
    }
  }
  return before;
}

/** Goes through a right order, and asks at some of its places of every step that is left. */
function everywhere(
  of: Procedure,
  seed: string,
  look: (done: readonly string[], step: Step, graph: Graph) => void,
): void {
  const graph = graphOf(of);
  const order = sampleRightOrder(graph.precedence, seed);
  for (let count = 0; count < order.length; count += 3) {
    const done = order.slice(0, count);
    for (const step of inOrder(of, order.slice(count))) look(done, step, graph);
  }
}

const anySeed = fc.integer().map(String);

describe("of random procedures", () => {
  test("every right order is performed without a refusal, and walks clean", () => {
    let reordered = 0;
    fc.assert(
      fc.property(procedure, anySeed, (of, seed) => {
        const graph = graphOf(of);
        const order = sampleRightOrder(graph.precedence, seed);
        const tries = performSteps(graph, order)!;
        expect(tries.map(({ verdict }) => verdict.kind)).toEqual(order.map(() => "done"));
        expect(doneIn(tries)).toEqual(order);
        expect(walk(of, inOrder(of, order)).faults).toEqual([]);
        if (order.some((id, index) => id !== of.steps[index]!.id)) reordered++;
      }),
      { numRuns: 400 },
    );
    expect(reordered).toBeGreaterThan(200);
  });

  test("a step is done exactly where all that must come before it is done", () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(procedure, anySeed, (of, seed) => {
        everywhere(of, seed, (done, step, graph) => {
          const { kind, broken } = tryStep(graph, new Set(done), step.id);
          const missing = [...musts(of, step.id)].filter((first) => !done.includes(first));
          expect(kind === "done").toBe(missing.length === 0);
          expect(broken.length > 0).toBe(missing.length > 0);
          for (const pair of broken) expect(missing).toContain(pair.first);
          seen.add(kind);
        });
      }),
      { numRuns: 200 },
    );
    expect(seen.size).toBe(3);
  });

  test("what the walk forbids is never done", () => {
    let forbidden = 0;
    fc.assert(
      fc.property(procedure, anySeed, (of, seed) => {
        everywhere(of, seed, (done, step, graph) => {
          if (hindrances(of, inOrder(of, done), step).length === 0) return;
          forbidden++;
          expect(tryStep(graph, new Set(done), step.id).kind).not.toBe("done");
        });
      }),
      { numRuns: 200 },
    );
    expect(forbidden).toBeGreaterThan(100);
  });

  test("every refusal has a reason: an `after`, a conflict that the walk would find, or a rule that binds the two steps", () => {
    const reasons = { after: 0, conflict: 0, rule: 0 };
    fc.assert(
      fc.property(procedure, anySeed, (of, seed) => {
        const places = new Map(of.steps.map(({ id }, place) => [id, place]));
        const accounts = accountsOf(of);
        const account = (id: string) => accounts[places.get(id)!]!;
        const bound = new Map(boundPairs(of).map((pair) => [`${pair.first} ${pair.then}`, pair]));
        everywhere(of, seed, (done, step, graph) => {
          for (const { first, then, because } of tryStep(graph, new Set(done), step.id).broken) {
            const rules = bound.get(`${first} ${then}`)!;
            expect(because).toEqual(rules.because);
            expect(because.length).toBeGreaterThan(0);
            if (step.after.has(first)) reasons.after++;
            else if (conflict(account(first), account(then))) reasons.conflict++;
            else reasons.rule++;
          }
        });
      }),
      { numRuns: 200 },
    );
    expect(Math.min(reasons.after, reasons.conflict)).toBeGreaterThan(100);
    // Work on the same thing, in the written order: the walk keeps no account of it.
    expect(reasons.rule).toBeLessThan(reasons.after + reasons.conflict);
  });

  test("a run stops exactly where a critical pair of the whole closure would be reversed", () => {
    let stops = 0;
    fc.assert(
      fc.property(procedure, anySeed, (of, seed) => {
        const whole = graphOfProcedure(of).graph!;
        const critical = criticalPairs(whole);
        everywhere(of, seed, (done, step, graph) => {
          const then = whole.places.get(step.id)!;
          const reversed = of.steps.filter(
            ({ id }) => !done.includes(id) && hasBit(critical, whole.places.get(id)!, then),
          );
          const verdict = tryStep(graph, new Set(done), step.id);
          expect(verdict.kind === "stopped").toBe(reversed.length > 0);
          const firsts = new Set(verdict.critical.map(({ first }) => first));
          expect(firsts).toEqual(new Set(reversed.map(({ id }) => id)));
          if (verdict.kind !== "stopped") return;
          stops++;
          expect(verdict.critical).toEqual(
            expect.arrayContaining(tellingPairs(graph, step.id, verdict.critical)),
          );
          expect(tellingPairs(graph, step.id, verdict.critical)).not.toEqual([]);
        });
      }),
      { numRuns: 200 },
    );
    expect(stops).toBeGreaterThan(100);
  });

  test("its precedence is the whole one, reduced, with every `after`", () => {
    fc.assert(
      fc.property(procedure, (of) => {
        const graph = graphOf(of);
        const whole = graphOfProcedure(of).graph!;
        expect(graph.poset.covers).toEqual(whole.poset.covers);
        expect(criticalPairs(graph)).toEqual(criticalPairs(whole));
        const pairs = new Set(graph.precedence.pairs.map(({ first, then }) => `${first} ${then}`));
        for (const step of of.steps)
          for (const first of step.after.keys()) expect(pairs).toContain(`${first} ${step.id}`);
      }),
      { numRuns: 200 },
    );
  });
});

describe("of the demo", () => {
  const { content } = validate(read(join(projectDir, "content")).reading);
  const modules = [...content.modules.values()].filter(({ procedure }) => procedure.steps.length > 1);

  test("there are modules with critical steps to be performed", () => {
    expect(modules.length).toBeGreaterThan(2);
  });

  test.each(modules.map((module) => [module.id, module.procedure] as const))("%s", (_id, of) => {
    const graph = graphOf(of);
    const kinds = new Set<string>();
    for (const seed of ["a", "b", "c"]) {
      const order = sampleRightOrder(graph.precedence, seed);
      expect(doneIn(performSteps(graph, order)!)).toEqual(order);
      everywhere(of, seed, (done, step) => {
        const { kind, broken } = tryStep(graph, new Set(done), step.id);
        kinds.add(kind);
        expect(broken.length > 0).toBe(kind !== "done");
        if (hindrances(of, inOrder(of, done), step).length > 0) expect(kind).not.toBe("done");
      });
    }
    // In the module on solvents nearly every step is critical: nothing there is merely refused.
    expect([...kinds]).toEqual(expect.arrayContaining(["done", "stopped"]));
  });
});

describe("by hand: a lid over a belt, and a belt under power", () => {
  const lid = procedureOf(
    [part("lid", { covers: ["belt"] }), part("belt")],
    [],
    [
      emptyStep("unplug", { critical: true }),
      emptyStep("lid-off", {
        acts: [act("remove", "lid")],
        after: new Map([["unplug", { because: "the belt may start", critical: true }]]),
      }),
      emptyStep("belt-off", { acts: [act("remove", "belt")] }),
      emptyStep("wipe"),
    ],
  );
  const graph = graphOf(lid);

  test("the step that breaks the pair, and one that follows from it, stop the run; both tell the reason", () => {
    for (const step of ["lid-off", "belt-off"]) {
      const verdict = tryStep(graph, new Set(), step);
      expect(verdict.kind).toBe("stopped");
      expect(tellingPairs(graph, step, verdict.critical).map(({ because }) => because)).toEqual([
        ["the belt may start"],
      ]);
    }
  });

  test("once it is unplugged the lid is only in the way", () => {
    const verdict = tryStep(graph, new Set(["unplug"]), "belt-off");
    expect(verdict.kind).toBe("refused");
    expect(verdict.broken.map(({ first, because }) => [first, because])).toEqual([
      ["lid-off", ["the lid is still on: it covers the belt"]],
    ]);
    const faults = hindrances(lid, lid.steps.slice(0, 1), lid.steps[2]!);
    expect(faults.map(({ kind }) => kind)).toEqual(["cover-on"]);
  });

  test("a refused step changes nothing; what is bound to nothing can be done at any time", () => {
    const tries = performSteps(graph, [
      "wipe",
      "belt-off",
      "belt-off",
      "unplug",
      "belt-off",
      "lid-off",
      "belt-off",
    ])!;
    expect(tries.map(({ verdict }) => verdict.kind)).toEqual([
      ...["done", "stopped", "stopped", "done", "refused", "done", "done"],
    ]);
    expect(doneIn(tries)).toEqual(["wipe", "unplug", "lid-off", "belt-off"]);
  });

  test("a list that no run can be is none", () => {
    expect(performSteps(graph, ["unplug", "unplug"])).toBeUndefined();
    expect(performSteps(graph, ["constructor"])).toBeUndefined();
    expect(() => tryStep(graph, new Set(), "constructor")).toThrow(RangeError);
  });

  test("an `after` that others make redundant keeps its own reason, where the reduction reads it along the path", () => {
    const steps = lid.steps.with(2, {
      ...lid.steps[2]!,
      after: new Map([["unplug", { because: "it may pull a finger in", critical: true }]]),
    });
    const of = { ...lid, steps };
    const own = performingPrecedence(of).pairs.filter(({ then }) => then === "belt-off");
    expect(own.map(({ because }) => because)).toEqual([
      ["it may pull a finger in"],
      ["the lid is still on: it covers the belt"],
    ]);
    const reduced = restrict(
      graphOfProcedure(of).graph!,
      of.steps.map(({ id }) => id),
    );
    expect(reduced.pairs.filter(({ then }) => then === "belt-off")).toHaveLength(1);
  });
});
