import { parseDesignation } from "../../../src/engine/workshop/designation.ts";
import type { Problem, Result } from "../../../src/engine/workshop/result.ts";
import type { ThreadSize } from "../../../src/engine/workshop/threads/size.ts";

/** The value of a result; fails where there is none. */
export function have<Value>(result: Result<Value, string>): Value {
  if (!result.ok) throw new Error(JSON.stringify(result.problem));
  return result.value;
}

/** The problem of a result; fails where there is none. */
export function problemOf<Code extends string>(result: Result<unknown, Code>): Problem<Code> {
  if (result.ok) throw new Error(`no problem: ${JSON.stringify(result.value)}`);
  return result.problem;
}

export function sizeOf(text: string): ThreadSize {
  return have(parseDesignation(text));
}
