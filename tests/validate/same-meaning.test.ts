/** `words:` of programme.yaml, each way in which an author gets it wrong: one message, at the place, that says what is expected. */
import { expect, test } from "vitest";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { changed, writeFolder } from "../support/content-folder.ts";

const programme = "programme.yaml";

/** The messages, with the text from their place to the end of its line. */
function found(words: string): { at: string; code: string; message: string }[] {
  const files = changed(programme, "name: Test bench\n", `name: Test bench\n${words}\n`);
  const { reading, diagnostics } = read(writeFolder(files));
  const lines = String(files.get(programme)).split("\n");
  return [...diagnostics, ...validate(reading).diagnostics].map(({ code, line, column, message }) => ({
    at: lines[line - 1]!.slice(column - 1),
    code,
    message,
  }));
}

const row = "must be two or more different names that mean the same, with commas between";
const example = "names that mean the same, with commas between: methylated spirit, meths.";
const wrong: readonly (readonly [why: string, words: string, at: string, says: readonly string[]])[] = [
  ["no list", "words: meths", "meths", ['"words" is "meths". Write a list.']],
  ["nothing", "words:", "", ['"words" is empty. Write a list.']],
  [
    "fields in place of rows",
    "words: {meths: spirit}",
    "{meths: spirit}",
    ["is a map of fields. Write a list."],
  ],
  ["more than 500 rows", `words:\n${"  - a, b\n".repeat(501)}`, "- a, b", ["Write at most 500 rows."]],
  ["an empty row", "words:\n  -", "", ["number 1 of this list is empty.", example]],
  ["a number for a row", "words:\n  - a, b\n  - 5", "5", ["number 2 of this list is 5.", example]],
  ["a colon in a row", "words:\n  - meths: spirit", "meths: spirit", ["is a map of fields.", example]],
  ["one name", "words:\n  - meths", "meths", [`${row}, not "meths" alone`]],
  ["a semicolon for a comma", "words:\n  - meths; spirit", "meths; spirit", ['not "meths; spirit" alone']],
  ["two commas", "words:\n  - meths, , spirit", "meths, , spirit", [`${row}; one of them is empty`]],
  ["a comma at the end", "words:\n  - meths, spirit,", "meths, spirit,", ["one of them is empty"]],
  ["a name twice", "words:\n  - meths, spirit, Meths", "meths", [`${row}; "Meths" stands there twice`]],
  ["no letter", "words:\n  - '??, meths'", "'??, meths'", ['there is no letter or digit in "??"']],
  ["a list of none", "words:\n  - []", "[]", [`${row}; none stands there`]],
  ["a list of one", "words:\n  - [meths]", "[meths]", ['not "meths" alone']],
  ["an empty name in a list", "words:\n  - [meths, '']", "[meths, '']", ["one of them is empty"]],
  ["a number in a list", "words:\n  - [meths, 5]", "5]", ["number 2 of this list is 5. Write text."]],
  ["a list in a list", "words:\n  - [meths, [spirit]]", "[spirit]]", ["is a list. Write text."]],
];

test.each(wrong)("%s", (_, words, at, says) => {
  const messages = found(words);
  expect(messages).toEqual([
    {
      at: expect.stringMatching(at === "" ? /^(?:|:|-)$/ : escaped(at)),
      code: "wrong-type",
      message: expect.any(String),
    },
  ]);
  for (const what of says) expect(messages[0]!.message).toContain(what);
});

const escaped = (text: string): RegExp => new RegExp(`^${text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}`);

test("rows that are sound, in both ways of writing and with a name in two of them, are taken", () => {
  expect(found("words:\n  - meths, methylated spirit\n  - [meths, 'spirit, denatured']\n")).toEqual([]);
  expect(found("words: []")).toEqual([]);
});
