import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { generate } from "./generate.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "generated-"));
  generate(join(folder, "a"), { modules: 20, seed: 1 });
});
afterAll(() => rmSync(folder, { recursive: true }));

const moduleText = (content: string): string =>
  readFileSync(join(folder, content, "modules/module-0007/module.md"), "utf8");

test("what is measured is sound content: no error and no warning", () => {
  const { reading, diagnostics } = read(join(folder, "a"));
  const validated = validate(reading);
  expect([...diagnostics, ...validated.diagnostics]).toEqual([]);
  expect(validated.content.modules.size).toBe(20);
  expect(validated.content.quizzes.size).toBe(20);
});

test("a module has 900 words of prose, 21 steps and 8 questions", () => {
  const text = moduleText("a");
  const prose = text
    .replace(/^---\n.*?\n---\n/s, "")
    .replaceAll(/^## .*$/gm, "")
    .replaceAll(/```yaml step\n.*?```/gs, "");
  expect(prose.trim().split(/\s+/)).toHaveLength(900);
  expect(text.match(/^```yaml step$/gm)).toHaveLength(21);
  expect(
    readFileSync(join(folder, "a/modules/module-0007/quiz.yaml"), "utf8").match(/^ {2}- id:/gm),
  ).toHaveLength(8);
});

test("the same seed makes the same programme, another seed another", () => {
  generate(join(folder, "b"), { modules: 8, seed: 1 });
  generate(join(folder, "c"), { modules: 8, seed: 2 });
  expect(moduleText("b")).toBe(moduleText("a"));
  expect(moduleText("c")).not.toBe(moduleText("a"));
  expect(readdirSync(join(folder, "b/modules"))).toHaveLength(8);
});
