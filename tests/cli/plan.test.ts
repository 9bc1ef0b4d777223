/** `benchwright plan` as its users call it. Sessions and paths here are worked out by hand. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { callCommand } from "../support/call-command.ts";
import { changed, soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";

async function call(...args: string[]) {
  const called = await callCommand("plan", ...args);
  return { ...called, json: () => JSON.parse(called.out) as unknown };
}

function graphFile(value: unknown): string {
  const path = join(temporaryFolder(), "graph.json");
  writeFileSync(path, typeof value === "string" ? value : JSON.stringify(value));
  return path;
}

const wash = {
  steps: ["strip", "wash", "paint", "fit"],
  before: [
    ["strip", "wash"],
    ["wash", "fit"],
  ],
  times: {
    strip: { time: "1 h", stop: true },
    wash: { time: "40 min", wait: "2 h", stop: true },
    paint: { time: "90 s" },
    fit: { time: "30 min", wait: "12 h" },
  },
};

describe("a graph file with times", () => {
  test("--json: sessions with the gap between them", async () => {
    const { code, err, json } = await call("--graph", graphFile(wash), "--session", "1 h 45 min", "--json");
    expect([code, err]).toEqual([0, ""]);
    expect(json()).toEqual({
      handsOn: 131.5,
      waits: 840,
      // strip 60, wash 40 + 120, fit 30 + 720
      criticalPath: 970,
      sessions: [
        { steps: ["strip", "wash"], minutes: 100, gapAtLeast: 120 },
        { steps: ["paint", "fit"], minutes: 31.5 },
      ],
    });
  });

  test("--json where there is no split: the stretch that is too long, and 0", async () => {
    const file = graphFile({ ...wash, times: { ...wash.times, wash: { time: "40 min", wait: "2 h" } } });
    const { code, json } = await call("--graph", file, "--session", "2 h", "--json");
    expect(code).toBe(0);
    expect(json()).toMatchObject({
      sessions: null,
      tooLong: { from: "wash", to: "fit", minutes: 40 + 120 + 1.5 + 30 },
    });
  });

  test("for people", async () => {
    expect((await call("--graph", graphFile(wash), "--session", "1 h 45 min")).out).toBe(
      [
        "Session 1: 1 h 40 min",
        "  1  strip      1 h",
        "  2  wash    40 min  (then wait 2 h)",
        "At least 2 h until the next session.",
        "",
        "Session 2: 31.5 min",
        "  3  paint  1.5 min",
        "  4  fit     30 min  (then wait 12 h)",
        "",
        "2 h 11.5 min of work and 14 h of waiting, in 2 sessions of at most 1 h 45 min.",
        "Critical path, as with any number of hands: 16 h 10 min.",
        "  strip → wash → fit",
        "",
      ].join("\n"),
    );
    const long = await call("--graph", graphFile(wash), "--session", "50 min");
    expect(long).toMatchObject({ code: 0, out: expect.stringContaining('"strip" takes 1 h in one go') });
  });

  test("a session is 2 h 30 min where the call does not say; steps without times take none", async () => {
    const file = graphFile({ steps: ["a", "b"], before: [], times: { a: { time: "150 min", stop: true } } });
    expect((await call("--graph", file, "--json")).json()).toEqual({
      ...{ handsOn: 150, waits: 0, criticalPath: 150 },
      sessions: [{ steps: ["a", "b"], minutes: 150 }],
    });
    const more = graphFile({ steps: ["a"], before: [], times: { a: { time: "151 min" } } });
    expect((await call("--graph", more, "--json")).json()).toMatchObject({ sessions: null });
  });

  test("steps may have the names of what every object has", async () => {
    const text = `{"steps": ["__proto__", "constructor", "toString"], "before": [["__proto__", "constructor"]],
      "times": {"__proto__": {"time": "20 min", "stop": true}, "constructor": {"time": "25 min"}}}`;
    expect((await call("--graph", graphFile(text), "--session", "30 min", "--json")).json()).toEqual({
      ...{ handsOn: 45, waits: 0, criticalPath: 45 },
      sessions: [
        { steps: ["__proto__"], minutes: 20 },
        { steps: ["constructor", "toString"], minutes: 25 },
      ],
    });
  });

  test.each([
    ['"times" must be an object of steps', { times: [] }],
    ['"times" must be an object of steps', { times: null }],
    [
      '"times" names "srip", which "steps" does not list; the nearest known is "strip"',
      { times: { srip: {} } },
    ],
    ['"times" names "constructor", which "steps" does not list', { times: { constructor: {} } }],
    ['the times of "strip" must be an object', { times: { strip: "5 min" } }],
    ['the times of "strip": "time" must be a time such as "5 min"', { times: { strip: { time: "5 mm" } } }],
    ['such as "5 min" or "2 h 30 min", not 5', { times: { strip: { time: 5 } } }],
    [
      '"wait" must be a time such as "5 min" or "2 h 30 min", not "-5 min"',
      { times: { strip: { wait: "-5 min" } } },
    ],
    ['"wait" is longer than 1,000 days', { times: { strip: { wait: "1e300 h" } } }],
    ['"stop" must be true or false', { times: { strip: { stop: "yes" } } }],
    ['"toString" is not known; there are time, wait, stop', { times: { strip: { toString: "5 min" } } }],
    ['"steps" lists "strip" before "wash", which must come first', { before: [["wash", "strip"]] }],
    ['"strip" is listed twice', { steps: ["strip", "strip"] }],
    [
      "the graph has 5001 steps; the limit is 5000",
      { steps: Array.from({ length: 5001 }, (_, index) => `s${index}`), before: [] },
    ],
  ])("what is wrong is said: %s", async (says, change) => {
    const result = await call("--graph", graphFile({ ...wash, ...change }), "--json");
    expect(result).toMatchObject({ code: 1, out: "", err: expect.stringContaining(says) });
    expect(result.err).not.toContain("fault of benchwright");
  });

  test("all that is wrong with the times is said at once", async () => {
    const times = { strip: { time: "5 mm", wait: "x" }, q: {} };
    expect((await call("--graph", graphFile({ ...wash, times }))).err.trim().split("\n")).toHaveLength(3);
  });

  test("5,000 steps are planned", async () => {
    const steps = Array.from({ length: 5000 }, (_, index) => `s${index}`);
    const times = Object.fromEntries(steps.map((step) => [step, { time: "6 min", stop: true }]));
    const file = graphFile({ steps, before: [], times });
    const { sessions } = (await call("--graph", file, "--session", "1 h", "--json")).json() as {
      sessions: { minutes: number }[];
    };
    expect(sessions).toHaveLength(500);
    expect(new Set(sessions.map(({ minutes }) => minutes))).toEqual(new Set([60]));
  });
});

describe("a module", () => {
  const box = (file: string, from: string, to: string) => writeFolder(changed(file, from, to));

  test("with the session of its programme, or that of the call", async () => {
    const content = box("programme.yaml", "name: Test bench", "name: Test bench\nsession: 1 h 5 min");
    // "lid-off" takes 5 min; "clean" is followed by a wait of 1 h, and nowhere may one stop
    expect((await call("--module", "box", "--content", content, "--json")).json()).toEqual({
      ...{ handsOn: 5, waits: 60, criticalPath: 65 },
      sessions: [
        {
          steps: ["lid-off", "brake-off", "wheel-off", "clean", "wheel-on", "brake-on", "lid-on"],
          minutes: 65,
        },
      ],
    });
    expect(
      (await call("--module", "box", "--content", content, "--session", "1 h", "--json")).json(),
    ).toMatchObject({ sessions: null, tooLong: { from: "lid-off", to: "lid-on", minutes: 65 } });
  });

  test("titles are told to people", async () => {
    expect((await call("--module", "box", "--content", writeFolder(soundFiles))).out).toContain(
      "clean      0 min  Clean the wheel (then wait 1 h)",
    );
  });

  test("without steps there is nothing to split", async () => {
    const text = "---\ntitle: Know it\nsummary: Read.\nrevision: 1\n---\n\nProse.\n";
    const content = writeFolder(new Map([...soundFiles, ["modules/know/module.md", text]]));
    expect((await call("--module", "know", "--content", content, "--json")).json()).toEqual({
      ...{ handsOn: 0, waits: 0, criticalPath: 0 },
      sessions: [],
    });
    expect((await call("--module", "know", "--content", content)).out).toBe("There are no steps to plan.\n");
  });
});

test.each([
  [[], "--graph or --module"],
  [["--module", "box", "--graph", "x.json"], "--graph or --module"],
  [["--module", "box", "--session", "soon"], '--session "soon" is not a length of time'],
  [["--module", "box", "--session", "0 min"], "is not a length of time"],
  [["--module", "box", "--session", "5 mm"], "is not a length of time"],
  [["--module", "box", "--session=-5 min"], "is not a length of time"],
  [["box"], "Did you mean --module box"],
])("%j is a wrong call", async (args, says) => {
  expect(await call(...args)).toMatchObject({ code: 2, out: "", err: expect.stringContaining(says) });
});
