/** Every code of the catalogue is brought about by an example, at the place where the fault is. */
import { expect, test } from "vitest";
import { type Code, codes } from "../../src/model/codes.ts";
import { type Files, soundFiles, writeFolder } from "../support/content-folder.ts";
import { diagnose } from "./diagnose.ts";
import { examples } from "./examples.ts";

/** Codes that need a file system to bring about, with the test that does. */
const elsewhere = new Map<Code, string>([
  ["no-content", "tests/read/harm.test.ts"],
  ["unreadable", "tests/read/harm.test.ts"],
  ["unknown-language", "tests/words/check.test.ts"],
  ["words-unreadable", "tests/words/check.test.ts"],
  ["word-missing", "tests/words/check.test.ts"],
  ["word-placeholders", "tests/words/check.test.ts"],
]);

/** The text from a line and column on, both from 1. */
function textAt(
  files: Files,
  { file, line, column }: { file: string; line: number; column: number },
): string {
  const text = files.get(file);
  if (typeof text !== "string") return "";
  return [text.split("\n")[line - 1]!.slice(column - 1), ...text.split("\n").slice(line)].join("\n");
}

test("the sound programme has no fault and no warning", () => {
  return expect(diagnose(writeFolder(soundFiles))).resolves.toEqual([]);
});

test.each(examples.map((example, index) => [`${example.code} (${index + 1})`, example] as const))(
  "%s",
  async (_, example) => {
    const found = await diagnose(writeFolder(example.files));
    const fitting = found.filter((one) => one.code === example.code && one.file === example.file);
    expect(fitting, JSON.stringify(found, undefined, 1)).not.toEqual([]);
    expect(fitting.map((one) => textAt(example.files, one).slice(0, 60))).toContainEqual(
      expect.stringMatching(new RegExp(`^${escaped(example.at.slice(0, 60))}`)),
    );
    for (const one of fitting) expect(one.message).toMatch(/^.{10,}\. \S/s);
    expect(fitting.map(({ message }) => message).join("\n")).toContain(example.says ?? "");
  },
);

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

test("every code has an example", () => {
  const shown = new Set<string>([...examples.map(({ code }) => code), ...elsewhere.keys()]);
  expect(Object.keys(codes).filter((code) => !shown.has(code))).toEqual([]);
});
