/** What is wrong with a programme's words is told, and nothing is built. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { checkContent } from "../../src/cli/content.ts";
import { changed, type Files, soundFiles, withFile, writeFolder } from "../support/content-folder.ts";
import { projectDir } from "../support/project.ts";
import { runTool } from "../support/run-command.ts";

const german = readFileSync(join(projectDir, "words/de.po"), "utf8");
const speaking = (language: string, files: Files = soundFiles): Files =>
  changed("programme.yaml", "name: Test bench\n", `name: Test bench\nlanguage: ${language}\n`, files);
const withWords = (name: string, text: string | Uint8Array, language = name): Files =>
  speaking(language, withFile(`words/${name}.po`, text));

const diagnose = (files: Files) =>
  checkContent(writeFolder(files)).diagnostics.map(({ code, file, line, message }) => ({
    code,
    file,
    line,
    message,
  }));

test("English and a language of the tool need nothing", () => {
  expect(diagnose(soundFiles)).toEqual([]);
  expect(diagnose(speaking("en-GB"))).toEqual([]);
  expect(diagnose(speaking("de"))).toEqual([]);
  expect(diagnose(speaking("de-AT"))).toEqual([]);
});

test("a language that nobody has words of: told at its place, with those that there are", () => {
  expect(diagnose(speaking("tlh"))).toEqual([
    expect.objectContaining({
      code: "unknown-language",
      file: "programme.yaml",
      line: 2,
      message: expect.stringContaining('"tlh"; there are de, en.'),
    }),
  ]);
});

const entry = (id: string, text: string) => `msgid ${JSON.stringify(id)}\nmsgstr ${JSON.stringify(text)}\n\n`;
const head = 'msgid ""\nmsgstr "Content-Type: text/plain; charset=UTF-8\\n"\n\n';

describe("a programme's own catalogue", () => {
  test("goes before the tool's, message by message, and need not be whole", () => {
    expect(diagnose(withWords("de", head + entry("Modules", "Lehrstücke")))).toEqual([]);
  });

  test("of a new language has to be whole: each message that is missing is told up to a limit", () => {
    const found = diagnose(withWords("nl", head + entry("Modules", "Modules")));
    expect(found).toHaveLength(20);
    expect(found).toContainEqual(
      expect.objectContaining({
        code: "word-missing",
        file: "words/nl.po",
        message: expect.stringMatching(/^"Slacken" .*layouts\/components\/acts\.ts/),
      }),
    );
    expect(found.map(({ message }) => message).join("\n")).toMatch(/And \d{4} more like this\./);
  });

  test.each([
    ["a placeholder lost", "{0} of {1}", "von {0}"],
    ["a placeholder invented", "Modules", "Module {0}"],
    ["a placeholder twice", "Modules", "{0}{0}"],
    ["a tag lost", "Label says <0>{0}</0>", "Etikett: {0}"],
    ["tags that do not close", "Label says <0>{0}</0>", "</0>{0}<0>"],
  ])("%s", (_, id, text) => {
    expect(diagnose(withWords("de", head + entry(id, text)))).toEqual([
      expect.objectContaining({ code: "word-placeholders", file: "words/de.po", line: 4 }),
    ]);
  });

  test("a plural with too few forms", () => {
    const plural =
      'msgid "{0} step"\nmsgid_plural "{0} steps"\nmsgstr[0] "{0} krok"\nmsgstr[1] "{0} kroky"\n';
    const pl = german.replace(/^"Plural-Forms.*\n/m, "");
    expect(diagnose(withWords("pl", `${head}${plural}`)).map(({ code }) => code)).toContain(
      "word-placeholders",
    );
    expect(pl.length).toBeGreaterThan(1000);
  });

  test("a guess by a program counts as none", () => {
    const text = german.replace('msgid "Slacken"', '#, fuzzy\nmsgid "Slacken"');
    expect(diagnose(withWords("nds", text))).toEqual([
      expect.objectContaining({ code: "word-missing", file: "words/nds.po" }),
    ]);
  });

  test.each<[string, string | Uint8Array, string]>([
    ["is no catalogue", 'msgid "a\nmsgstr nothing\n', "words-unreadable"],
    ["is empty", "", "words-unreadable"],
    [
      "is of another charset by its header",
      head.replace("UTF-8", "ISO-8859-1") + entry("Modules", "Module"),
      "words-unreadable",
    ],
    ["is not UTF-8", Buffer.from(`${head}${entry("Hole", "Bohrung f\xfcr")}`, "latin1"), "not-utf8"],
  ])("one that %s", (_, text, code) => {
    expect(diagnose(withWords("nl", text)).map((one) => one.code)).toContain(code);
  });
});

const site = mkdtempSync(join(tmpdir(), "benchwright-words-"));
afterAll(() => rmSync(site, { recursive: true, force: true }));

test("a missing word stops the build", { timeout: 120_000 }, async () => {
  const to = join(site, "site");
  const { code, stderr } = await runTool([
    "build",
    "--content",
    writeFolder(withWords("nl", head)),
    "--to",
    to,
  ]);
  expect(code).toBe(1);
  expect(stderr).toContain("word-missing");
  expect(existsSync(to)).toBe(false);
});
