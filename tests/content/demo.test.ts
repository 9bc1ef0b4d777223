/** The demo programme: what it must hold, and that its procedures keep the promise of the engine. */
import { existsSync, readdirSync } from "node:fs";
import { posix } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { countOrders } from "../../src/engine/procedure/count-orders.ts";
import { graphOfProcedure } from "../../src/engine/procedure/graph-of-procedure.ts";
import { planSessions } from "../../src/engine/procedure/sessions/plan-sessions.ts";
import { walk } from "../../src/engine/procedure/walk.ts";
import { kinds } from "../../src/engine/quiz/kinds.ts";
import type { Content } from "../../src/model/content.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { projectDir } from "../support/project.ts";
import { sampleRightOrder } from "../support/right-order.ts";

const modulesDir = `${projectDir}/content/modules`;
const ids = readdirSync(modulesDir).filter((id) => existsSync(`${modulesDir}/${id}/module.md`));
/** What is learnt before, and beside, the machines: in the order of the route. */
const knowledge = [
  "slotted-screws",
  "solvents-fire-rags",
  "lubricants",
  "stored-energy",
  "cleaning-and-drying",
  "inspection-and-measuring",
  "reassembly-and-adjustment",
];
const procedures = ids.filter((id) => !knowledge.includes(id));

let content: Content;
beforeAll(() => {
  const { reading, diagnostics } = read(`${projectDir}/content`);
  const validated = validate(reading);
  expect([...diagnostics, ...validated.diagnostics]).toEqual([]);
  content = validated.content;
});

test("the modules are those of the folder, with the bench knowledge and some machines among them", () => {
  expect([...content.modules.keys()].sort()).toEqual([...ids].sort());
  expect(ids).toEqual(expect.arrayContaining([...knowledge, "spring-motor", "hand-crank-sewing-machine"]));
});

test("whoever wants to do a machine does the two foundations first, on the way that needs: lays", () => {
  const before = (id: string, seen = new Set<string>()): Set<string> => {
    for (const need of content.modules.get(id)!.needs) if (!seen.has(need)) before(need, seen.add(need));
    return seen;
  };
  for (const id of procedures) {
    expect([...before(id)], id).toEqual(expect.arrayContaining(["slotted-screws", "solvents-fire-rags"]));
    expect(
      [...before(id)].filter((need) => procedures.includes(need)),
      id,
    ).toEqual([]);
  }
  expect(knowledge.filter((id) => content.modules.get(id)!.needs.length === 0)).toEqual(
    knowledge.slice(0, 2),
  );
});

test("no link of the demo leads nowhere", () => {
  let looked = 0;
  for (const { path, links } of content.sources.values()) {
    for (const { href } of links) {
      if (/^[a-z]+:/i.test(href)) continue;
      const [file, place] = href.split("#");
      const target = file ? posix.join(posix.dirname(path), file) : path;
      expect(existsSync(`${projectDir}/content/${target}`), `${path}: ${href}`).toBe(true);
      if (place) expect(content.outlines.get(target)!.places, `${path}: ${href}`).toContain(place);
      looked += 1;
    }
  }
  expect(looked).toBeGreaterThan(100);
});

test("the quizzes ask questions of every kind between them", () => {
  const asked = [...content.quizzes.values()].flatMap(({ quiz }) => quiz.questions.map(({ kind }) => kind));
  expect(new Set(asked)).toEqual(new Set(Object.keys(kinds)));
});

describe.each(ids)("%s", (id) => {
  const module = () => content.modules.get(id)!;

  test("has figures, hazards, sources and a quiz of 10 questions or more, with a reason each", () => {
    const source = content.sources.get(module().path)!;
    const figures =
      source.pictures.length + module().procedure.steps.filter(({ figure }) => figure !== undefined).length;
    expect(figures).toBeGreaterThanOrEqual(2);
    expect(module().hazards.length).toBeGreaterThan(0);
    expect(module().sources.length).toBeGreaterThan(0);
    const { questions } = content.quizzes.get(id)!.quiz;
    expect(questions.length).toBeGreaterThanOrEqual(10);
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

  test("can be done in sessions of the programme's length, and every step has a time", () => {
    const { steps } = module().procedure;
    for (const { id: step, time } of steps) expect(time, step).toBeGreaterThan(0);
    expect(planSessions(steps, content.programme.session).tooLong).toBeNull();
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

/** Where a restorer goes home: last steps of the sessions, and the hours before the next. */
describe("sessions of an evening", () => {
  const evenings = (id: string) => {
    const { sessions } = planSessions(content.modules.get(id)!.procedure.steps, content.programme.session);
    return sessions!.map(({ steps, gapAtLeast = 0 }) => [steps.at(-1), gapAtLeast / 60]);
  };

  test("the motor is let down, stripped, washed and left to dry, its barrel shut, before it is built up", () => {
    expect(evenings("spring-motor")).toEqual([
      ["train-out", 0],
      ["wash", 2],
      ["inspect", 0],
      ["pad-change", 1],
      ["final-test", 0],
    ]);
  });

  test("the sewing machine soaks overnight, is cleaned in one go and dries before it is oiled", () => {
    expect(evenings("hand-crank-sewing-machine")).toEqual([
      ["soak-joints", 12],
      ["dry", 2],
      ["tension-on", 0],
      ["wipe-finish", 0],
    ]);
  });

  test("the press soaks strapped open, its rollers are known before a cleaning evening, and it is levelled before rollers go in", () => {
    expect(evenings("tabletop-press")).toEqual([
      ["screw-record", 12],
      ["clean-rollers", 0],
      ["dry", 2],
      ["oil-round", 0],
      ["rollers-on", 0],
      ["hand-over", 0],
    ]);
  });

  test("no barrel is left open, no spring wound, no plate or crank hanging by slack screws", () => {
    const motor = content.modules.get("spring-motor")!.procedure.neverLeft;
    expect([...motor.parts]).toEqual(["barrel-cover"]);
    expect(motor.states.get("power")).toEqual(["wound"]);
    expect(motor.fasteners.get("pillar-screws")).toEqual(["slack"]);
    const machine = content.modules.get("hand-crank-sewing-machine")!.procedure.neverLeft;
    expect(machine.fasteners.get("crank-screw")).toEqual(["slack"]);
  });

  test("no press is left with jaws that can close: they stand blocked or strapped at each safe place, and at the end", () => {
    const { procedure } = content.modules.get("tabletop-press")!;
    expect(procedure.neverLeft.states.get("jaws")).toEqual(["free"]);
    expect(procedure.neverLeft.fasteners.get("centre-bolt")).toEqual(["slack"]);
    const made: string[] = [];
    for (const { makes, stop } of procedure.steps) {
      const jaws = makes.get("jaws");
      if (jaws !== undefined) made.push(jaws);
      if (stop) expect(["blocked open", "strapped open"]).toContain(made.at(-1));
    }
    expect(made.at(-1)).toBe("blocked open");
  });
});
