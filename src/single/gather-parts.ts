/** Which pages of a built site belong to a module's one file, in the order in which one would read them. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Address, fileOf, folderOf, type PageKind } from "../model/address.ts";
import { type Part, partOf } from "./part.ts";

/**
 * Names what stands before its elements' ids. The bench view keeps places by the ids of steps, so its ids stay as they
 * are; those of all other parts get their prefix.
 */
const companions: readonly { readonly kind: PageKind; readonly prefix: string }[] = [
  { kind: "module", prefix: "sheet__" },
  { kind: "bench", prefix: "" },
  { kind: "order", prefix: "order__" },
  { kind: "practice", prefix: "practice__" },
  { kind: "dry-run", prefix: "run__" },
  { kind: "quiz", prefix: "quiz__" },
];

const sheetFolders: readonly { readonly kind: PageKind; readonly folder: string }[] = [
  { kind: "hazard", folder: "hazards" },
  { kind: "tool", folder: "tools" },
  { kind: "substance", folder: "substances" },
];

/** The module's own pages, a supervised quiz left out, then the sheets to which its operation sheet leads. */
export function gatherParts(site: string, module: string): Part[] {
  const own = companions.flatMap(({ kind, prefix }) =>
    read(site, { kind, id: module }, `part_${kind}`, prefix),
  );
  const [sheet] = own;
  if (sheet === undefined) return [];
  const sheets = sheetFolders.flatMap(({ kind, folder }) =>
    idsIn(sheet.main, folder).flatMap((id) =>
      read(site, { kind, id }, `part_${kind}_${id}`, `${kind}_${id}__`),
    ),
  );
  return [...own.filter((part) => !isSupervised(part)), ...sheets];
}

function read(site: string, address: Address, id: string, prefix: string): Part[] {
  const file = join(site, fileOf(address));
  if (!existsSync(file)) return [];
  return [partOf(readFileSync(file, "utf8"), { kind: address.kind, id, prefix, folder: folderOf(address) })];
}

/** In the order in which the operation sheet names them first. */
const idsIn = (main: string, folder: string): string[] => [
  ...new Set(
    [...main.matchAll(new RegExp(`href="(?:\\.\\./)+${folder}/([^/"]+)/index\\.html`, "g"))].map(
      (m) => m[1]!,
    ),
  ),
];

/** A mentor's eye does not go with a file. */
const isSupervised = ({ data }: Part): boolean =>
  (data as { supervised?: unknown } | undefined)?.supervised === true;
