import { inchesOf, inchSize, type Series } from "./size.ts";

type Row = readonly [size: string, tpi: number];

/** ASME B1.1: size and threads per inch of the coarse series. */
const coarse: readonly Row[] = [
  ["#1", 64],
  ["#2", 56],
  ["#3", 48],
  ["#4", 40],
  ["#5", 40],
  ["#6", 32],
  ["#8", 32],
  ["#10", 24],
  ["#12", 24],
  ["1/4", 20],
  ["5/16", 18],
  ["3/8", 16],
  ["7/16", 14],
  ["1/2", 13],
];

/** ASME B1.1: the same of the fine series. */
const fine: readonly Row[] = [
  ["#0", 80],
  ["#1", 72],
  ["#2", 64],
  ["#3", 56],
  ["#4", 48],
  ["#5", 44],
  ["#6", 40],
  ["#8", 36],
  ["#10", 32],
  ["#12", 28],
  ["1/4", 28],
  ["5/16", 24],
  ["3/8", 24],
  ["7/16", 20],
  ["1/2", 20],
];

/** Unified coarse threads from #1 to 1/2 in. */
export function unifiedCoarse(): Series {
  return unified("UNC", coarse);
}

/** Unified fine threads from #0 to 1/2 in. */
export function unifiedFine(): Series {
  return unified("UNF", fine);
}

function unified(name: "UNC" | "UNF", rows: readonly Row[]): Series {
  const sizes = rows.map(([size, tpi]) =>
    inchSize(name, size, `${size}-${tpi} ${name}`, inchesOf(size), tpi),
  );
  return { name, standard: "ASME B1.1", angle: 60, sizes };
}
