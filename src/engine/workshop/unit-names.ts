/** Which unit a text names. */

import { t } from "../words.ts";
import { editDistance } from "./edit-distance.ts";
import { dimensions, type Unit, unitsOf } from "./units.ts";

interface Index {
  readonly exact: ReadonlyMap<string, Unit>;
  readonly anyCase: ReadonlyMap<string, Unit>;
  /** Symbols in lower case, for advice only: `nm` is not read as `Nm`. */
  readonly lowered: ReadonlyMap<string, Unit>;
}

let index: Index | undefined;

/** The unit that a text names, in any of its spellings; undefined where none does. */
export function findUnit(text: string): Unit | undefined {
  const { exact, anyCase } = units();
  const folded = foldUnit(text);
  return exact.get(folded) ?? anyCase.get(folded.toLowerCase());
}

/** The unit that was probably meant where only the capitals are wrong: N·m for `nm`. */
export function unitInOtherCapitals(text: string): Unit | undefined {
  return units().lowered.get(foldUnit(text).toLowerCase());
}

/** Longer than any name of a unit, so that hostile text costs nothing. */
const longestName = 30;

/** The unit whose name needs the fewest letters changed; undefined where more than a third would, or it is too short to tell. */
export function nearestUnit(text: string): Unit | undefined {
  const folded = foldUnit(text).toLowerCase();
  if (folded.length < 3 || folded.length > longestName) return undefined;
  const { anyCase, lowered } = units();
  let best: { unit: Unit; changes: number } | undefined;
  for (const [name, unit] of [...anyCase, ...lowered]) {
    const changes = editDistance(folded, name);
    if (name !== "" && (best === undefined || changes < best.changes)) best = { unit, changes };
  }
  return best && best.changes * 3 <= folded.length ? best.unit : undefined;
}

/** Names of two measures too far apart to guess between. */
const twoMeasures: readonly { readonly names: readonly string[]; readonly write: string }[] = [
  { names: ["gal", "gals", "gallon", "gallons"], write: t`US gal or imp gal, which are 20 % apart` },
  { names: ["qt", "qts", "quart", "quarts"], write: t`US qt or imp qt, which are 20 % apart` },
  { names: ["pt", "pts", "pint", "pints"], write: t`US pt or imp pt, which are 20 % apart` },
];

/** For a name that means two measures: what to write instead. */
export function whichMeasure(text: string): string | undefined {
  const folded = foldUnit(text).toLowerCase();
  return twoMeasures.find(({ names }) => names.includes(folded))?.write;
}

/** Every way to write a product (`N m`, `N.m`, `N-m`, `N*m`), a power (`mm²`, `mm^2`) and a mark becomes one. */
export function foldUnit(text: string): string {
  return text
    .replace(/[º˚]/g, "°")
    .replace(/[’´]/g, "'")
    .replace(/[“”]|''/g, '"')
    .normalize("NFKC")
    .replace(/[()]/g, " ")
    .replace(/\^/g, "")
    .replace(/[\s·⋅•∙*×.‐-]+/g, "·")
    .replace(/^·|·$/g, "")
    .replace(/·?\/·?/g, "/")
    .replace(/^°·/, "°");
}

/** Made at the first look-up, so that loading costs nothing. */
function units(): Index {
  index ??= indexOf(dimensions.flatMap(unitsOf));
  return index;
}

function indexOf(all: readonly Unit[]): Index {
  const names = all.flatMap((unit) =>
    [foldUnit(unit.unit), ...unit.symbols].map((name) => [name, unit] as const),
  );
  return {
    exact: new Map(names),
    anyCase: new Map(all.flatMap((unit) => unit.words.map((word) => [word, unit] as const))),
    lowered: new Map(names.map(([name, unit]) => [name.toLowerCase(), unit] as const)),
  };
}
