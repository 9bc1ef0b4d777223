/** Reads what a sum needs from the call; what makes no sense is a WrongCall that says what would. */
import { type Designation, parseDesignation } from "../../engine/workshop/designation.ts";
import { parseQuantity, type Quantity } from "../../engine/workshop/quantity.ts";
import type { Problem, Result } from "../../engine/workshop/result.ts";
import type { Dimension } from "../../engine/workshop/units.ts";
import { type Call, WrongCall } from "../command.ts";

/** What is sensible, both ends counted in, written as people do. */
export interface Range {
  readonly dimension: Dimension;
  readonly least: string;
  readonly greatest: string;
}

/** An amount in the base unit of its dimension; undefined where the option is not given. */
export function measure(call: Call, option: string, range: Range): number | undefined {
  const text = call.text(option);
  if (text === undefined) return undefined;
  return within(text, `--${option}`, taken(parseQuantity(text, range.dimension), `--${option}`, text), range);
}

/** The amount in the base unit, if it is within the range. */
export function within(text: string, where: string, found: Quantity, range: Range): number {
  const [least, greatest] = [range.least, range.greatest].map((end) => baseOf(end));
  if (found.base >= least! && found.base <= greatest!) return found.base;
  throw new WrongCall(`${where} "${clip(text)}": expected from ${range.least} to ${range.greatest}.`);
}

function baseOf(text: string): number {
  const read = parseQuantity(text);
  return read.ok ? read.value.base : Number.NaN;
}

/** The value that was read, or the problem as a WrongCall. */
export function taken<Value>(read: Result<Value, string>, where: string, text: string): Value {
  if (read.ok) return read.value;
  throw new WrongCall(`${where} "${clip(text)}": ${problemWords(read.problem)}`);
}

/** The answer of a sum, or its refusal as a WrongCall. */
export function reckoned<Value>(read: Result<Value, string>): Value {
  if (read.ok) return read.value;
  throw new WrongCall(`This can't be reckoned: ${problemWords(read.problem)}`);
}

function problemWords({ found, expected, nearest }: Problem<string>): string {
  const near = nearest === undefined || namesIt(expected, nearest) ? "" : ` The nearest known is ${nearest}.`;
  return `found ${found}; expected ${expected}.${near}`;
}

/** A list of all that is known names the nearest as well, but does not point at it. */
function namesIt(expected: string, nearest: string): boolean {
  return expected.includes(nearest) && !expected.startsWith("one of ");
}

/** What an option says; a WrongCall with its use where it is missing. */
export function needed<Value>(value: Value | undefined, option: string, example: string): Value {
  if (value !== undefined) return value;
  throw new WrongCall(`--${option} is missing; write it as --${option} ${example}.`);
}

export function threadOf(call: Call): Designation {
  const text = needed(call.text("thread"), "thread", "M6, --thread '2 BA' or --thread '1/4-20 UNC'");
  return taken(parseDesignation(text), "--thread", text);
}

/** Lengths in mm, as the engine wants them. */
export function lengthMm(call: Call, option: string): number | undefined {
  const metres = measure(call, option, { dimension: "length", least: "0.01 mm", greatest: "1 m" });
  return metres === undefined ? undefined : Number((metres * 1000).toPrecision(12));
}

function clip(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
