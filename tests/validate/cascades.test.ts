/** One slip of the author's hand is one message, or two: what only follows from it is not reported beside it. */
import { expect, test } from "vitest";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { changed, type Files, withFile, withoutFile, writeFolder } from "../support/content-folder.ts";

const module = "modules/box/module.md";

function codesOf(files: Files): string[] {
  const { reading, diagnostics } = read(writeFolder(files));
  return [...diagnostics, ...validate(reading).diagnostics].map(({ code }) => code).sort();
}

const inModule = (from: string, to: string): Files => changed(module, from, to);

test.each([
  ["hazard", "hazards/vapour.md", "signal: warning", "signal: alarm", "wrong-type"],
  ["tool", "tools/driver.md", "title: Driver", "titel: Driver", "missing-field unknown-field"],
  ["substance", "substances/spirit.md", "flammable: true", "flammable: perhaps", "wrong-type"],
  ["programme", "programme.yaml", "look-for: coils, ", "", "missing-field"],
])("a faulty %s does not make those who name it faulty", (_, path, from, to, expected) => {
  expect(codesOf(changed(path, from, to)).join(" ")).toBe(expected);
});

test.each([
  ["no front matter", "hazards/vapour.md", "# Vapour\n", "front-matter-missing"],
  ["no YAML", "hazards/vapour.md", "---\ntitle: [Vapour\n---\n", "front-matter-yaml"],
  ["no text", "tools/driver.md", new Uint8Array([0xff, 0xfe]), "not-utf8"],
  ["no end", "substances/spirit.md", "x".repeat(1024 * 1024 + 1), "too-large"],
  ["no programme's name", "programme.yaml", "name: [a\n", "file-yaml"],
])("a sheet with %s is there all the same", (_, path, text, expected) => {
  expect(codesOf(withFile(path, text))).toEqual([expected]);
});

test("links to places of a page that can't be read, and of a step that can't, are not called dead", () => {
  const quiz = 'see: "#clean"\n  - id: order';
  expect(codesOf(changed("modules/box/quiz.yaml", quiz, quiz, withFile(module, "no front matter")))).toEqual([
    "front-matter-missing",
  ]);
  expect(codesOf(inModule("id: wheel-off\n", "id: [wheel-off\n"))).toEqual(["step-yaml"]);
});

test("a step that is not marked as one is the only thing said of its module", () => {
  expect(codesOf(inModule("```yaml step\nid: wheel-off", "```yaml\nid: wheel-off"))).toEqual([
    "step-unmarked",
  ]);
});

test("no programme.yaml: its conditions are not called unknown", () => {
  expect(codesOf(withoutFile("programme.yaml"))).toEqual(["no-programme"]);
});
