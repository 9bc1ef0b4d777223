/** Graph files from anywhere: whatever is wrong with one, `order` and `plan` say so and end with 1 or 2, without a stack. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { callCommand as call } from "../support/call-command.ts";
import { temporaryFolder } from "../support/content-folder.ts";

function file(text: string | Uint8Array): string {
  const path = join(temporaryFolder(), "graph.json");
  writeFileSync(path, text);
  return path;
}

const names = (count: number): string[] => Array.from({ length: count }, (_, i) => `s${i}`);
const graph = (steps: unknown, before: unknown): string => JSON.stringify({ steps, before });
const ring = (steps: readonly string[]) => steps.map((step, i) => [step, steps[(i + 1) % steps.length]]);
const deep = (depth: number): string => "[".repeat(depth) + "]".repeat(depth);

/** The file, and what is said of it. */
const bad: readonly (readonly [string, string | Uint8Array, string])[] = [
  ["an empty file", "", "is not JSON"],
  ["no JSON", "steps: [a, b]", "is not JSON"],
  ["bytes that are no text", new Uint8Array([0xff, 0xfe, 0x00]), "is not JSON"],
  [
    "JSON nested 100,000 deep",
    `{"steps": ${deep(100_000)}, "before": []}`,
    '"steps" must be a list of texts',
  ],
  ["JSON that is no graph", "null", '"steps" must be a list of texts'],
  ["a number of steps", graph(3, []), '"steps" must be a list of texts'],
  ["steps that are no texts", graph(["a", 1], []), '"steps" must be a list of texts'],
  ["no steps", graph([], []), "needs at least one step"],
  ["no pairs", '{"steps": ["a"]}', '"before" must be a list'],
  ["pairs by name", graph(["a", "b"], { a: "b" }), '"before" must be a list'],
  ["a pair of three", graph(["a", "b"], [["a", "b", "a"]]), 'pair 1 of "before"'],
  ["a pair of nothing", graph(["a"], [null]), 'pair 1 of "before"'],
  [
    "a pair with a reason that is no text",
    graph(["a", "b"], [{ first: "a", then: "b", because: 1 }]),
    "pair 1",
  ],
  ["an unknown name", graph(["a"], [["a", "b"]]), 'pair 1 names "b", which "steps" does not list'],
  ["a name that every object has", graph(["a"], [["a", "constructor"]]), 'pair 1 names "constructor"'],
  ["a step listed twice", graph(["a", "b", "a"], []), '"a" is listed twice, as number 1 and 3'],
  ["__proto__ listed twice", graph(["__proto__", "__proto__"], []), '"__proto__" is listed twice'],
  ["a pair of one step", graph(["a"], [["a", "a"]]), 'pair 1 puts "a" before itself'],
  ["a circle of two", graph(["a", "b"], ring(["a", "b"])), "come before themselves: a → b → a"],
  [
    "a circle of names that every object has",
    graph(["constructor", "__proto__"], ring(["constructor", "__proto__"])),
    "constructor → __proto__ → constructor",
  ],
  [
    "a circle of 5,000",
    graph(names(5000), ring(names(5000))),
    "s0 → s1 → s2 → s3 → s4 → … → s4998 → s4999 → s0 (5000 steps)",
  ],
  ["100,000 steps", graph(names(100_000), []), "100000 steps; the limit is 5000"],
  ["100,000 steps in a circle", graph(names(100_000), ring(names(100_000))), "the limit is 5000"],
];

/** By what is called; each with the arguments after those of the graph. */
const calls = new Map([
  ["order --count", ["order", "--count"]],
  ["order --given", ["order", "--given", "a,b"]],
  ["plan", ["plan"]],
]);

describe.each([...calls])("%s", (_, [command, ...rest]) => {
  test.each(bad)("%s", async (_, text, says) => {
    const { code, out, err } = await call(command!, "--graph", file(text), ...rest);
    expect([code, out]).toEqual([1, ""]);
    expect(err).toContain(says);
    expect(err).toContain("graph.json: ");
    expect(err).not.toMatch(/fault of benchwright|^\s+at /m);
  });

  test("a file that is not there, and a folder", async () => {
    const folder = join(temporaryFolder(), "graph.json");
    mkdirSync(folder);
    for (const path of [folder, `${folder}.json`]) {
      const { code, err } = await call(command!, "--graph", path, ...rest);
      expect(code).toBe(1);
      expect(err).toMatch(/graph\.json.*: can't be read/);
    }
  });

  test("twenty faults are enough", async () => {
    const pairs = names(30).map((step) => [step, step]);
    const { err } = await call(command!, "--graph", file(graph(names(30), pairs)), ...rest);
    expect(err.trim().split("\n")).toHaveLength(20);
  });
});

describe("what is odd and not wrong", () => {
  const odd = ["constructor", "__proto__", "toString", "hasOwnProperty", "", " ", "ä → b"];
  const chain = file.bind(
    undefined,
    graph(
      odd,
      odd.slice(1).map((step, i) => [odd[i], step]),
    ),
  );

  test("names that every object has, empty ones, and a pair given twice", async () => {
    const counted = await call("order", "--graph", chain(), "--count", "--json");
    expect(JSON.parse(counted.out)).toMatchObject({ steps: 7, width: 1, height: 7, orders: "1" });
    const given = file(JSON.stringify(odd));
    const judged = await call("order", "--graph", chain(), "--given", given, "--json");
    expect(JSON.parse(judged.out)).toMatchObject({ valid: true, moves: 0 });
    const planned = await call("plan", "--graph", chain(), "--json");
    expect(planned).toMatchObject({ code: 0, err: "" });
    const twice = file(
      graph(
        ["a", "b"],
        [
          ["a", "b"],
          ["a", "b"],
        ],
      ),
    );
    expect((await call("order", "--graph", twice, "--count")).code).toBe(0);
  });

  test("one step alone", async () => {
    const alone = file(graph(["a"], []));
    expect(JSON.parse((await call("order", "--graph", alone, "--count", "--json")).out)).toMatchObject({
      orders: "1",
      chance: 1,
    });
    expect((await call("plan", "--graph", alone)).code).toBe(0);
  });
});

test.each([
  [["order", "--count"], "--graph"],
  [["order", "--graph", "x.json"], "--given"],
  [["plan"], "--graph"],
  [["plan", "--graph", "x.json", "--module", "box"], "either"],
  [["order", "--graph", "x.json", "--module", "box", "--count"], "either"],
] as const)("%j is a wrong call", async (args, says) => {
  const { code, out, err } = await call(...args);
  expect([code, out]).toEqual([2, ""]);
  expect(err).toContain(says);
});
