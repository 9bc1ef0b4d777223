/** Property classes and their loads. */

import { type Strength, strengthOf } from "../../../src/engine/workshop/bolts/strength.ts";
import { stressAreaMm2 } from "../../../src/engine/workshop/threads/dimensions.ts";
import { have, problemOf, sizeOf } from "../../engine/workshop/ask.ts";
import type { Row } from "../../engine/workshop/table.ts";
import { type Check, cell, nearPart, same, table } from "../ledger.ts";

export const classes = table(
  "iso898_1_classes.csv",
  "ISO 898-1:2013, Table 3",
  (row) => `${row.get("class")} ${row.get("d_range")}`,
  (row) => {
    const {
      tensile,
      yield: yielding,
      proof,
    } = have(strengthOf(row.get("class")!, row.get("d_range") === "d>16" ? 20 : 16));
    return [
      same("Rm_min", tensile, cell(row, "Rm_min"), "memory"),
      same("yield_min", yielding, cell(row, "yield_min"), "memory"),
      same("Sp", proof!, cell(row, "Sp"), "memory"),
    ];
  },
);

/** The class of 1988 that the edition of 2013 no longer has, of which the table still prints the loads. */
export const withdrawn = "3.6";

const rounded = "the standard rounds areas and loads to three figures, 0.7 % together";

function loads(row: Row): Check[] {
  const size = sizeOf(row.get("size")!);
  const area = stressAreaMm2(size);
  if (row.get("class") === withdrawn) {
    const { code } = problemOf(strengthOf(withdrawn, size.diameterMm));
    return [
      same("no such class any more", code, "unknown-class", "published"),
      nearPart(
        "Fu_N_published",
        cell(row, "Rm_min_MPa") * area,
        cell(row, "Fu_N_published"),
        0.007,
        rounded,
        "published",
      ),
    ];
  }
  const strength: Strength = have(strengthOf(row.get("class")!, size.diameterMm));
  const isPrinted = row.get("Fp_N_published") !== "";
  const proof = isPrinted ? "Fp_N_published" : "Fp_N_calc";
  return [
    nearPart(
      "Fu_N_published",
      strength.tensile * area,
      cell(row, "Fu_N_published"),
      0.007,
      rounded,
      "published",
    ),
    nearPart(
      proof,
      strength.proof! * area,
      cell(row, proof),
      0.007,
      rounded,
      isPrinted ? "published" : "formula",
    ),
  ];
}

export const classLoads = table(
  "iso898_1_loads.csv",
  "ISO 898-1, Tables 4 (least ultimate loads) and 5 (proof loads)",
  (row) => `${row.get("size")} ${row.get("class")}`,
  loads,
);
