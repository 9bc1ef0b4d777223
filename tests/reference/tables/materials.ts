/** Shear strengths of what screws go into, and what brass screws bear. */

import { bearingOf } from "../../../src/engine/workshop/bolts/bearing.ts";
import { materialNamed, materials } from "../../../src/engine/workshop/bolts/materials.ts";
import { engagementFor } from "../../../src/engine/workshop/bolts/shear-area.ts";
import { strengthOf } from "../../../src/engine/workshop/bolts/strength.ts";
import { screwShearRatio, stripping } from "../../../src/engine/workshop/bolts/strip.ts";
import { tighten } from "../../../src/engine/workshop/bolts/tighten.ts";
import { dimensionsOf, stressAreaMm2 } from "../../../src/engine/workshop/threads/dimensions.ts";
import { have, sizeOf } from "../../engine/workshop/ask.ts";
import type { Row } from "../../engine/workshop/table.ts";
import { atMost, type Check, cell, near, nearPart, type Standing, same, table } from "../ledger.ts";

/** What the engine calls the materials of the table. */
const ids = new Map([
  ["Brass C38500 die cast", "brass-c38500"],
  ["Brass (die cast, generic)", "brass-die-cast"],
  ["Brass C36000 (CZ121) H02", "brass-hard"],
  ["Brass C36000 O61", "brass"],
  ["Zinc ZP0400 (Zamak 3)", "zinc-3"],
  ["Zinc ZP0410 (Zamak 5)", "zinc-5"],
  ["Zinc ZP0430 (Zamak 2)", "zinc-2"],
  ["Zinc ZP0810 (ZA8)", "zinc-za8"],
  ["Al A380 die cast", "aluminium-a380"],
  ["Al 356.0 cast", "aluminium-356"],
  ["Al 6061-T6", "aluminium-6061"],
]);

const standingOf = (row: Row): Standing => (row.get("status")!.startsWith("MEMORY") ? "memory" : "published");

/** The lower end of a range is the engine's. */
function shear(row: Row): Check[] {
  const material = have(materialNamed(ids.get(row.get("material")!)!));
  return [
    same("tau_B", material.shearMPa, cell(row, "tau_B"), standingOf(row)),
    same("standing", material.standing, standingOf(row), standingOf(row)),
  ];
}

const brassNames: Readonly<Record<string, readonly [name: string, diameter: number]>> = {
  "CuZn39Pb3 (CU3) screw d<=M6": ["CU3", 6],
  "CuZn39Pb3 (CU3) screw M6<d<=M39": ["CU3", 8],
  "CuZn37 (CU2) d<=M6": ["CU2", 6],
};

function brassScrew(row: Row): Check[] {
  const [name, diameter] = brassNames[row.get("material")!]!;
  return [same("Rm", have(strengthOf(name, diameter)).tensile, cell(row, "Rm"), "published")];
}

/** A row that gives a ratio only: no material of the engine shears at more of the tensile strength that its row prints. */
function ratio(row: Row): Check[] {
  const printed = cell(row, "ratio");
  if (row.get("material")!.includes("steel")) {
    const ofSteel = materials().filter(({ id }) => id.startsWith("steel"));
    return [
      same("a screw's own threads", screwShearRatio, printed, "memory"),
      ...ofSteel.map(({ id, shearMPa, source }) =>
        near(
          id,
          shearMPa / Number(/(\d+) MPa/.exec(source)![1]),
          printed,
          1e-9,
          "binary fractions",
          "memory",
        ),
      ),
    ];
  }
  const because = "the engine is the more careful one: it takes what the table prints of each alloy";
  const rm: Readonly<Record<string, number>> = { "aluminium-a380": 325, "aluminium-6061": 310 };
  return Object.entries(rm).map(([id, tensile]) =>
    atMost(
      `${id}, shear of tensile strength`,
      have(materialNamed(id)).shearMPa / tensile,
      printed,
      because,
      "memory",
    ),
  );
}

/** "M1.6 0.10; M2 0.21": ISO 8839 by the formula of ISO 898-7, τ·π·d3³/16, with τ at 0.7 of the tensile strength of brass. */
function breakingTorques(row: Row): Check[] {
  const printed = [...row.get("material")!.matchAll(/(M[\d.]+) ([\d.]+)/g)];
  return printed.flatMap(([, thread, torque]) => {
    const size = sizeOf(thread!);
    const strength = have(strengthOf("brass", size.diameterMm));
    const lubrication = { kind: "friction", thread: 0.15, head: 0.15 } as const;
    const joint = { size, strength, lubrication, bearing: bearingOf(size), used: false };
    const root = dimensionsOf(size).rootDiameterMm!;
    const byFormula = (0.7 * strength.tensile * Math.PI * root ** 3) / 16 / 1000;
    return [
      atMost(
        `${thread}: torque advised`,
        have(tighten(joint)).torqueNm,
        Number(torque),
        "below the torque at which it must not break yet",
        "published",
      ),
      nearPart(
        `${thread}: breaking torque by formula`,
        byFormula,
        Number(torque),
        0.07,
        "printed to two figures, and the ratio of shear to tensile strength is that of no one brass",
        "published",
      ),
    ];
  });
}

const enough = "the rule of thumb has some thread to spare";

/** "1.3d for class 3.6-6.8 screws; LE so that 2*AS covers At": both say that the screw breaks first. */
function engagementRule(row: Row): Check[] {
  const diameters = Number(/([\d.]+)d for class/.exec(row.get("material")!)![1]);
  const rules = ["M4", "M6", "M8", "M10", "M12"].map((thread) => {
    const size = sizeOf(thread);
    const screw = have(strengthOf("6.8", size.diameterMm));
    const material = have(materialNamed("brass-hard"));
    const ask = { size, screw, material, engagementMm: 5, friction: 0.15, bearing: bearingOf(size) };
    return atMost(
      `${thread} of 6.8 in brass, diameters`,
      have(stripping(ask)).engagementNeededMm / size.diameterMm,
      diameters,
      enough,
      "published",
    );
  });
  const area = stressAreaMm2(sizeOf("M6"));
  // A shear strength of half the tensile one: the area sheared over the length is twice the stress area.
  return [
    ...rules,
    near(
      "sheared over stress area",
      (engagementFor(800 * area, 400, 10) * 10) / area,
      2,
      1e-9,
      "binary fractions",
      "published",
    ),
  ];
}

function checks(row: Row): readonly Check[] {
  const material = row.get("material")!;
  if (material.startsWith("# ISO 8839")) return breakingTorques(row);
  if (material.startsWith("# engagement rule")) return engagementRule(row);
  if (material in brassNames) return brassScrew(row);
  return material.startsWith("VDI 2230 ratio") ? ratio(row) : shear(row);
}

export const materialTable = table(
  "material_shear.csv",
  "die casters' tables of alloys, ISO 8839, VDI 2230 and handbooks, as each row names",
  (row) => row.get("material")!.slice(0, 60),
  checks,
);
