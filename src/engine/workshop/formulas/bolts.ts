import { materials } from "../bolts/materials.ts";
import { strengthNames } from "../bolts/strength.ts";
import { screwShearRatio } from "../bolts/strip.ts";
import { frictionRange, nutFactorRange } from "../bolts/tighten.ts";
import type { Chapter } from "./formula.ts";

const friction = `friction from ${frictionRange.least} to ${frictionRange.greatest}`;

export const bolts: Chapter = {
  id: "bolts",
  title: "Tightening and stripping",
  signs:
    "d nominal diameter; P pitch; d₂, D₂ pitch diameter and D₁ minor diameter, of screw (small letters) and hole, min and max their limits; As stress area, dₛ its diameter; FM preload; MA, T torque; Rp yield point; Rm tensile strength; Sp proof stress; µG, µK friction in the thread and under the head; Dkm mean diameter of the ring under the head; α angle of the flanks; K nut factor.",
  formulas: [
    {
      id: "strength",
      name: "Strength by class",
      says: ["tensile strength Rm, yield point Rp and proof stress Sp, by table"],
      unit: "MPa",
      range: `${strengthNames().join(", ")}; up to 39 mm, 9.8 up to 16 mm`,
      source:
        "ISO 898-1:2013, Table 3 (checked by its published loads); ISO 3506-1 (checked by published tables of small screws); ISO 8839 (tensile strength published)",
      standing: "memory",
      sums: ["torque", "strip"],
      files: ["bolts/strength.ts"],
    },
    {
      id: "share",
      name: "How much of the yield point",
      says: [
        "0.9 of a new bolt of 8.8 to 12.9; 0.6 of any other and of a used one, unless another share is given",
      ],
      unit: "",
      range: "above 0, at most 1",
      source: "VDI 2230-1 (0.9); 0.6 is our own caution",
      standing: "own",
      sums: ["torque"],
      files: ["bolts/tighten.ts", "bolts/tighten-words.ts"],
    },
    {
      id: "preload",
      name: "Preload",
      says: [
        "FM = share × Rp × As ÷ √(1 + 3 · [1.5 · d₂/dₛ · (P/(π·d₂) + 1.155 µG)]²)",
        "the root is by how much pull and twist together stress the screw more than the pull alone",
      ],
      unit: "N",
      range: `${friction}; for flanks other than 60° 1/cos(α/2) in place of 1.155`,
      source: "VDI 2230-1, Table A1 and the equations behind it",
      standing: "published",
      sums: ["torque"],
      files: ["bolts/tighten.ts", "bolts/lever.ts"],
    },
    {
      id: "torque",
      name: "Tightening torque",
      says: ["MA = FM · (0.16 P + 0.58 d₂·µG + ½ Dkm·µK); the way back divides by the bracket"],
      unit: "N·mm",
      range: `flanks of 60°; ${friction}`,
      source: "VDI 2230-1",
      standing: "published",
      sums: ["torque"],
      files: ["bolts/tighten.ts", "bolts/lever.ts"],
    },
    {
      id: "torque-exact",
      name: "Tightening torque, other flanks",
      says: ["MA = FM · [d₂/2 · tan(φ + ρ′) + ½ Dkm·µK]; tan φ = P/(π·d₂); tan ρ′ = µG/cos(α/2)"],
      unit: "N·mm",
      range: `BA (47.5°), BSW and BSF (55°); ${friction}`,
      source: "the exact form of VDI 2230-1; Jindal, Machine Design, 9-3",
      standing: "published",
      sums: ["torque"],
      files: ["bolts/lever.ts"],
    },
    {
      id: "bearing",
      name: "Ring under the head",
      says: [
        "Dkm = (outer + hole)/2; outer: least bearing diameter of a hexagon head; hole: medium",
        "where no table has the head: outer 1.5 d, hole 1.1 d; what is given goes before both",
      ],
      unit: "mm",
      range:
        "M1.6 to M24 by table (M4 to M12 checked by VDI 2230, Table A1); other sizes and BA, BSW, BSF, UNC, UNF assumed",
      source: "ISO 4014 and ISO 4762 (outer), ISO 273 (hole), VDI 2230-1 (mean)",
      standing: "memory",
      sums: ["torque"],
      files: ["bolts/bearing.ts"],
    },
    {
      id: "nut-factor",
      name: "With a nut factor",
      says: [
        "T = K·F·d",
        "it stands for a friction µ = (K·d − P/2π) ÷ (d₂/(2 cos(α/2)) + ½ Dkm), by which twist is reckoned",
      ],
      unit: "N·m, of kN and mm",
      range: `K from ${nutFactorRange.least} to ${nutFactorRange.greatest}, and what it leaves for friction at least ${frictionRange.least}`,
      source: "NASA-STD-5020 (2012), A.2",
      standing: "published",
      sums: ["torque"],
      files: ["bolts/lever.ts", "bolts/tighten.ts"],
    },
    {
      id: "proof-share",
      name: "Share of the proof load",
      says: ["F ÷ (Sp · As)"],
      unit: "",
      range: "classes with a proof stress: 4.6 to 12.9",
      source: "ISO 898-1:2013, Table 5",
      standing: "published",
      sums: ["torque"],
      files: ["bolts/tighten.ts"],
    },
    {
      id: "scatter",
      name: "Scatter of a preload got by torque",
      says: ["±25 % lubricated, ±35 % dry"],
      unit: "",
      range: "a torque wrench, and friction that nobody has measured",
      source: "NASA-STD-5020 (2012), 6.1d",
      standing: "published",
      sums: ["torque"],
      files: ["bolts/tighten-words.ts"],
    },
    {
      id: "shear-areas",
      name: "Shear areas",
      says: [
        "of the hole: ASn = π·d_min/P · [P/2 + tan(α/2) · (d_min − D₂max)] × engagement",
        "of the screw: ASs = π·D₁max/P · [P/2 + tan(α/2) · (d₂min − D₁max)] × engagement",
      ],
      unit: "mm²",
      range: "the smallest screw and the widest nut that pass inspection; worn threads hold less",
      source: "FED-STD-H28/2B, Appendix B, for any angle of the flanks",
      standing: "published",
      sums: ["strip"],
      files: ["bolts/shear-area.ts", "bolts/strip.ts"],
    },
    {
      id: "stripping",
      name: "What gives first",
      says: [
        `hole: ASn × its shear strength; screw's thread: ASs × ${screwShearRatio} Rm; screw: As × Rm, while it is tightened ÷ the root of its twist`,
        "engagement needed: As × Rm ÷ (shear strength × area for each mm), the longer of the two threads'",
      ],
      unit: "N, mm",
      range: `${friction}; up to 1.5 diameters of engagement, beyond which the first threads bear nearly all`,
      source: `FED-STD-H28/2B, Appendix B; VDI 2230-1 (${screwShearRatio} from memory)`,
      standing: "memory",
      sums: ["strip"],
      files: ["bolts/strip.ts", "bolts/strip-words.ts"],
    },
    {
      id: "materials",
      name: "Shear strengths of what holes are in",
      says: ["by table; of a range the lower end; of steels 0.6 of the tensile strength"],
      unit: "MPa",
      range: `${materials().length} materials: steels, cast iron, brasses, zinc and aluminium`,
      source:
        "die casters' tables of alloys and EN 12844; EN 10025-2, EN 10277, EN 10083-2, EN 1561 and data sheets from memory; VDI 2230 (0.6)",
      standing: "memory",
      sums: ["strip"],
      files: ["bolts/materials.ts"],
    },
  ],
};
