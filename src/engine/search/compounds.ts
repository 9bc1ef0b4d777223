/**
 * Names that people write with and without spaces: threads ("2 BA", "M3 x 0.5", "1/4-20 UNC") and measures ("5 mm").
 * Each becomes one word, and pieces by which it is found too.
 */

/** One way of writing such a name. */
export interface Compound {
  /** Matches the whole name in lower-case text. */
  readonly pattern: RegExp;
  /** The one word, then its pieces. */
  words(match: RegExpExecArray): string[];
}

const size = String.raw`\d+ \d+\/\d+|\d+\/\d+|\d*\.?\d+`;
const fraction = String.raw`(?:\d+ )?\d+\/\d+`;
const names = "unc|unf|unef|uns|bsw|bsf|bsp|whitworth";
/** "Whit" is how the trade writes it, and the rest is on its way to the whole name. */
const series = `${names}|whitwort|whitwor|whitwo|whitw|whit`;

/** Names of series of threads: one of them is no beginning of another word. */
export const seriesNames: ReadonlySet<string> = new Set([...names.split("|"), "ba"]);

/** By its name the coarse series is meant (BS 84); the fine one is called BSF. */
const seriesOf = (name: string | undefined): string | undefined => (name?.startsWith("w") ? "bsw" : name);

/** Who wrote Whitworth is found by that too. */
const asWritten = (name: string | undefined): string | undefined =>
  name?.startsWith("w") ? "whitworth" : name;
const edge = String.raw`(?![\p{L}\p{N}])`;
const start = String.raw`(?<![\p{L}\p{N}.\/])`;

/** "0.50" and ".5" are one number. */
const plain = (digits: string): string =>
  /^[\d.]+$/.test(digits) ? String(Number(digits)) : digits.replace(" ", "+");

const present = (words: readonly (string | undefined)[]): string[] =>
  [...new Set(words.filter((word) => word !== undefined && word !== ""))] as string[];

/** An inch thread by size, threads an inch and, where it was said, series. */
const inchThread = ([, size, pitch, written]: RegExpExecArray): string[] => {
  const width = plain(size!);
  const name = seriesOf(written);
  return present([
    `${width}-${pitch}${name ?? ""}`,
    `${width}-${pitch}`,
    name && `${width}${name}`,
    name,
    asWritten(written),
    `${width}in`,
    width,
  ]);
};

/** An inch thread by size and series. */
const inchSize = (size: string, written: string): string[] => {
  const [width, name] = [plain(size), seriesOf(written)];
  return present([`${width}${name}`, name, asWritten(written), `${width}in`, width]);
};

/** Order matters: the first row that matches at a place takes it. */
export const compounds: readonly Compound[] = [
  {
    // ISO metric: "M3", "M3x0.5", and while it is being typed "M3x".
    pattern: RegExp(String.raw`${start}m ?(\d+(?:\.\d+)?)(?: ?x ?(\d*\.?\d+)?)?${edge}`, "u"),
    words: ([, diameter, pitch]) =>
      pitch === undefined
        ? [`m${plain(diameter!)}`]
        : [`m${plain(diameter!)}x${plain(pitch)}`, `m${plain(diameter!)}`],
  },
  {
    // British Association: "2 BA", "2BA", "BA 2", and while it is being typed "2 b".
    pattern: RegExp(String.raw`${start}(?:(?:no\.? ?)?(\d{1,2})[ -]?ba?|ba ?(\d{1,2}))${edge}`, "u"),
    words: ([text, number, behind]) => (/a/.test(text) ? [`${number ?? behind}ba`, "ba"] : [`${number}b`]),
  },
  {
    // Inch threads by size, threads an inch and series: "1/4-20 UNC", "#4-40 UNC", "1/4 in x 20 BSW", "1/4-20".
    pattern: RegExp(
      String.raw`${start}(?:# ?|no\.? ?)?(${size}) ?(?:inch|in|")? ?[-x] ?(\d+)(?: ?(${series}))?${edge}`,
      "u",
    ),
    words: inchThread,
  },
  {
    // A fraction and its threads an inch with nothing between: "1/4 20", "1/4 20 UNC".
    pattern: RegExp(String.raw`${start}(\d+\/\d+) (\d{1,2})(?: ?(${series}))?${edge}(?!\/)`, "u"),
    words: inchThread,
  },
  {
    // Inch threads by size and series: "1/4 in BSF", "1/4 UNC".
    pattern: RegExp(String.raw`${start}(?:# ?|no\.? ?)?(${size}) ?(?:inch|in|")? ?(${series})${edge}`, "u"),
    words: ([, width, name]) => inchSize(width!, name!),
  },
  {
    // Whitworth by its first letter, beside a fraction of an inch alone, for "5 W" are watts: "3/8 W", "3/8 in W", "W 3/8".
    pattern: RegExp(
      `${start}(?:(${fraction}) ?(?:inch|in|")? ?w(?:hi?)?|w ?(${fraction})(?: ?(?:inch|in|"))?)${edge}`,
      "u",
    ),
    words: ([, before, behind]) => inchSize((before ?? behind)!, "whitworth"),
  },
  {
    // Measures: "5 mm", "150 mL", "1/2 in".
    pattern: RegExp(String.raw`${start}(${size}) ?(mm|cm|ml|kg|inch|in|")(?![\p{L}\p{N}])`, "u"),
    words: ([, number, unit]) => [
      `${plain(number!)}${unit === '"' || unit === "inch" ? "in" : unit}`,
      plain(number!),
    ],
  },
];
