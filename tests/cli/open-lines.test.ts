import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { openLines } from "../../src/cli/items/open-lines.ts";

const folder = mkdtempSync(join(tmpdir(), "benchwright-lines-"));
afterAll(() => rmSync(folder, { recursive: true }));

async function linesOf(text: string, longest = 1000): Promise<string[]> {
  const file = join(folder, "lines.jsonl");
  writeFileSync(file, text);
  const all: string[] = [];
  for await (const lines of openLines(file, longest)) all.push(...lines);
  return all;
}

// JSON Lines: a line ends with LF, and CR LF is taken too; U+2028 may stand in a JSON text as it is (RFC 8259, section 7).
test.each<[string, string, string[]]>([
  ["LF", "a\nb\n", ["a", "b"]],
  ["CR LF", "a\r\nb\r\n", ["a", "b"]],
  ["CR, as old spreadsheets write it", "a\rb\r", ["a", "b"]],
  ["no end after the last", "a\nb", ["a", "b"]],
  ["an empty line counts", "a\n\nb\n", ["a", "", "b"]],
  ["a byte order mark is no letter of the first", "\uFEFFa\nb\n", ["a", "b"]],
  ["U+2028 and U+2029 end no line", '"a\u2028b"\n"c\u2029d"\n', ['"a\u2028b"', '"c\u2029d"']],
  ["nothing", "", []],
])("%s", async (_name, text, lines) => {
  expect(await linesOf(text)).toEqual(lines);
});

test("lines of a file of several pieces come whole, wherever a piece ends: within a letter, or between CR and LF", async () => {
  for (const shift of [0, 1, 2, 3]) {
    const expected = Array.from({ length: 60_000 }, (_, at) => `é${at}`);
    expected.unshift("x".repeat(shift));
    expect(await linesOf(`${expected.join("\r\n")}\r\n`)).toEqual(expected);
  }
});

test("a line that is too long is named, and not read to its end", async () => {
  await expect(linesOf(`a\nb\n${"x".repeat(1001)}\n`)).rejects.toThrow(
    /lines\.jsonl:3: the line is longer than 1000 characters/,
  );
  await expect(linesOf(`a\n${"x".repeat(5_000_000)}`)).rejects.toThrow(/:2: the line is longer/);
});
