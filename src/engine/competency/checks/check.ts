import type { RecordProblem } from "../problems.ts";
import type { Situation } from "../situation.ts";
import type { SignedStatement } from "../statements.ts";

/** A row of the table of checks: why a signed statement does not count, or undefined. */
export type Check = (
  signed: SignedStatement,
  situation: Situation,
  /** The keys of the person whose record it lies in; undefined of a statement by itself. */
  keys: ReadonlySet<string> | undefined,
) => RecordProblem | undefined;
