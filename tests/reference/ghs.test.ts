/**
 * The texts of hazard statements against a published table: PubChem's list of GHS codes (UN GHS annex 3), which writes US
 * spelling, has typing errors and marks old rows "(Deleted)". EUH066 is not in it: Regulation (EC) 1272/2008, annex II, from
 * memory.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { precautionTexts, statementTexts } from "../../layouts/ghs.ts";

const rows = readFileSync(new URL("trade/ghs/statements.tsv", import.meta.url), "utf8")
  .split("\n")
  .map((line) => line.split("\t"))
  .filter(([code, text]) => /^[HP]\d{3}$/.test(code ?? "") && !text?.startsWith("(Deleted)"));

const published = new Map(rows.map(([code, text]) => [code!, text!]));

/** The table's one slip in these rows, "May causes" of H373, spelling, capitals, hyphens and the notes in brackets or after a semicolon aside. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/vapour/g, "vapor")
    .replace("may causes", "may cause")
    .replace(/\[[^\]]*\]/g, "")
    .replace(/[^a-z]+/g, " ")
    .trim();

test("the table was read", () => {
  expect(published.size).toBeGreaterThan(150);
});

test.each([...statementTexts].filter(([code]) => code !== "EUH066"))("%s %s", (code, text) => {
  const found = published.get(code);
  expect(found, code).toBeDefined();
  expect(plain(found!)).toContain(plain(text));
});

test.each([...precautionTexts])("%s %s", (code, text) => {
  const found = published.get(code);
  expect(found, code).toBeDefined();
  // The table writes "surface" where the annex has "surfaces".
  expect(plain(found!.replace("hot surface,", "hot surfaces,"))).toBe(plain(text));
});
