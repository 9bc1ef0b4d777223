/**
 * Hazard and precautionary statements: PubChem's list of GHS codes, which writes US spelling, has typing errors and marks old rows
 * "(Deleted)".
 */
import { readFileSync } from "node:fs";
import { precaution, statement } from "../../../layouts/ghs.ts";
import { ghsCategory } from "../../../src/engine/workshop/air/flammability.ts";
import type { Row } from "../../engine/workshop/table.ts";
import { type Check, same, table } from "../ledger.ts";

/** Lines with a code, by the names of the first line. Blank ones and the head of the second part have none. */
function rows(): Row[] {
  const text = readFileSync(new URL("../trade/ghs/statements.tsv", import.meta.url), "utf8");
  const [head, ...lines] = text.split("\n").map((line) => line.split("\t"));
  return lines
    .filter(([code, words]) => (words ?? "") !== "" && /^[HP]\d{3}/.test(code ?? ""))
    .map((line) => new Map(head!.map((name, at) => [name, line[at] ?? ""])));
}

/** The table's slips aside: spelling, capitals, hyphens, notes in brackets. */
function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/vapour/g, "vapor")
    .replace("may causes", "may cause")
    .replace("hot surface,", "hot surfaces,")
    .replace(/\[[^\]]*\]/g, "")
    .replace(/[^a-z]+/g, " ")
    .trim();
}

/** One row says "emergency" where the annex, and six rows of this list that are joined with it, do not. */
const slips: Readonly<Record<string, string>> = { P317: "Get medical help." };

/** Our words for a code, or of joined codes, are the table's; a code that has none here is printed alone. */
function words(row: Row): Check[] {
  const code = row.get("H-Code")!.replaceAll(" ", "");
  const said = code.startsWith("H") ? statement(code) : precaution(code);
  if (said === code) return [same("printed alone", said, code, "published")];
  const printed = slips[code] ?? row.get("Hazard Statement")!.replace("(Deleted)", "");
  return [same("text", plain(said.slice(code.length)), plain(printed), "published"), ...signal(row, code)];
}

const categories: Readonly<Record<string, readonly [flash: number, boils: number]>> = {
  H224: [-20, 30],
  H225: [-20, 60],
  H226: [40, 150],
  H227: [80, 200],
};

/** The signal word that a flammable liquid of that statement bears. */
function signal(row: Row, code: string): Check[] {
  const [flash, boils] = categories[code] ?? [];
  if (flash === undefined || row.get("GHS Hazard Class") !== "Flammable liquids") return [];
  const found = ghsCategory(flash, boils!)!;
  return [
    same("statement by flash point", found.statement, code, "published"),
    same("signal word", found.signal, row.get("GHS Signal Word")!, "published"),
  ];
}

export const ghsStatements = table(
  "ghs/statements.tsv",
  "UN GHS, annex 3, as PubChem lists it",
  (row) => `${row.get("H-Code")} ${row.get("Hazard Statement")!.slice(0, 40)}`,
  words,
  rows(),
);
