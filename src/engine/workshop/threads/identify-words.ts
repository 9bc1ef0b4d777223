/** What to say of an identification. */

import { t } from "../../words.ts";
import { deferrals, type Grounds } from "../grounds.ts";
import type { Candidate, Identification } from "./identify.ts";
import { twinsOf, twinWords } from "./twins.ts";

const noneFits = t`None of these fits: do not re-tap, and do not force a screw. It can be left-hand, a wood screw, a maker's own thread, a pipe thread, or worn or damaged: measure again on a clean part.`;
const onlyAngle = t`Diameter and pitch can't tell these apart, only the angle of the flanks can: use a thread gauge of each angle against the light.`;
const alsoPossible = t`A left-hand thread, a maker's own or a damaged one can measure the same: try by hand, never by force.`;

/** Assumptions, warnings (near twins among them, each pair once) and sources. */
export function identificationGrounds({ candidates, nearest }: Identification): Grounds {
  return {
    assumptions: [
      t`The outside diameter of a screw was measured, not the hole; it is at or under nominal by tolerance and wear.`,
      t`The pitch is right to 4 %: count it over ten threads, or use a gauge.`,
    ],
    warnings:
      candidates.length === 0
        ? [noneFits]
        : [...sameMeasure(candidates), ...twinWarnings(candidates), alsoPossible],
    sources: [...new Set([...candidates, ...nearest].map(({ standard }) => standard))],
    deferral: deferrals.thread,
  };
}

function sameMeasure([first, ...others]: readonly Candidate[]): string[] {
  const alike = others.some(
    ({ size }) => size.diameterMm === first!.size.diameterMm && size.pitchMm === first!.size.pitchMm,
  );
  return alike ? [onlyAngle] : [];
}

/** Of a pair of which both fit, the sentence of the nearer one. */
function twinWarnings(candidates: readonly Candidate[]): string[] {
  const said = new Set<string>();
  return candidates.flatMap(({ size }) => {
    const twins = twinsOf(size).filter(({ other }) => !said.has(other.designation));
    said.add(size.designation);
    return twins.map(twinWords);
  });
}
