import { t } from "../words.ts";

/** What every sum of the bench carries with it. */

export interface Grounds {
  readonly assumptions: readonly string[];
  /** Where formulas and figures come from; "from memory" where nobody has looked them up. */
  readonly sources: readonly string[];
  /** What is wrong or dangerous about this case in particular. */
  readonly warnings: readonly string[];
  /** Who decides, since a sum does not. */
  readonly deferral: string;
}

export const deferrals = {
  thread: t`A table and a caliper name a thread; they do not prove it. A thread gauge, a mating part that runs freely by hand, and your mentor decide.`,
  bolt: t`An estimate. A torque of the machine's maker or of the fastener's goes before it, and your mentor decides; for an old unmarked screw no figure holds: tighten by feel.`,
  vapour: t`An estimate. The supplier's safety data sheet and local rules decide. A safer substance and less of it come first, then work outdoors or with extraction; an average over the room never clears the air above a pan or at a hand.`,
} as const;

/** The same figure with so many significant figures, so that sums do not look better than they are. */
export function significant(value: number, figures: number): number {
  return Number(value.toPrecision(figures));
}

/** Rounded up to so many significant figures: the safe side of an amount of vapour or of air needed. */
export function roundedUp(value: number, figures: number): number {
  const near = significant(value, figures);
  if (near >= value || value <= 0) return near;
  return significant(near + 10 ** (Math.floor(Math.log10(value)) + 1 - figures), figures);
}

/** Rounded down to so many significant figures: the safe side of a load that something bears. */
export function roundedDown(value: number, figures: number): number {
  const near = significant(value, figures);
  if (near <= value || value <= 0) return near;
  return significant(near - 10 ** (Math.floor(Math.log10(value)) + 1 - figures), figures);
}
