/** The commands as their users call them: what they print where, and the code they end with. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { codes } from "../../src/model/codes.ts";
import { callCommand } from "../support/call-command.ts";
import { changed, soundFiles, temporaryFolder, withoutFile, writeFolder } from "../support/content-folder.ts";
import { projectDir } from "../support/project.ts";
import { treeOf } from "../support/tree.ts";

async function call(...args: string[]) {
  const called = await callCommand(...args);
  expect(called.err).not.toMatch(/^\s+at .+:\d+/m);
  return { ...called, json: () => JSON.parse(called.out) as Record<string, unknown> };
}

const sound = () => writeFolder(soundFiles);
const faulty = () => writeFolder(changed("modules/box/module.md", "remove: wheel", "remove: whel"));

function file(name: string, text: string): string {
  const path = join(temporaryFolder(), name);
  writeFileSync(path, text);
  return path;
}

describe("help and wrong calls", () => {
  test("help lists the commands, and tells of each", async () => {
    const all = await call("help");
    expect(all.code).toBe(0);
    for (const name of ["check", "build", "serve", "new", "order", "plan", "schema"]) {
      expect(all.out).toContain(`  ${name}`);
      expect(await call(name, "--help")).toMatchObject({
        code: 0,
        err: "",
        out: expect.stringContaining(`Usage: benchwright ${name}`),
      });
    }
    expect((await call()).out).toBe(all.out);
  });

  test("help schema names the schemas", async () => {
    const { out } = await call("help", "schema");
    expect(out).toContain("programme, module, step, quiz, tool, substance, hazard");
  });

  test("help codes lists the whole catalogue", async () => {
    const { code, out } = await call("help", "codes");
    expect(code).toBe(0);
    for (const [name, { mend }] of Object.entries(codes))
      expect(out).toMatch(
        new RegExp(
          `^${name} \\((error|warning)\\)\n.+\n  ${mend.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`,
          "m",
        ),
      );
  });

  test.each([
    [["tidy"], 'There is no command "tidy".\n'],
    [["chek"], 'There is no command "chek". Did you mean check?'],
    [["check", "--contnet", "x"], "Did you mean --content? See: benchwright help check"],
    [["check", "--conten", "x"], "benchwright help check"],
    [
      ["check", "--content"],
      "--content needs a value: --content DIR. Nothing follows it. See: benchwright help check",
    ],
    [
      ["new", "module", "x", "--photos", "--yes"],
      '--photos needs a value: --photos DIR. "--yes" follows it. See',
    ],
    [["new", "module", "x", "--photos", "--yes=1"], '--photos DIR. "--yes=1" follows it. See'],
    [["check", "--content", "--"], '--content DIR. "--" follows it. See'],
    [["check", "--content", "-x"], "a value that begins with a minus is written --content=-x. See"],
    [["check", "--json=yes"], "'--json' does not take an argument. See: benchwright help check"],
    [["check", "--", "--content"], 'benchwright check takes no "--content"'],
    [["serve", "--port", "many"], "--port many"],
    [["new", "module"], "benchwright new module ID"],
    [["new", "programme", "ours"], "benchwright new programme\n"],
    [["new", "quiz", "box", "more"], 'takes no "more"'],
    [["new", "module", "My Machine"], '"My Machine" is not a good id: an id is one word'],
    [["new", "module", "My Machine"], "beginning with a letter. Say my-machine instead;"],
    [["new", "module", "My", "Machine"], '"My Machine" is not a good id: an id is one word'],
    [["new", "module", "My", "old", "Machine"], "Say my-old-machine instead;"],
    [["new", "module", "strip", "shots"], "Did you mean --photos shots or --content shots?\n"],
    [["new", "tool", "Feeler", "gauge"], "Say feeler-gauge instead;"],
    [["new", "module", "MyMachine"], "Say my-machine instead;"],
    [["new", "module", "Große_Presse"], "Say grosse-presse instead;"],
    [["new", "module", "2 Zähler"], "beginning with a letter. Say zahler instead;"],
    [["new", "module", "42"], "beginning with a letter.\n"],
    [["new", "module", "§"], "beginning with a letter.\n"],
    [["schema", "nothing"], 'There is no schema "nothing"'],
    [["schema", "quiz", "tool"], 'takes no "tool"'],
    [["check", "nosuch"], 'benchwright check takes no "nosuch". Did you mean --content nosuch?'],
    [["build", "/tmp/elsewhere"], "Did you mean --content /tmp/elsewhere or --to /tmp/elsewhere?"],
    [["serve", "here"], 'takes no "here"'],
    [["order", "box"], "Did you mean --module box or --content box?"],
    [["order", "--module", "box"], "benchwright order --module box --given first-step,second-step"],
    [["order", "--graph", "x.json"], "--given or --count"],
    [["order", "--count"], "--graph or --module"],
  ])("%j is a wrong call", async (args, says) => {
    expect(await call(...args)).toMatchObject({ code: 2, out: "", err: expect.stringContaining(says) });
  });
});

test("--version tells the package's version", async () => {
  const { version } = JSON.parse(readFileSync(`${projectDir}/package.json`, "utf8")) as { version: string };
  expect(await call("--version")).toMatchObject({ code: 0, out: `${version}\n`, err: "" });
});

describe("check", () => {
  test("sound content: nothing to say, 0", async () => {
    expect(await call("check", "--content", sound())).toEqual(
      expect.objectContaining({ code: 0, out: "0 errors, 0 warnings\n", err: "" }),
    );
    expect((await call("check", "--json", "--content", sound())).json()).toEqual({
      errors: 0,
      warnings: 0,
      diagnostics: [],
    });
  });

  test("faulty content: a code frame on standard error, 1", async () => {
    const { code, out, err } = await call("check", "--content", faulty());
    expect([code, out]).toEqual([1, ""]);
    expect(err).toContain("modules/box/module.md:52:9  error unknown-target");
    expect(err).toMatch(/52 \| remove: whel\n\s+\| {9}\^/);
    expect(err).toMatch(/\d+ errors?, 0 warnings\n$/);
  });

  test("--json: one value on standard output, nothing else", async () => {
    const { code, err, json } = await call("check", "--json", "--content", faulty());
    expect([code, err]).toEqual([1, ""]);
    expect(json()).toMatchObject({
      errors: expect.any(Number),
      warnings: 0,
      diagnostics: expect.arrayContaining([
        {
          code: "unknown-target",
          severity: "error",
          file: "modules/box/module.md",
          line: 52,
          column: 9,
          message: expect.stringContaining('the nearest known is "wheel"'),
        },
      ]),
    });
  });

  test("diagnostics sort by file, line, column and code", async () => {
    const files = changed(
      "modules/box/module.md",
      "sumary",
      "sumary",
      changed("modules/box/module.md", "summary: Take", "sumary: x\nzzz: y\nsummary: Take"),
    );
    const diagnostics = (await call("check", "--json", "--content", writeFolder(files))).json()
      .diagnostics as { file: string; line: number; column: number }[];
    const keys = diagnostics.map(
      ({ file: name, line, column }) => `${name} ${String(line).padStart(6)} ${String(column).padStart(6)}`,
    );
    expect(keys.length).toBeGreaterThan(1);
    expect(keys).toEqual([...keys].sort());
  });

  test("says that checks wait where a module could not be looked at whole, and only there", async () => {
    const waits = /\nSome checks wait until these are mended; they may find more\.\n$/;
    const fields = writeFolder(changed("modules/box/module.md", "revision: 1", "revision: one"));
    expect((await call("check", "--content", fields)).err).toMatch(waits);
    expect((await call("check", "--json", "--content", fields)).json()).toMatchObject({ errors: 1 });
    expect((await call("check", "--content", faulty())).err).not.toMatch(waits);
    const sheet = writeFolder(changed("tools/driver.md", "title: Driver", "titel: Driver"));
    expect((await call("check", "--content", sheet)).err).not.toMatch(waits);
  });

  test("a tab shows as an arrow in the code frame", async () => {
    const folder = writeFolder(changed("modules/box/module.md", "record: which", "record:\n\t- which"));
    expect((await call("check", "--content", folder)).err).toContain("| →- which way round");
  });

  test("no content folder, or one without content: one message that names the way out", async () => {
    for (const folder of ["/no/such/folder", temporaryFolder()]) {
      const { code, err } = await call("check", "--content", folder);
      expect(code).toBe(1);
      expect(err).toContain("benchwright new programme");
      expect(err).toMatch(/\n1 error, 0 warnings\n$/);
    }
  });
});

describe("new", () => {
  const spotless = { errors: 0, warnings: 0, diagnostics: [] };
  const checked = async (folder: string) => (await call("check", "--json", "--content", folder)).json();

  async function expectDraft(folder: string): Promise<void> {
    const { errors, diagnostics } = await checked(folder);
    expect(errors).toBe(0);
    const found = (diagnostics as { code: string }[]).map(({ code }) => code);
    expect(new Set(found)).toEqual(new Set(["unwritten"]));
  }

  test.each([["module"], ["tool"], ["substance"], ["hazard"]])(
    "%s ID passes check, which tells what is still to be written, in a new folder too, and is never written over",
    async (what) => {
      for (const folder of [sound(), join(temporaryFolder(), "content")]) {
        const args = ["new", what, "bench-drill", "--content", folder];
        expect(await call(...args)).toMatchObject({ code: 0, err: "" });
        await expectDraft(folder);
        expect(await call(...args)).toMatchObject({
          code: 2,
          err: expect.stringMatching(
            /exists already; nothing is written\. Take another id, or remove .* needed\.\n$/,
          ),
        });
      }
    },
  );

  test.each([["programme"], ["quiz box"]])("%s is there once: it has no other id to take", async (what) => {
    const content = sound();
    const args = ["new", ...what.split(" "), "--content", content];
    await call(...args);
    expect(await call(...args)).toMatchObject({
      code: 2,
      err: expect.stringMatching(
        /exists already; nothing is written\. Write on in it, or remove it to begin anew\.\n$/,
      ),
    });
  });

  test("a programme has a tool, a hazard and a module with a quiz, and passes check, which tells what is still to be written", async () => {
    const folder = join(temporaryFolder(), "content");
    const args = ["new", "programme", "--content", folder];
    expect(await call(...args)).toMatchObject({ code: 0, err: "" });
    await expectDraft(folder);
    expect([...treeOf(folder).keys()].map((path) => path.split("/")[1]).sort()).toEqual([
      "hazards",
      "modules",
      "modules",
      "programme.yaml",
      "tools",
    ]);
    const before = treeOf(folder);
    expect(await call(...args)).toMatchObject({
      code: 2,
      err: expect.stringContaining("nothing is written"),
    });
    expect(treeOf(folder)).toEqual(before);
  });

  test("a quiz for a module that has none", async () => {
    const folder = writeFolder(withoutFile("modules/box/quiz.yaml"));
    expect(await call("new", "quiz", "box", "--content", folder)).toMatchObject({ code: 0, err: "" });
    expect(await checked(folder)).toEqual(spotless);
    expect(await call("new", "quiz", "box", "--content", folder)).toMatchObject({ code: 2 });
    expect(await call("new", "quiz", "bix", "--content", folder)).toMatchObject({
      code: 2,
      err: expect.stringContaining('no module "bix". Did you mean box? There are box.'),
    });
  });

  test("from within the content folder, the folder that is meant is named", async () => {
    const content = sound();
    const { code, err } = await call("check", "--content", join(content, "content"));
    expect({ code, err }).toEqual({
      code: 1,
      err: expect.stringContaining(`/content; ${content} holds a programme.yaml. Give the folder`),
    });
  });
});

describe("order", () => {
  const graph = file.bind(undefined, "graph.json");
  const chain = () =>
    graph(
      JSON.stringify({
        steps: ["a", "b", "c"],
        before: [["a", "b"], { first: "b", then: "c", because: "b covers c", critical: true }],
      }),
    );

  test("a right order", async () => {
    expect((await call("order", "--graph", chain(), "--given", "a,b,c", "--json")).json()).toEqual({
      valid: true,
      moves: 0,
      worst: 2,
      score: 1,
      breaks: [],
      fix: [],
      fixed: ["a", "b", "c"],
      missing: [],
      extra: [],
      failedCritical: false,
    });
  });

  test("a wrong order is a verdict, not an error", async () => {
    const { code, json } = await call("order", "--graph", chain(), "--given", "a,c,b", "--json");
    expect(code).toBe(0);
    expect(json()).toMatchObject({
      valid: false,
      moves: 1,
      score: 0.5,
      breaks: [{ first: "b", then: "c", because: "b covers c", critical: true }],
      failedCritical: true,
    });
    const words = await call("order", "--graph", chain(), "--given", "a,c,b");
    expect(words.out).toContain('"b" must come before "c", because b covers c (critical)');
  });

  test("what was left out and what does not belong", async () => {
    const { json } = await call("order", "--graph", chain(), "--given", "c,x,a", "--json");
    expect(json()).toMatchObject({ valid: false, missing: ["b"], extra: ["x"], moves: 3, score: 0 });
  });

  test("the order from a file, JSON or a line a step", async () => {
    const expected = { valid: true };
    expect(
      (await call("order", "--graph", chain(), "--given", file("o.json", '["a","b","c"]'), "--json")).json(),
    ).toMatchObject(expected);
    expect(
      (
        await call("order", "--graph", chain(), "--given", file("o.txt", "a\r\nb\r\n\r\nc\n"), "--json")
      ).json(),
    ).toMatchObject(expected);
  });

  test("--count: 6 orders of three free steps, one of a chain", async () => {
    const free = graph('{"steps": ["a", "b", "c"], "before": []}');
    expect((await call("order", "--graph", free, "--count", "--json")).json()).toEqual({
      steps: 3,
      width: 3,
      height: 1,
      orders: "6",
      chance: 1,
    });
    expect((await call("order", "--graph", chain(), "--count", "--json")).json()).toMatchObject({
      width: 1,
      height: 3,
      orders: "1",
      chance: 1 / 6,
    });
  });

  test("--count in words: what each figure means, and the chance as one in so many", async () => {
    const free = graph('{"steps": ["a", "b", "c"], "before": []}');
    expect((await call("order", "--graph", free, "--count")).out).toMatch(
      /^width +3 +the most steps of which none has to come before another\n.*\norders +6 .*\nchance +1 in 1 /m,
    );
    // 30! = 265252859812191058636308480000000 (OEIS A000142): one order of a chain of 30 is right.
    const names = Array.from({ length: 30 }, (_, i) => `s${i}`);
    const long = graph(
      JSON.stringify({ steps: names, before: names.slice(1).map((name, i) => [names[i], name]) }),
    );
    expect((await call("order", "--graph", long, "--count")).out).toMatch(/^chance +1 in 2\.7e32 /m);
  });

  test("--count of more than 2,000,000 down-sets gives null and says so", async () => {
    // A zigzag: no two of its 30 upper steps are bound, so that there are at least 2^30 down-sets.
    const steps = Array.from({ length: 60 }, (_, i) => `s${i}`);
    const before = steps.flatMap((step, i) =>
      i % 2 ? [] : [i - 1, i + 1].filter((j) => j >= 0).map((j) => [step, steps[j]]),
    );
    const fence = graph(JSON.stringify({ steps, before }));
    const { code, json } = await call("order", "--graph", fence, "--count", "--json");
    expect(code).toBe(0);
    expect(json()).toEqual({ steps: 60, width: 30, height: 2, orders: null, chance: null });
    expect((await call("order", "--graph", fence, "--count")).out).toMatch(
      /^orders +not counted: there are more than 2,000,000 sets of steps/m,
    );
  });

  test("a module of the content folder", async () => {
    const { json } = await call(
      "order",
      "--module",
      "box",
      "--content",
      sound(),
      "--given",
      "brake-off,lid-off,wheel-off,clean,wheel-on,brake-on,lid-on",
      "--json",
    );
    expect(json()).toMatchObject({ valid: true });
    expect(await call("order", "--module", "bix", "--content", sound(), "--count")).toMatchObject({
      code: 2,
      err: expect.stringContaining('no module "bix"'),
    });
    expect(await call("order", "--module", "box", "--content", faulty(), "--count")).toMatchObject({
      code: 1,
      err: expect.stringContaining("unknown-target"),
    });
  });

  test("a duplicate in the order is a wrong call", async () => {
    expect(await call("order", "--graph", chain(), "--given", "a,b,a")).toMatchObject({
      code: 2,
      err: expect.stringContaining('"a" more than once'),
    });
  });

  test.each([
    ["{", "is not JSON"],
    ["[]", '"steps" must be a list'],
    ['{"steps": [], "before": []}', "at least one step"],
    ['{"steps": ["a"]}', '"before" must be a list'],
    ['{"steps": ["a"], "before": [["a"]]}', "pair 1"],
    ['{"steps": ["a"], "before": [["a", "b"]]}', '"b", which "steps" does not list'],
    ['{"steps": ["a"], "before": [["a", "a"]]}', '"a" before itself'],
    ['{"steps": ["a", "a"], "before": []}', "listed twice"],
    ['{"steps": ["a", "b"], "before": [["a", "b"], ["b", "a"]]}', "come before themselves"],
    [
      JSON.stringify({ steps: Array.from({ length: 100_000 }, (_, i) => `s${i}`), before: [] }),
      "the limit is",
    ],
  ])("a graph file that is wrong: %.40s", async (text, says) => {
    expect(await call("order", "--graph", graph(text), "--count")).toMatchObject({
      code: 1,
      out: "",
      err: expect.stringContaining(says),
    });
  });

  test("steps named like properties of objects", async () => {
    const odd = graph(
      '{"steps": ["constructor", "__proto__", "toString"], "before": [["constructor", "__proto__"]]}',
    );
    expect(
      (await call("order", "--graph", odd, "--given", "__proto__,constructor,toString", "--json")).json(),
    ).toMatchObject({ valid: false, moves: 1, breaks: [{ first: "constructor", then: "__proto__" }] });
  });
});

describe("schema", () => {
  test("JSON Schemas by name, with fields and their kinds", async () => {
    const all = (await call("schema")).json();
    expect(Object.keys(all)).toEqual([
      "programme",
      "module",
      "step",
      "quiz",
      "tool",
      "substance",
      "hazard",
      "revisions",
    ]);
    const step = (await call("schema", "step")).json();
    expect(step).toMatchObject({
      type: "object",
      required: ["id"],
      additionalProperties: false,
      properties: { critical: { type: "boolean" } },
    });
    expect(step).toEqual(all.step);
  });

  test("every field of every schema has a description in words", async () => {
    const all = (await call("schema")).json();
    const seen: string[] = [];
    const waiting: [string, unknown][] = [["", all]];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      const [path, value] = next;
      if (typeof value !== "object" || value === null) continue;
      const { properties } = value as { properties?: Record<string, { description?: string }> };
      for (const [name, field] of Object.entries(properties ?? {})) {
        seen.push(`${path} ${name}`);
        expect(field.description ?? "", `${path} ${name}`).toMatch(/\S{2,} \S+.*[.:]/);
      }
      for (const [name, inner] of Object.entries(value)) waiting.push([`${path}/${name}`, inner]);
    }
    for (const name of Object.keys(all)) expect(seen.join("\n")).toContain(`/${name} `);
    expect(seen).toContain("/module/properties/parts/additionalProperties held-by");
  });
});

describe("build", () => {
  test("stops before anything is rendered where the content has errors, and leaves the last good site", async () => {
    const site = join(temporaryFolder(), "site");
    expect(await call("build", "--content", sound(), "--to", site)).toMatchObject({ code: 0, err: "" });
    const before = readFileSync(join(site, "index.html"), "utf8");
    const { code, json } = await call("build", "--content", faulty(), "--to", site, "--json");
    expect(code).toBe(1);
    expect(json()).toMatchObject({ errors: expect.any(Number), diagnostics: expect.any(Array) });
    expect(readFileSync(join(site, "index.html"), "utf8")).toBe(before);
    expect(readdirSync(join(site, ".."))).toEqual(["site"]);
    expect((await call("build", "--content", faulty(), "--to", site)).err).toContain("the last good site");
  });

  test("speaks of a last good site only where there is one, and counts one module as one", async () => {
    const site = join(temporaryFolder(), "site");
    expect((await call("build", "--content", faulty(), "--to", site)).err).toMatch(/\nNothing is built\.\n$/);
    const { out } = await call("build", "--content", sound(), "--to", site);
    expect(out).toMatch(/^\d+ pages of 1 module in \d+ ms: /);
  });

  test("--json tells pages, modules and milliseconds", async () => {
    const { code, json } = await call(
      "build",
      "--content",
      sound(),
      "--to",
      join(temporaryFolder(), "site"),
      "--json",
    );
    expect(code).toBe(0);
    expect(json()).toMatchObject({
      pages: expect.any(Number),
      modules: 1,
      ms: expect.any(Number),
      errors: 0,
    });
  });

  test("never replaces a folder that it did not build, nor one that holds the content", async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, "diary.txt"), "mine");
    expect(await call("build", "--content", sound(), "--to", folder)).toMatchObject({
      code: 2,
      err: expect.stringContaining("no build has made"),
    });
    expect(existsSync(join(folder, "diary.txt"))).toBe(true);
    const content = sound();
    expect(await call("build", "--content", content, "--to", content)).toMatchObject({ code: 2 });
    expect(await call("build", "--content", content, "--to", join(content, ".."))).toMatchObject({ code: 2 });
    expect(await call("build", "--content", content, "--to", join(content, "site"))).toMatchObject({
      code: 2,
    });
    expect(existsSync(join(content, "programme.yaml"))).toBe(true);
  });
});
