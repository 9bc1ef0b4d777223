import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { projectDir, projectFiles } from "../support/project.ts";
import { breaches, textRules } from "./repository.ts";

const files = projectFiles().map((path) => ({ path, text: readFileSync(`${projectDir}/${path}`, "utf8") }));
const texts = files.filter(({ text }) => !text.includes("\0"));

describe.each(textRules)("no $name: $why", (rule) => {
  test("in any file", () => {
    expect(texts.filter(({ path }) => rule.files.test(path)).length).toBeGreaterThan(0);
    expect(texts.flatMap(({ path, text }) => breaches(rule, path, text))).toEqual([]);
  });

  test("and the rule finds its example", () => {
    const path = ["src/engine/a.ts", "src/browser/a.ts", "tests/a.ts", "README.md"].find((name) =>
      rule.files.test(name),
    )!;
    expect(breaches(rule, path, `a good line\n${rule.example.join("")}`)).toEqual([
      expect.stringContaining(`${path}:2`),
    ]);
  });
});
