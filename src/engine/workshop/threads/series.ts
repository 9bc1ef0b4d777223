import { britishAssociation } from "./british-association.ts";
import { isoMetric } from "./iso-metric.ts";
import type { Series, SeriesName, ThreadSize } from "./size.ts";
import { unifiedCoarse, unifiedFine } from "./unified.ts";
import { britishFine, whitworth } from "./whitworth.ts";

/** Every series, one row each. */
const makers: readonly (() => Series)[] = [
  isoMetric,
  unifiedCoarse,
  unifiedFine,
  britishAssociation,
  whitworth,
  britishFine,
];

let made: readonly Series[] | undefined;

/** Every series with its sizes; made at the first call. */
export function allSeries(): readonly Series[] {
  made ??= makers.map((make) => make());
  return made;
}

export function seriesNamed(name: SeriesName): Series {
  return allSeries().find((series) => series.name === name)!;
}

/** Every size of the named series, or of all. */
export function sizesOf(names?: readonly SeriesName[]): ThreadSize[] {
  return allSeries()
    .filter((series) => names === undefined || names.includes(series.name))
    .flatMap((series) => series.sizes);
}
