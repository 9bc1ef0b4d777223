/** Every table of tests/reference/trade, once. */

import type { Table } from "../ledger.ts";
import { flammableClasses, solvents, ventilation } from "./air.ts";
import { ghsStatements } from "./ghs.ts";
import { materialTable } from "./materials.ts";
import { classes, classLoads } from "./strength.ts";
import { britishAssociation, clearanceHoles, isoMetric, unified, whitworth } from "./threads.ts";
import { baTolerances, metricScrews } from "./tolerances.ts";
import { handbooks, smallScrewTable, vdiTable, worked } from "./torque.ts";
import { units } from "./units.ts";

export const tables: readonly Table[] = [
  units,
  isoMetric,
  unified,
  britishAssociation,
  whitworth,
  metricScrews,
  baTolerances,
  clearanceHoles,
  classes,
  classLoads,
  vdiTable,
  smallScrewTable,
  worked,
  handbooks,
  materialTable,
  solvents,
  flammableClasses,
  ventilation,
  ghsStatements,
];
