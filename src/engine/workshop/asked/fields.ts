/** What somebody has filled in for a sum, in a form or in a call, and what is wrong with it, field by field. */

import { t } from "../../words.ts";
import type { Problem, Result } from "../result.ts";
import { readMeasure } from "./measure.ts";
import type { RangeName } from "./ranges.ts";

export interface Trouble {
  /** Name of the field beside which it is told. */
  readonly field: string;
  /** What was found, in words; undefined where the field is empty and must not be. */
  readonly found: string | undefined;
  /** What was expected, with the nearest thing known where there is one. */
  readonly expected: string;
  /** The whole sentence, as it stands beside a field. */
  readonly text: string;
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

  /** Notes what is wrong with a field, in words that fit "found …; expected …". */
  note(field: string, found: string, expected: string): undefined {
    return this.#note({ field, found, expected, text: t`Found ${found}; expected ${expected}.` });
  }

  /** The text of a field that must be filled in. */
  needed(field: string, example: string): string | undefined {
    return this.text(field) ?? this.missing(field, example);
  }

  /** Notes that a field is empty and must not be. */
  missing(field: string, expected: string): undefined {
    const text = t`Nothing is written here; expected ${expected}.`;
    return this.#note({ field, found: undefined, expected, text });
  }

  /** The value that was read, or undefined with the problem noted. */
  taken<Value>(field: string, read: Result<Value, string>): Value | undefined {
    if (read.ok) return read.value;
    const { found } = read.problem;
    const expected = expectedWords(read.problem);
    return this.#note({ field, found, expected, text: t`Found “${found}”; expected ${expected}.` });
  }

  /** The answer of a sum. The code of its problem is the name of the field that it is about. */
  reckoned<Value>(read: Result<Value, string>): Value | undefined {
    return read.ok ? read.value : this.taken(read.problem.code, read);
  }

  /** A figure in the unit of its range. */
  measure(field: RangeName): number | undefined {
    const text = this.text(field);
    return text === undefined ? undefined : this.taken(field, readMeasure(field, text));
  }

  /** The first word on a field stays. */
  #note(trouble: Trouble): undefined {
    if (!this.#troubles.has(trouble.field)) this.#troubles.set(trouble.field, trouble);
    return undefined;
  }
}

function expectedWords({ expected, nearest }: Problem<string>): string {
  return nearest === undefined || namesIt(expected, nearest)
    ? expected
    : t`${expected}. The nearest known is ${nearest}`;
}

/** A list of all that is known names the nearest as well, but does not point at it. */
function namesIt(expected: string, nearest: string): boolean {
  return expected.includes(nearest) && !expected.startsWith("one of ");
}
