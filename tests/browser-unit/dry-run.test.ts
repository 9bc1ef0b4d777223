/** The dry run without its page: what is kept, and what is said. */
import { describe, expect, test } from "vitest";
import { hindranceWords } from "../../src/browser/dry-run/hindrance-words.ts";
import { Run } from "../../src/browser/dry-run/run.ts";
import {
  pairWords,
  summaryDetail,
  summaryHeadline,
  times,
  trayWords,
} from "../../src/browser/dry-run/words.ts";
import type { Store } from "../../src/browser/page/store.ts";
import type { Fault } from "../../src/engine/procedure/fault.ts";
import { packProcedure } from "../../src/engine/procedure/packed.ts";
import { performingPrecedence } from "../../src/engine/procedure/performing-graph.ts";
import { act, emptyStep, fastenerSet, part, procedureOf } from "../engine/procedure/random-procedure.ts";

const power = { id: "power", name: "mainspring", values: ["wound", "down"], starts: "wound", ends: "down" };
const motor = procedureOf(
  [part("lid", { heldBy: new Map([["screws", { out: 2, slack: 0 }]]), covers: ["belt"] }), part("belt")],
  [fastenerSet("screws", 2)],
  [
    emptyStep("let-down", { makes: new Map([["power", "down"]]), critical: true }),
    emptyStep("lid-off", {
      acts: [act("remove", "screws"), act("remove", "lid")],
      while: new Map([["power", "down"]]),
    }),
    emptyStep("belt-off", { acts: [act("remove", "belt")] }),
    emptyStep("sweep"),
  ],
  [power],
);
const matched = new Map([...motor.fasteners].map(([id, set]) => [id, { ...set, matched: false }]));
const data = {
  precedence: performingPrecedence(motor),
  procedure: packProcedure({ ...motor, fasteners: matched }),
};

function memory(first?: unknown): Store & { kept: unknown } {
  const store = {
    kept: first,
    load: () => store.kept,
    save(value: unknown) {
      store.kept = JSON.parse(JSON.stringify(value));
    },
  };
  return store;
}

describe("a run", () => {
  test("is kept with every try and its verdict, and goes on where it was", () => {
    const store = memory();
    const run = new Run(data, store);
    const kinds = ["sweep", "lid-off", "let-down", "belt-off"].map((step) => run.try(step).verdict.kind);
    expect(kinds).toEqual(["done", "stopped", "done", "refused"]);
    expect(store.kept).toMatchObject({
      tries: [
        { step: "sweep", verdict: "done" },
        { step: "lid-off", verdict: "stopped" },
        { step: "let-down", verdict: "done" },
        { step: "belt-off", verdict: "refused" },
      ],
    });
    const again = new Run(data, store);
    expect([again.done(), again.open(), again.summary()]).toEqual([run.done(), run.open(), run.summary()]);
    expect(again.account()).toEqual(run.account());
  });

  test("stays stopped until one goes on", () => {
    const store = memory();
    new Run(data, store).try("lid-off");
    const run = new Run(data, store);
    expect(run.stop()?.step).toBe("lid-off");
    run.goOn();
    expect([run.stop(), new Run(data, store).stop(), run.done()]).toEqual([undefined, undefined, []]);
    run.try("lid-off");
    expect(run.stop()?.step).toBe("lid-off");
    expect(run.summary().stopped).toMatchObject([{ step: "lid-off", times: 2 }]);
  });

  test.each([
    ["nothing", undefined],
    ["no object", 7],
    ["no list", { seed: "a", tries: {} }],
    ["a step that there is none of", { seed: "a", tries: [{ step: "constructor", verdict: "done" }] }],
    ["a step done twice", { seed: "a", tries: [{ step: "sweep" }, { step: "sweep" }] }],
    ["a try without a step", { seed: "a", tries: [null] }],
  ])("begins anew where %s was kept", (_name, kept) => {
    const run = new Run(data, memory(kept));
    expect(run.done()).toEqual([]);
    expect(run.open().toSorted()).toEqual(["belt-off", "let-down", "lid-off", "sweep"]);
  });

  test("a kept verdict is not believed", () => {
    const tries = [{ step: "lid-off", verdict: "done" }];
    expect(new Run(data, memory({ seed: "a", tries })).summary()).toMatchObject({ done: [], stops: 1 });
  });

  test("starts again with nothing done and nothing held against one", () => {
    const run = new Run(data, memory());
    run.try("lid-off");
    run.startAgain();
    expect(run.summary()).toMatchObject({ done: [], stops: 0 });
    expect(run.stop()).toBeUndefined();
  });
});

describe("what is said", () => {
  const said = (step: string, done: readonly string[] = []) => {
    const run = new Run(data, memory());
    for (const each of done) run.try(each);
    return hindranceWords(run.hindrances(step), run.machine);
  };

  test("what stands in the way of a step now", () => {
    expect(said("belt-off")).toEqual(["The lid is still on: it covers the belt."]);
    expect(said("lid-off")).toEqual(["The mainspring must be down, not wound."]);
    expect(said("lid-off", ["let-down"])).toEqual([]);
  });

  const at = { step: "x" } as const;
  const rows: readonly [Fault, string][] = [
    [{ ...at, kind: "cover-off", cover: "lid" }, "This is done through the lid, which must be on."],
    [
      { ...at, kind: "still-held", part: "lid", set: "screws", tight: 1, slack: 1 },
      "The screws still hold the lid: 1 tight, 1 slack.",
    ],
    [
      { ...at, kind: "in-the-way", part: "lid", set: "screws", tight: 0, slack: 2 },
      "The screws are in the way of the lid: 2 slack.",
    ],
    [{ ...at, kind: "part-off", part: "lid" }, "The lid is off already."],
    [{ ...at, kind: "part-on", part: "lid" }, "The lid is still on."],
    [{ ...at, kind: "place-taken", part: "lid", by: "belt" }, "The belt is still in the place of the lid."],
    [
      { ...at, kind: "too-many", act: "refit", set: "screws", wanted: 2, there: 0 },
      "The screws are not out.",
    ],
    [
      { ...at, kind: "too-many", act: "tighten", set: "screws", wanted: 2, there: 1 },
      "Of the screws only 1 is in and slack.",
    ],
    [
      { ...at, kind: "wrong-state", state: "power", value: "wound", needed: "down", part: "lid" },
      "The mainspring must be down before the lid can be moved, not wound.",
    ],
  ];
  test.each(rows)("%o", (fault, words) => {
    expect(hindranceWords([fault, fault], motor)).toEqual([words]);
  });

  test("of many hindrances, a few and how many more", () => {
    const many = ["a", "b", "c", "d", "e", "f"].map((id): Fault => ({ ...at, kind: "part-off", part: id }));
    expect(hindranceWords(many, motor)).toHaveLength(5);
    expect(hindranceWords(many, motor).at(-1)).toBe("And 2 more.");
  });

  const pair = { first: "a", then: "b", because: ["one", "two", "three", "four"], critical: false };
  const title = (step: string) => step.toUpperCase();
  test("why a pair holds, for the step tried and for one further on", () => {
    expect(pairWords({ ...pair, because: ["it bites"] }, "b", title)).toBe("“A” comes first: it bites.");
    expect(pairWords(pair, "c", title)).toBe(
      "“A” comes before “B”, and that before this: one; two; and 2 more.",
    );
  });

  test("the tray in a line", () => {
    const empty = { total: 0, compartments: [], slack: [], states: [] };
    const slack = [
      { id: "bolts", name: "bolts", detail: undefined, numbered: undefined, change: 0, count: 2 },
    ];
    expect([empty, { ...empty, total: 3 }, { ...empty, total: 3, slack }].map(trayWords)).toEqual([
      ...["tray empty", "3 on the tray", "3 on the tray, 2 slack"],
    ]);
  });

  test("how a run went", () => {
    const run = {
      done: ["a", "b"],
      isOver: true,
      refusals: 0,
      stops: 0,
      refused: [],
      stopped: [],
      again: [],
    };
    expect([summaryHeadline(run), summaryDetail(run, ["a", "b"])]).toEqual([
      ...["Done without a refusal", "All 2 steps are done. Your order is that of the operation sheet."],
    ]);
    const late = { ...run, refusals: 1, stops: 2 };
    expect(summaryHeadline(late)).toBe("Done, but not safely yet");
    expect(summaryDetail(late, ["b", "a"])).toBe(
      "All 2 steps are done. Your order is not that of the operation sheet, and works just as well. On the way: 1 try came too early, 2 critical stops.",
    );
    expect([1, 2, 3].map(times)).toEqual(["once", "twice", "3 times"]);
  });
});
