/** The sums that a worked question may ask for: a row each, worked by the workshop's own rules and never by evaluating text. */
import { parseDesignation } from "../workshop/designation.ts";
import { parseQuantity, type Quantity } from "../workshop/quantity.ts";
import { bad, good, type Problem, type Result } from "../workshop/result.ts";
import type { Dimension } from "../workshop/units.ts";

/** Figures of a case by their names, as written. */
export type Figures = ReadonlyMap<string, string>;

export type SumCode = "figure-missing" | "figure-unknown" | "figure" | "sum";

interface Sum {
  /** Names of the figures that it takes, each with what it must be. */
  readonly takes: Readonly<Record<string, Reader>>;
  /** In base units or plain numbers, in the order of `takes`; the unit of the answer. */
  readonly work: (...figures: readonly number[]) => number;
  readonly unit: string;
}

type Reader = (text: string) => Result<number, string>;

const a =
  (dimension?: Dimension): Reader =>
  (text) => {
    const read = parseQuantity(text, dimension);
    return read.ok ? good(read.value.base) : read;
  };

const pitch: Reader = (text) => {
  const read = parseDesignation(text);
  return read.ok ? good(read.value.pitchMm / 1000) : read;
};

const mmPerInch = 25.4;

/** `convert` alone has no unit of its own: it gives its figure back, to be told in another. */
export const sums = {
  /** A force at right angles to an arm: T = F · l. */
  torque: { takes: { force: a("force"), arm: a("length") }, work: (force, arm) => force * arm, unit: "N·m" },
  /** The force at the end of an arm that makes a torque. */
  force: { takes: { torque: a("torque"), arm: a("length") }, work: (torque, arm) => torque / arm, unit: "N" },
  /** From crest to crest of a thread of one start, by the table of its standard. */
  pitch: { takes: { thread: pitch }, work: (one) => one * 1000, unit: "mm" },
  /** Threads in an inch of length. */
  "threads-per-inch": { takes: { thread: pitch }, work: (one) => mmPerInch / (one * 1000), unit: "" },
  /** How far so many turns move a screw of one start. */
  advance: {
    takes: { thread: pitch, turns: a("number") },
    work: (one, turns) => one * turns * 1000,
    unit: "mm",
  },
  /** How many turns move a screw of one start so far. */
  turns: { takes: { thread: pitch, length: a("length") }, work: (one, length) => length / one, unit: "" },
  /** What the second reading of a length is more than the first: a play, an end play. */
  play: {
    takes: { first: a("length"), second: a("length") },
    work: (first, second) => (second - first) * 1000,
    unit: "mm",
  },
} satisfies Readonly<Record<string, Sum>>;

export type SumName = keyof typeof sums | "convert";

export const sumNames: readonly SumName[] = ["convert", ...(Object.keys(sums) as (keyof typeof sums)[])];

/** What a sum takes, by name. */
export function takenBy(sum: SumName): readonly string[] {
  return sum === "convert" ? ["from"] : Object.keys(sums[sum].takes);
}

/**
 * The answer of a sum for the figures of one case, before it is told in the unit asked for, to 12 significant figures.
 * Refuses figures that are missing, unknown, unreadable or of the wrong kind, and an answer that is no number.
 */
export function workSum(sum: SumName, figures: Figures): Result<Quantity, SumCode> {
  const names = takenBy(sum);
  const missing = names.find((name) => !figures.has(name));
  if (missing !== undefined)
    return bad("figure-missing", `no ${missing}`, `a figure for each of ${names.join(", ")}`);
  const unknown = [...figures.keys()].find((name) => !names.includes(name));
  if (unknown !== undefined) return bad("figure-unknown", unknown, names.join(", "));
  if (sum === "convert") return asFigure(parseQuantity(figures.get("from")!));
  const { takes, work, unit }: Sum = sums[sum];
  const read = names.map((name) => takes[name]!(figures.get(name)!));
  const faulty = read.find((one) => !one.ok);
  if (faulty !== undefined) return asFigure(faulty as Result<never, string>);
  const answer = work(...read.map((one) => (one as { value: number }).value));
  if (!Number.isFinite(answer)) return bad("sum", String(answer), "figures that the sum can be worked with");
  return asFigure(parseQuantity(`${Number(answer.toPrecision(12))} ${unit}`.trim()));
}

function asFigure<Value>(read: Result<Value, string>): Result<Value, SumCode> {
  return read.ok ? read : { ok: false, problem: { ...(read.problem as Problem<string>), code: "figure" } };
}
