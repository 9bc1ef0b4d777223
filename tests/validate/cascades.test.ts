/** One slip of the author's hand is one message, or two: what only follows from it is not reported beside it. */
import { expect, test } from "vitest";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { changed, type Files, withFile, withoutFile, writeFolder } from "../support/content-folder.ts";
import { recordExamples } from "./record-examples.ts";

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

const withoutStep = (id: string): Files => {
  const text = withoutFile("nothing").get(module) as string;
  return withFile(
    module,
    text
      .split(/^(?=## )/m)
      .filter((section) => !section.includes(`\nid: ${id}\n`))
      .join(""),
  );
};

/** What is said of the sound module with one thing wrong in its acts. The quiz may miss the step; that is its own fault. */
test.each([
  ["the removal of a cover and its screws", "remove: [lid-screws, lid]\ntools", "tools", "cover-on"],
  ["the removal of screws", "remove: [lid-screws, lid]", "remove: [lid]", "still-held"],
  ["the removal of a cover", "remove: [lid-screws, lid]", "remove: [lid-screws]", "cover-on"],
  ["the removal of a part", "remove: wheel\n", "", "refits-what-is-on"],
  ["the refitting of a part", "refit: [wheel]\n", "", "ends-off"],
  ["the refitting of screws", "refit: [lid, lid-screws]", "refit: [lid]", "tightens-what-is-not-in"],
  ["the tightening", "tighten: [lid-screws]\n", "", "ends-off"],
  ["one of four screws", "remove: [lid-screws, lid]", "remove: [{lid-screws: 3}, lid]", "still-held"],
  ["a state", "id: brake-off\nmakes: {brake: off}", "id: brake-off", "wrong-state"],
  ["the name of a part", "remove: wheel\n", "remove: whel\n", "unknown-target"],
  ["the name of a set", "remove: [lid-screws, lid]", "remove: [lid-screw, lid]", "unknown-target"],
  ["the name of a state", "makes: {brake: off}", "makes: {brakes: off}", "unknown-state"],
  ["a count", "remove: [lid-screws, lid]", "remove: [{lid-screws: 5}, lid]", "act-count"],
  [
    "a tool's name in the module",
    "tools: [driver]\nsubstances",
    "tools: [drivre]\nsubstances",
    "unknown-tool",
  ],
  ["a substance's name in the step", "substances: [spirit]", "substances: [spirits]", "unknown-substance"],
  ["a substance's name in the module", "{use: spirit,", "{use: spirits,", "unknown-substance"],
])("one message where %s is wrong or forgotten", (_, from, to, expected) => {
  expect(codesOf(inModule(from, to))).toEqual([expected]);
});

test("a step that is left out is missed once in the module", () => {
  expect(codesOf(withoutStep("wheel-off"))).toEqual(["dead-link", "refits-what-is-on", "unknown-step"]);
});

test("two slips about different things are two messages, and a slip after a part is back is one of its own", () => {
  const second = inModule("remove: wheel\n", "");
  expect(codesOf(changed(module, "tighten: [lid-screws]\n", "", second))).toEqual([
    "ends-off",
    "refits-what-is-on",
  ]);
  const again = "tools: [driver]\nphase: build\n```\n";
  const late = inModule("remove: [lid-screws, lid]", "remove: [lid]");
  const more = "\n## Again\n\n```yaml step\nid: again\nrefit: lid\n```\n";
  expect(codesOf(changed(module, again, again + more, late))).toEqual(["refits-what-is-on", "still-held"]);
});

test("a module that is still a draft is not to be released; written, it is", () => {
  const { files } = recordExamples.find(({ code }) => code === "revision-unreleased")!;
  expect(codesOf(files)).toContain("revision-unreleased");
  const ofModule = changed(
    module,
    "summary: Take the lid off,",
    "summary: What is done is still to be written,",
    files,
  );
  expect(codesOf(ofModule)).toContain("unwritten");
  expect(codesOf(ofModule)).not.toContain("revision-unreleased");
  const ofStep = changed(module, "\nProse.\n", "\nWhat is done here is still to be written.\n", files);
  expect(codesOf(ofStep)).toContain("unwritten");
  expect(codesOf(ofStep)).not.toContain("revision-unreleased");
});
