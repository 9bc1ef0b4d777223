/** One module begins where another one has left off. */
import { expect, test } from "vitest";
import { walkOfProcedure } from "../../src/engine/procedure/walk-of-procedure.ts";
import { read } from "../../src/read/read.ts";
import { outlinesOf } from "../../src/validate/outlines.ts";
import { check, parse, validate } from "../../src/validate/validate.ts";
import { changed, type Files, writeFolder } from "../support/content-folder.ts";
import { twoModules } from "../support/two-modules.ts";

const validated = (files: Files) => validate(read(writeFolder(files)).reading);

/** Each fault with its file. */
const faults = (files: Files) =>
  validated(files).diagnostics.map(({ code, file }) => `${file.split("/")[1]} ${code}`);

test("what the one hands on is off where the other begins, and both are sound", () => {
  const { content, diagnostics } = validated(twoModules);
  expect(diagnostics).toEqual([]);
  const { trays } = walkOfProcedure(content.modules.get("build")!.procedure);
  expect([...trays[0]!.parts]).toEqual(["lid"]);
  expect(trays[0]!.sets.get("lid-screws")).toEqual({ tight: 0, slack: 0, out: 4 });
  expect(trays[1]!.parts.size).toBe(0);
});

test("without a beginning nothing is off", () => {
  const files = changed("modules/build/module.md", "begins-from: strip\n", "", twoModules);
  expect(faults(files)).toContain("build refits-what-is-on");
  expect(faults(files)).toContain("strip handed-nowhere");
});

test("what is handed on and not refitted is missed at the end", () => {
  const files = changed("modules/build/module.md", "refit: [wheel]\n", "", twoModules);
  expect(faults(files)).toContain("build ends-off");
});

test("what is left off for good is off in the next module too", () => {
  const files = changed(
    "modules/strip/module.md",
    "wheel: {to: build}",
    "wheel: discarded",
    changed("modules/build/module.md", "refit: [wheel]\n", "work: [wheel]\n", twoModules),
  );
  expect(faults(files)).toContain("build ends-off");
});

test("a circle of modules", () => {
  const files = changed(
    "modules/strip/module.md",
    "revision: 1\n",
    "revision: 1\nbegins-from: build\n",
    twoModules,
  );
  expect(faults(files)).toContain("build loop");
});

test("a share of the modules is checked as the whole is, from the outlines of the others", () => {
  const folder = writeFolder(changed("modules/build/module.md", "refit: [wheel]\n", "", twoModules));
  const { reading } = read(folder);
  const only = (path: string) => ({
    ...reading,
    sources: reading.sources.filter(({ kind, path: each }) => kind !== "module" || each === path),
  });
  const ends = (path: string) => {
    const outlines = structuredClone(outlinesOf(parse(reading).parsed));
    return check(parse(only(path)).parsed, outlines).diagnostics.filter(({ file }) => file === path);
  };
  const whole = validate(reading).diagnostics;
  for (const path of ["modules/build/module.md", "modules/strip/module.md"])
    expect(ends(path)).toEqual(whole.filter(({ file }) => file === path));
});

test("the same beginning is the same module, so that what was made from it holds", () => {
  const { reading } = read(writeFolder(twoModules));
  const { parsed } = parse(reading);
  const module = () => check(parsed, structuredClone(outlinesOf(parsed))).content.modules.get("build");
  expect(module()).toBe(module());
});
