/** The demo programme: what it must hold, and that its procedures keep the promise of the engine. */
import { beforeAll, describe, expect, test } from "vitest";
import { countOrders } from "../../src/engine/procedure/count-orders.ts";
import { graphOfProcedure } from "../../src/engine/procedure/graph-of-procedure.ts";
import { walk } from "../../src/engine/procedure/walk.ts";
import { kinds } from "../../src/engine/quiz/kinds.ts";
import type { Content } from "../../src/model/content.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { projectDir } from "../support/project.ts";
import { sampleRightOrder } from "../support/right-order.ts";

const ids = ["slotted-screws", "solvents-fire-rags", "spring-motor", "hand-crank-sewing-machine"] as const;
const procedures = ["spring-motor", "hand-crank-sewing-machine"] as const;

let content: Content;
beforeAll(() => {
  const { reading, diagnostics } = read(`${projectDir}/content`);
  const validated = validate(reading);
  expect([...diagnostics, ...validated.diagnostics]).toEqual([]);
  content = validated.content;
});

test("the modules are those of the programme", () => {
  expect([...content.modules.keys()].sort()).toEqual([...ids].sort());
});

describe.each(ids)("%s", (id) => {
  const module = () => content.modules.get(id)!;

  test("has figures, hazards, sources and a quiz of 8 questions or more, with a reason each and every kind", () => {
    const source = content.sources.get(module().path)!;
    const figures =
      source.pictures.length + module().procedure.steps.filter(({ figure }) => figure !== undefined).length;
    expect(figures).toBeGreaterThanOrEqual(2);
    expect(module().hazards.length).toBeGreaterThan(0);
    expect(module().sources.length).toBeGreaterThan(0);
    const { questions } = content.quizzes.get(id)!.quiz;
    expect(questions.length).toBeGreaterThanOrEqual(8);
    expect(new Set(questions.map(({ kind }) => kind))).toEqual(new Set(Object.keys(kinds)));
    for (const { why } of questions) expect(why.length).toBeGreaterThan(20);
  });

  test("300 right orders, drawn by a seed, walk clean; and there is more than one", () => {
    const { procedure } = module();
    const { graph } = graphOfProcedure(procedure);
    const byId = new Map(procedure.steps.map((step) => [step.id, step]));
    for (let seed = 0; seed < 300; seed++) {
      const order = sampleRightOrder(graph!.precedence, `${id} ${seed}`);
      expect(
        walk(
          procedure,
          order.map((step) => byId.get(step)!),
        ).faults,
      ).toEqual([]);
    }
    expect(countOrders(graph!).orders).toBeGreaterThan(1n);
  });

  test("phases are no longer than people can hold, about 8 steps", () => {
    const lengths = new Map<string | undefined, number>();
    for (const { phase } of module().procedure.steps) lengths.set(phase, (lengths.get(phase) ?? 0) + 1);
    expect(Math.max(...lengths.values())).toBeLessThanOrEqual(8);
    expect(lengths.has(undefined)).toBe(false);
  });
});

describe.each(procedures)("the procedure %s", (id) => {
  test("has 18 steps or more, and what a bench needs", () => {
    const module = content.modules.get(id)!;
    const { procedure, asFound, asLeft } = module;
    expect(procedure.steps.length).toBeGreaterThanOrEqual(18);
    for (const list of [asFound, asLeft]) expect(list).not.toEqual([]);
    for (const field of ["wear", "neverWear", "waste"] as const) {
      expect([...module[field], ...procedure.steps.flatMap((step) => step[field])]).not.toEqual([]);
    }
    const some = (has: (step: (typeof procedure.steps)[number]) => boolean) =>
      procedure.steps.filter(has).length;
    expect(some(({ record }) => record.length > 0)).toBeGreaterThan(0);
    expect(some(({ feel }) => feel !== undefined)).toBeGreaterThan(5);
    expect(some(({ mistakes }) => mistakes.length > 0)).toBeGreaterThan(5);
    expect(some(({ ifNot }) => ifNot.length > 0)).toBeGreaterThan(5);
    expect(some(({ stop }) => stop)).toBeGreaterThan(0);
  });
});
