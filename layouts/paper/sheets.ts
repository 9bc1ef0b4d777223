/** The sheets that a module has on paper, in the order in which they are printed. */
import { t } from "../../src/engine/words.ts";
import { authorSlip } from "./author-slip.ts";
import { benchSheet } from "./bench-sheet.ts";
import { demonstration } from "./demonstration.ts";
import { fastenerDrawings } from "./fastener-drawings.ts";
import { ownerSheet } from "./owner-sheet.ts";
import { practiceSlips, slipKeys } from "./practice-slips.ts";
import type { PaperSheet } from "./sheet.ts";
import { trayLabels } from "./tray-labels.ts";

export const paperSheets: readonly PaperSheet[] = [
  { id: "bench", name: t`Bench sheet`, make: benchSheet },
  { id: "labels", name: t`Tray labels`, make: trayLabels },
  { id: "demonstration", name: t`Demonstration sheet`, make: demonstration },
  { id: "owner", name: t`Owner’s sheet`, make: ownerSheet },
  { id: "drawings", name: t`Fasteners at true size`, make: fastenerDrawings },
  { id: "slips", name: t`Practice slips`, make: practiceSlips },
  { id: "key", name: t`Key to the practice slips, for the mentor`, make: slipKeys },
  { id: "author", name: t`Slip to the author`, make: authorSlip },
];
