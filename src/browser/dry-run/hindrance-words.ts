/** What stands in the way of a step, as a mentor beside the machine would say it: a row for each kind of fault. */

import type { FastenerAct } from "../../engine/procedure/fastener-acts.ts";
import type { Fault, FaultKind } from "../../engine/procedure/fault.ts";
import type { Machine } from "../../engine/procedure/procedure.ts";
import { type Relations, relationsOf } from "../../engine/procedure/relations.ts";
import { holdsOrHold, isOrAre, stillOver } from "../../engine/procedure/rules/number.ts";
import { t } from "../../engine/words.ts";
import { capital, sentence } from "../page/words.ts";

/** Faults of the end belong to no step. */
type StepFaultKind = Exclude<FaultKind, `ends-${string}`>;
type Of<Kind extends FaultKind> = Extract<Fault, { kind: Kind }>;

const rows: { readonly [Kind in StepFaultKind]: (fault: Of<Kind>, relations: Relations) => string } = {
  "cover-on": ({ cover, target }, relations) => stillOver(cover, target, relations),
  "cover-off": ({ cover }, { the }) => t`this is done through ${the(cover)}, which must be on`,
  "still-held": ({ part, set, tight, slack }, relations) =>
    t`${relations.the(set)} still ${holdsOrHold(set, relations)} ${relations.the(part)}: ${counts(tight, slack)}`,
  "in-the-way": ({ part, set, tight, slack }, relations) =>
    t`${relations.the(set)} ${isOrAre(set, relations)} in the way of ${relations.the(part)}: ${counts(tight, slack)}`,
  "part-off": ({ part }, relations) => t`${relations.the(part)} ${isOrAre(part, relations)} off already`,
  "part-on": ({ part }, relations) => t`${relations.the(part)} ${isOrAre(part, relations)} still on`,
  "place-taken": ({ part, by }, relations) =>
    t`${relations.the(by)} ${isOrAre(by, relations)} still in the place of ${relations.the(part)}`,
  "too-many": ({ act, set, there }, relations) => {
    const state = needed[act];
    return there === 0
      ? t`${relations.the(set)} ${isOrAre(set, relations)} not ${state}`
      : t`of ${relations.the(set)} only ${there} ${there === 1 ? t`is` : t`are`} ${state}`;
  },
  "wrong-state": ({ state, value, needed, part }, { machine, the }) =>
    t`the ${machine.states.get(state)?.name ?? state} must be ${needed}${part === "" ? "" : t` before ${the(part)} can be moved`}, not ${value}`,
};

/** What fasteners must be for an act. */
const needed: Readonly<Record<FastenerAct, string>> = {
  slacken: "tight",
  remove: "in",
  refit: t`out`,
  tighten: t`in and slack`,
};

const counts = (tight: number, slack: number): string =>
  [tight > 0 ? t`${tight} tight` : "", slack > 0 ? t`${slack} slack` : ""]
    .filter((part) => part !== "")
    .join(", ");

/** So many are said; more would not be read. */
const most = 4;

/** Sentences, each once; of several things under one cover the first is named. */
export function hindranceWords(faults: readonly Fault[], machine: Machine): string[] {
  const relations = relationsOf(machine);
  const covers = new Set<string>();
  const words = new Set<string>();
  for (const fault of faults) {
    if (fault.kind === "cover-on" && covers.has(fault.cover)) continue;
    if (fault.kind === "cover-on") covers.add(fault.cover);
    const row = rows[fault.kind as StepFaultKind] as (fault: Fault, relations: Relations) => string;
    words.add(sentence(capital(row(fault, relations))));
  }
  const said = [...words];
  return said.length > most ? [...said.slice(0, most), t`And ${said.length - most} more.`] : said;
}
