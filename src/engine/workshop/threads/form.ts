/** The basic profile of each series: how deep it is for its pitch. */

import { t } from "../../words.ts";
import type { SeriesName, ThreadSize } from "./size.ts";

/** All depths are of the diameter (twice the depth on one side), in the unit of the pitch. */
export interface Form {
  /** From the nominal diameter down to the pitch diameter. */
  pitch(pitch: number): number;
  /** Down to the minor diameter: of the nut where screw and nut differ. */
  minor(pitch: number): number;
  /** Down to the root of the screw, where the standard gives one. */
  root: ((pitch: number) => number) | undefined;
  /** Down to the diameter of the stress area. */
  stress(pitch: number): number;
  readonly source: string;
}

/** Height of the sharp triangle of a 60° thread: ISO 68-1. */
const sharp60 = Math.sqrt(3) / 2;

/** ISO 724; d3 and the stress area, the circle of (d2 + d3)/2: ISO 898-1:2013, 9.1.6.1. */
const iso: Form = {
  pitch: (p) => 0.75 * sharp60 * p,
  minor: (p) => 1.25 * sharp60 * p,
  root: (p) => (1.25 + 1 / 6) * sharp60 * p,
  stress: (p) => ((0.75 + 1.25 + 1 / 6) / 2) * sharp60 * p,
  source: t`ISO 68-1, ISO 261, ISO 724; stress area by ISO 898-1:2013, 9.1.6.1`,
};

/** ASME B1.1; stress area 0.7854 (d − 0.9743/n)²: FED-STD-H28/2B, Appendix B. */
const unified: Form = {
  pitch: (p) => 0.75 * sharp60 * p,
  minor: (p) => 1.25 * sharp60 * p,
  root: undefined,
  stress: (p) => 0.9743 * p,
  source: t`ASME B1.1; stress area by FED-STD-H28/2B, Appendix B`,
};

/** BS 84: 55°, two thirds of the sharp height. No stress area is in the standard: the mean of effective and minor diameter. */
const whitworthDepth = 2 / 3 / (2 * Math.tan((27.5 * Math.PI) / 180));
const whitworth: Form = {
  pitch: (p) => whitworthDepth * p,
  minor: (p) => 2 * whitworthDepth * p,
  root: (p) => 2 * whitworthDepth * p,
  stress: (p) => 1.5 * whitworthDepth * p,
  source: t`BS 84; stress area from the mean of effective and minor diameter, the usual convention, not in the standard`,
};

/** BS 93: depth 0.6p, tabulated to 0.005 mm. Stress area as for Whitworth. */
const baDepth = (p: number): number => Math.round((0.6 * p) / 0.005) * 0.005;
const ba: Form = {
  pitch: baDepth,
  minor: (p) => 2 * baDepth(p),
  root: (p) => 2 * baDepth(p),
  stress: (p) => 1.5 * baDepth(p),
  source: t`BS 93; stress area from the mean of effective and minor diameter, the usual convention, not in the standard`,
};

const forms: Readonly<Record<SeriesName, Form>> = {
  "ISO metric": iso,
  UNC: unified,
  UNF: unified,
  BA: ba,
  BSW: whitworth,
  BSF: whitworth,
};

export function formOf({ series }: Pick<ThreadSize, "series">): Form {
  return forms[series];
}
