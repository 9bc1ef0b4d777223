/**
 * Our texts of hazard and precautionary statements are those of codes that the GHS list has and has not struck out. That the words
 * are the same is held row by row in tables/ghs.ts. EUH066 is not in the list: Regulation (EC) 1272/2008, annex II, from memory.
 */
import { expect, test } from "vitest";
import { precautionTexts, statementTexts } from "../../layouts/ghs.ts";
import { ghsStatements } from "./tables/ghs.ts";

const inForce = ghsStatements.rows
  .filter((row) => !row.get("Hazard Statement")!.startsWith("(Deleted)"))
  .map((row) => row.get("H-Code")!);

test("the table was read", () => {
  expect(new Set(inForce).size).toBeGreaterThan(150);
});

test.each([...statementTexts.keys(), ...precautionTexts.keys()].filter((code) => code !== "EUH066"))(
  "%s is in force",
  (code) => {
    expect(inForce).toContain(code);
  },
);
