/** A drive that is spelt almost like a known one is a slip of the pen. Others stay as written: old machines have odd ones. */
import { nearest } from "../nearest.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { inFile, type Rule } from "./rule.ts";

/** Kinds of drive and head by the names that fastener standards give them (ISO 1891-1 and -2; from memory). */
const drives: ReadonlySet<string> = new Set([
  "slotted",
  "cross recess",
  "cross recess H",
  "cross recess Z",
  "hexagon",
  "hexagon socket",
  "hexalobular socket",
  "square",
  "square socket",
  "knurled",
  "wing",
  "two-hole",
]);

export const driveNames: Rule = {
  name: "drives",
  check(content, reporter) {
    for (const tool of content.tools.values())
      for (const [index, drive] of tool.drives.entries())
        checkDrive(drive, () => inFile(content, tool, ["drive", index]), reporter);
    for (const module of content.modules.values()) {
      for (const { id, drive } of module.procedure.fasteners.values())
        checkDrive(drive, () => inFile(content, module, ["fasteners", id, "drive"]), reporter);
    }
  },
};

function checkDrive(drive: string | undefined, spot: () => Spot, reporter: Reporter): void {
  if (drive === undefined || drives.has(drive)) return;
  const near = nearest(drive, drives);
  if (near !== undefined)
    reporter.report("odd-drive", spot(), `the drive "${drive}" is not a known one; the nearest is "${near}"`);
}
