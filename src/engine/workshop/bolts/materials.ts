/** What tapped holes are in: shear strengths. */

import { t } from "../../words.ts";
import { nearestName } from "../edit-distance.ts";
import { bad, good, type Result } from "../result.ts";

export interface Material {
  /** As a call names it. */
  readonly id: string;
  readonly name: string;
  /** Stress at which it shears, MPa. Of a range the lower end. */
  readonly shearMPa: number;
  readonly source: string;
  /** Published: printed in the source. Memory: recalled, to be checked before anything depends on it. Given: by whoever asks. */
  readonly standing: "published" | "memory" | "given";
  readonly warning?: string;
}

const zincPest = t`Old zinc castings can be rotten inside (intergranular corrosion) and then hold next to nothing: look for cracks and swelling, and do not re-tap one.`;
const asSteel = t`0.6 of the tensile strength (VDI 2230)`;
const castIron = t`Cast iron chips at the first thread and gives no warning.`;

type Row = readonly [id: string, name: string, shear: number, source: string, standing: Material["standing"]];

const rows: readonly Row[] = [
  ["steel-mild", t`mild steel, S235`, 216, t`EN 10025-2, 360 MPa; ${asSteel}`, "memory"],
  ["steel-free-cutting", t`free-cutting steel, 11SMnPb30`, 222, t`EN 10277, 370 MPa; ${asSteel}`, "memory"],
  ["steel-c45", t`steel C45, normalized`, 348, t`EN 10083-2, 580 MPa; ${asSteel}`, "memory"],
  ["cast-iron", t`grey cast iron, GJL-200`, 200, t`EN 1561, no more than its tensile strength`, "memory"],
  ["brass", t`brass C36000 (CZ121), soft, O61`, 205, t`data sheet of the alloy`, "memory"],
  ["brass-hard", t`brass C36000 (CZ121), half hard, H02`, 235, t`data sheet of the alloy`, "memory"],
  ["brass-c38500", t`brass C38500, die cast`, 260, t`die caster's table of alloys`, "published"],
  ["brass-die-cast", t`brass, die cast`, 255, t`die caster's table of alloys (37 ksi)`, "published"],
  ["zinc-2", t`zinc die casting ZP0430 (alloy 2)`, 317, t`die caster's table to EN 12844`, "published"],
  ["zinc-3", t`zinc die casting ZP0400 (alloy 3)`, 214, t`die caster's table to EN 12844`, "published"],
  ["zinc-5", t`zinc die casting ZP0410 (alloy 5)`, 262, t`die caster's table to EN 12844`, "published"],
  ["zinc-za8", t`zinc die casting ZP0810 (ZA8)`, 275, t`die caster's table to EN 12844`, "published"],
  ["aluminium-a380", t`aluminium die casting A380`, 195, t`die caster's table of alloys`, "published"],
  ["aluminium-356", t`cast aluminium 356.0`, 140, t`table of materials, 140 to 190 MPa`, "published"],
  ["aluminium-6061", t`aluminium 6061-T6`, 207, t`typical value of handbooks`, "memory"],
];

/** Names that people use for the cautious row. */
const aliases: ReadonlyMap<string, string> = new Map([
  ["steel", "steel-mild"],
  ["mild-steel", "steel-mild"],
  ["zinc", "zinc-3"],
  ["zinc-die-cast", "zinc-3"],
  ["die-cast-zinc", "zinc-3"],
  ["zamak-2", "zinc-2"],
  ["zamak-3", "zinc-3"],
  ["zamak-5", "zinc-5"],
  ["za-8", "zinc-za8"],
  ["aluminium", "aluminium-356"],
  ["aluminum", "aluminium-356"],
  ["aluminium-die-cast", "aluminium-a380"],
  ["die-cast-aluminium", "aluminium-a380"],
]);

const warnings: readonly (readonly [start: string, warning: string])[] = [
  ["zinc", zincPest],
  ["cast-iron", castIron],
];

/** Every material that is known. */
export function materials(): Material[] {
  return rows.map(([id, name, shearMPa, source, standing]) => {
    const warning = warnings.find(([start]) => id.startsWith(start))?.[1];
    return { id, name, shearMPa, source, standing, ...(warning === undefined ? {} : { warning }) };
  });
}

/** A material of which nothing is known but the shear strength that somebody gives. */
export function ownMaterial(shearMPa: number): Material {
  const source = t`its shear strength as given here`;
  return { id: "own", name: t`a material of your own`, shearMPa, source, standing: "given" };
}

/** The material that a text names; a problem lists all and the nearest. */
export function materialNamed(text: string): Result<Material, "unknown-material"> {
  const wanted = text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-")
    .replace("aluminum", "aluminium")
    .slice(0, 40);
  const id = aliases.get(wanted) ?? wanted;
  const all = materials();
  const found = all.find((one) => one.id === id);
  if (found) return good(found);
  const names = [...all.map((one) => one.id), ...aliases.keys()];
  const known = t`one of ${all.map((one) => one.id).join(", ")}`;
  return bad("unknown-material", text || t`nothing`, known, nearestName(names, wanted));
}
