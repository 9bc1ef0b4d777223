import { editDistance } from "../edit-distance.ts";
import type { SeriesName, ThreadSize } from "./size.ts";

/** What a text asks for: series that it can mean, nominal diameter, and the pitch where it names one. */
export interface Wanted {
  readonly series: readonly SeriesName[];
  readonly diameterMm: number;
  /** How far the diameter may be out, because it was written rounded. */
  readonly slackMm: number;
  readonly pitchMm: number | undefined;
}

/** A diameter weighs so much more than a pitch, because it is what is seen first and written most surely. */
const diameterWeight = 10;

/** The size whose diameter, then pitch, differ by the smallest ratio. */
export function nearestByFigures(sizes: readonly ThreadSize[], wanted: Wanted): ThreadSize | undefined {
  return least(sizes, (size) => {
    const diameter = Math.abs(Math.log(size.diameterMm / wanted.diameterMm));
    const pitch = wanted.pitchMm === undefined ? 0 : Math.abs(Math.log(size.pitchMm / wanted.pitchMm));
    return diameterWeight * diameter + pitch;
  });
}

/** The size whose designation needs the fewest letters changed, or none where more than a third would. O(sizes · n²). */
export function nearestByLetters(sizes: readonly ThreadSize[], text: string): ThreadSize | undefined {
  const wanted = bare(text);
  const found = least(sizes, (size) => editDistance(wanted, bare(size.designation)));
  return found && editDistance(wanted, bare(found.designation)) * 3 <= wanted.length ? found : undefined;
}

function bare(text: string): string {
  return text.toLowerCase().replace(/\bin\b|[\s."-]/g, "");
}

function least<T>(items: readonly T[], cost: (item: T) => number): T | undefined {
  let best: { item: T; cost: number } | undefined;
  for (const item of items) {
    const now = cost(item);
    if (best === undefined || now < best.cost) best = { item, cost: now };
  }
  return best?.item;
}
