/** Reads what was written into the fields of a sum, and notes what is wrong with each. */
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import type { Problem, Result } from "../../engine/workshop/result.ts";
import type { Dimension } from "../../engine/workshop/units.ts";

export interface Trouble {
  /** Name of the field beside which it is told. */
  readonly field: string;
  readonly text: string;
}

/** What is sensible, both ends counted in, written as people do. */
export interface Range {
  readonly dimension: Dimension;
  readonly least: string;
  readonly greatest: string;
}

/** Each reader gives undefined where the field is empty or wrong; what is wrong is in `troubles`, one for a field. */
export class Fields {
  readonly #values: ReadonlyMap<string, string>;
  readonly #troubles = new Map<string, Trouble>();

  constructor(values: ReadonlyMap<string, string>) {
    this.#values = values;
  }

  get troubles(): readonly Trouble[] {
    return [...this.#troubles.values()];
  }

  text(field: string): string | undefined {
    const text = this.#values.get(field)?.trim() ?? "";
    return text === "" ? undefined : text;
  }

  isTicked(field: string): boolean {
    return this.text(field) !== undefined;
  }

  /** Notes what is wrong with a field; the first word on it stays. */
  note(field: string, text: string): undefined {
    if (!this.#troubles.has(field)) this.#troubles.set(field, { field, text });
    return undefined;
  }

  /** The text of a field that must be filled in. */
  needed(field: string, example: string): string | undefined {
    return this.text(field) ?? this.note(field, `Nothing is written here; expected ${example}.`);
  }

  /** The value that was read, or undefined with the problem noted. */
  taken<Value>(field: string, read: Result<Value, string>): Value | undefined {
    return read.ok ? read.value : this.note(field, problemWords(read.problem));
  }

  /** The answer of a sum. The code of its problem is the name of the field that it is about. */
  reckoned<Value>(read: Result<Value, string>): Value | undefined {
    return read.ok ? read.value : this.taken(read.problem.code, read);
  }

  /** An amount in the base unit of its dimension. */
  measure(field: string, range: Range): number | undefined {
    const text = this.text(field);
    if (text === undefined) return undefined;
    const read = this.taken(field, parseQuantity(text, range.dimension));
    return read === undefined ? undefined : this.within(field, read.base, range);
  }

  within(field: string, base: number, { least, greatest }: Range): number | undefined {
    if (base >= baseOf(least) && base <= baseOf(greatest)) return base;
    return this.note(field, `Found “${this.text(field)}”; expected from ${least} to ${greatest}.`);
  }

  /** Millimetres. */
  lengthMm(field: string): number | undefined {
    const metres = this.measure(field, { dimension: "length", least: "0.01 mm", greatest: "1 m" });
    return metres === undefined ? undefined : Number((metres * 1000).toPrecision(12));
  }

  /** A bare number; its own range is the engine's to judge. */
  number(field: string): number | undefined {
    return this.measure(field, { dimension: "number", least: "-1000000", greatest: "1000000" });
  }
}

function baseOf(text: string): number {
  const read = parseQuantity(text);
  return read.ok ? read.value.base : Number.NaN;
}

function problemWords({ found, expected, nearest }: Problem<string>): string {
  const near = nearest === undefined || namesIt(expected, nearest) ? "" : ` The nearest known is ${nearest}.`;
  return `Found “${found}”; expected ${expected}.${near}`;
}

/** A list of all that is known names the nearest as well, but does not point at it. */
function namesIt(expected: string, nearest: string): boolean {
  return expected.includes(nearest) && !expected.startsWith("one of ");
}
