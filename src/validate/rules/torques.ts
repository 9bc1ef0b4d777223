/** A figure of torque must be one that screw and hole can bear; otherwise words are better than a figure. */
import { bearingOf } from "../../engine/workshop/bolts/bearing.ts";
import { type Material, materialNamed } from "../../engine/workshop/bolts/materials.ts";
import { type Strength, strengthOf } from "../../engine/workshop/bolts/strength.ts";
import { stripping } from "../../engine/workshop/bolts/strip.ts";
import { pullOf } from "../../engine/workshop/bolts/tighten.ts";
import { parseDesignation } from "../../engine/workshop/designation.ts";
import { roundedUp } from "../../engine/workshop/grounds.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import type { Problem } from "../../engine/workshop/result.ts";
import type { ThreadSize } from "../../engine/workshop/threads/size.ts";
import type { Code } from "../../model/codes.ts";
import type { ModuleFastener, TappedHole } from "../../model/module.ts";
import { nearestPhrase } from "../nearest.ts";
import { inFile, moduleRule } from "./rule.ts";

/** Greased: of the frictions that may be, one that turns much of a torque into pull. VDI 2230, friction class A to B. */
const friction = 0.1;
/** A class is known or not whatever the size. */
const anySizeMm = 6;
/** Shares of the proof load, and of what strips the hole. */
const refused = 0.9;
const doubtful = 0.75;

interface Finding {
  readonly code: Code;
  /** The field of the fastener set. */
  readonly at: readonly string[];
  readonly found: string;
}

export const torques = moduleRule("torques", (module, content, reporter) => {
  for (const set of module.procedure.fasteners.values()) {
    for (const { code, at, found } of findingsOn(set)) {
      reporter.report(code, inFile(content, module, ["fasteners", set.id, ...at]), found);
    }
  }
});

/** Names are judged first, for words of torque too: the sheet shows them. */
function findingsOn(set: ModuleFastener): Finding[] {
  const unknown = unknownNames(set);
  return unknown.length > 0 ? unknown : findingsOnFigure(set);
}

function unknownNames({ strengthClass, into }: ModuleFastener): Finding[] {
  const strength = strengthClass === undefined ? undefined : strengthOf(strengthClass, anySizeMm);
  const material = into === undefined ? undefined : materialNamed(into.material);
  return [
    ...(strength?.ok === false ? [unknownName("unknown-class", ["class"], "class", strength.problem)] : []),
    ...(material?.ok === false
      ? [unknownName("unknown-material", ["into", "material"], "material", material.problem)]
      : []),
  ];
}

const unknownName = (
  code: Code,
  at: readonly string[],
  what: string,
  { found, expected, nearest }: Problem<string>,
): Finding => ({
  code,
  at,
  found: `the ${what} reads "${found}"; expected ${expected}${nearestPhrase(nearest)}`,
});

/** A figure without a source is reported by the rule of fasteners, an unreadable thread too. */
function findingsOnFigure(set: ModuleFastener): Finding[] {
  const torque = set.torque === undefined ? undefined : parseQuantity(set.torque);
  if (torque?.ok !== true || torque.value.dimension !== "torque") return [];
  const size = set.thread === undefined ? undefined : parseDesignation(set.thread);
  if (size?.ok === false) return [];
  const figure = `"${set.id}" has a figure of torque, ${set.torque}`;
  if (size === undefined) return [needsWords(`${figure}, and no thread`)];
  if (set.strengthClass === undefined)
    return [needsWords(`${figure}, and nobody says what class its screws are`)];
  if (set.into?.isSound === false)
    return [needsWords(`${figure}, and goes into ${set.into.material} that is not sound`)];
  const strength = strengthOf(set.strengthClass, size.value.diameterMm);
  if (!strength.ok) return [unknownName("unknown-class", ["class"], "class", strength.problem)];
  const nm = torque.value.base;
  return [...onScrew(size.value, strength.value, nm), ...onHole(size.value, strength.value, nm, set.into)];
}

const needsWords = (found: string): Finding => ({ code: "torque-words", at: ["torque"], found });

function onScrew(size: ThreadSize, strength: Strength, nm: number): Finding[] {
  const lubrication = { kind: "friction", thread: friction, head: friction } as const;
  const pull = pullOf({ size, strength, lubrication, bearing: bearingOf(size), used: true }, nm);
  if (!pull.ok) return [];
  const { shareOfProof, shareOfYield } = pull.value;
  const share = shareOfProof ?? shareOfYield;
  if (share <= doubtful) return [];
  const of = shareOfProof === undefined ? "its yield point" : "its proof load";
  const found = `${figure(nm)} N·m pulls ${size.designation} of ${strength.name} to ${percent(share)} of ${of} at a friction of ${friction} (${strength.source}; VDI 2230-1)`;
  return [{ code: share > refused ? "torque-too-high" : "torque-high", at: ["torque"], found }];
}

function onHole(size: ThreadSize, screw: Strength, nm: number, into: TappedHole | undefined): Finding[] {
  if (into === undefined) return [];
  const material = materialNamed(into.material);
  if (!material.ok) return [];
  const length = into.engagement === undefined ? undefined : parseQuantity(into.engagement, "length");
  const engagementMm = length?.ok === true ? length.value.base * 1000 : size.diameterMm;
  const bearing = bearingOf(size);
  const strips = stripping({ size, engagementMm, material: material.value, screw, friction, bearing });
  if (!strips.ok) return [];
  if (length?.ok !== true) {
    const needed = figure(roundedUp(strips.value.engagementNeededMm, 3));
    const found = `${material.value.name} strips easily, and nobody says how much thread holds; it takes ${needed} mm for ${size.designation} of ${screw.name} to break first`;
    return isSoft(material.value) ? [{ code: "engagement-missing", at: ["into"], found }] : [];
  }
  const { weaker, torqueNm } = strips.value.whenTightened;
  const share = nm / torqueNm;
  if (weaker === "screw breaks" || share <= doubtful) return [];
  const found = `${figure(nm)} N·m is ${percent(share)} of what strips ${into.engagement} of thread in ${material.value.name}, ${figure(torqueNm)} N·m (FED-STD-H28/2B; shear strength: ${material.value.source})`;
  return [{ code: share > refused ? "torque-strips" : "torque-high", at: ["torque"], found }];
}

/** Brass, zinc and aluminium, by the shear strengths of the table. */
const isSoft = ({ id, shearMPa }: Material): boolean =>
  /^(?:zinc|aluminium|brass)/.test(id) || shearMPa < 200;

const figure = (value: number): string => String(Number(value.toPrecision(3)));
const percent = (share: number): string => `${Math.round(share * 100)} %`;
