import { inchesOf, inchSize, type Series } from "./size.ts";

type Row = readonly [size: string, tpi: number];

/** BS 84: size in inches and threads per inch of the standard series. */
const standard: readonly Row[] = [
  ["1/16", 60],
  ["3/32", 48],
  ["1/8", 40],
  ["5/32", 32],
  ["3/16", 24],
  ["7/32", 24],
  ["1/4", 20],
  ["5/16", 18],
  ["3/8", 16],
  ["7/16", 14],
  ["1/2", 12],
];

/** BS 84: the same of the fine series. */
const fine: readonly Row[] = [
  ["3/16", 32],
  ["7/32", 28],
  ["1/4", 26],
  ["9/32", 26],
  ["5/16", 22],
  ["3/8", 20],
  ["7/16", 18],
  ["1/2", 16],
];

/** British Standard Whitworth threads from 1/16 to 1/2 in. */
export function whitworth(): Series {
  return series("BSW", standard);
}

/** British Standard Fine threads from 3/16 to 1/2 in. */
export function britishFine(): Series {
  return series("BSF", fine);
}

function series(name: "BSW" | "BSF", rows: readonly Row[]): Series {
  const sizes = rows.map(([size, tpi]) => inchSize(name, size, `${size} in ${name}`, inchesOf(size), tpi));
  return { name, standard: "BS 84", angle: 55, sizes };
}
