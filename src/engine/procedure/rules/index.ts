import { assembly } from "./assembly.ts";
import { assemblyWork } from "./assembly-work.ts";
import { covering } from "./covering.ts";
import { fastening } from "./fastening.ts";
import type { Rule } from "./rule.ts";
import { sameThing } from "./same-thing.ts";
import { state } from "./state.ts";
import { tightening } from "./tightening.ts";

/** The rules by which two steps are bound; reasons are listed in this order. */
export const rules: readonly Rule[] = [
  sameThing,
  fastening,
  covering,
  assembly,
  assemblyWork,
  tightening,
  state,
];
