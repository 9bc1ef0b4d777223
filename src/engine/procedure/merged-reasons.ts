/** Reasons of one kind about several things, said in one sentence. */

/** A way in which reasons of one kind are made: what differs, and the words that they share. */
interface Shape {
  /** Groups: the words before, the thing, the words behind. */
  readonly pattern: RegExp;
  /** The shared words for several things. */
  several(before: string, things: string, behind: string): string;
}

const plurals = new Map([
  ["is", "are"],
  ["lies", "lie"],
  ["holds", "hold"],
]);

/** Where "it" or "its" stands for the thing anywhere but at the end, the sentence can't be turned and the reason stands alone. */
const shapes: readonly Shape[] = [
  {
    // "the bottom plate is still on: it covers the second wheel"
    pattern: /^(.+ (?:it covers|they cover) )(the .+)()$/,
    several: (before, things) => `${before}${things}`,
  },
  {
    // "the click lies in the motor, which comes out first"
    pattern:
      /^()(the (?:(?! (?:is|are|lies?|holds?|must) ).)+) ((?:is|are|lies?|holds?|must) (?!.*\bits?\b(?!$)).+)$/,
    several(_, things, behind) {
      const [verb = "", ...rest] = behind.split(" ");
      return `${things} ${[plurals.get(verb) ?? verb, ...rest].join(" ").replace(/ it$/, " them")}`;
    },
  },
];

/**
 * The same reasons in the same order, those that differ only in the thing which they are about merged at the place of the
 * first. O(reasons · words).
 */
export function mergedReasons(reasons: readonly string[]): string[] {
  const groups = new Map<string, { readonly first: string; readonly merged: Merged | undefined }>();
  for (const reason of reasons) {
    const merged = readMerged(reason);
    const key = merged === undefined ? reason : merged.key;
    const before = groups.get(key);
    if (before === undefined) groups.set(key, { first: reason, merged });
    else if (merged !== undefined) before.merged!.things.push(...merged.things);
  }
  return [...groups.values()].map(({ first, merged }) =>
    merged === undefined || merged.things.length === 1 ? first : said(merged),
  );
}

interface Merged {
  readonly key: string;
  readonly shape: Shape;
  readonly before: string;
  readonly things: string[];
  readonly behind: string;
}

function readMerged(reason: string): Merged | undefined {
  for (const [row, shape] of shapes.entries()) {
    const [, before = "", thing, behind = ""] = shape.pattern.exec(reason) ?? [];
    if (thing === undefined) continue;
    return {
      key: [row, before, behind.replace(/^\w+/, pluralOf)].join("\0"),
      shape,
      before,
      things: [thing],
      behind,
    };
  }
  return undefined;
}

const pluralOf = (verb: string): string => plurals.get(verb) ?? verb;

const said = ({ shape, before, things, behind }: Merged): string =>
  shape.several(before, `${things.slice(0, -1).join(", ")} and ${things.at(-1)}`, behind);
