/** What a step does, in words from its acts: "Remove: motor-board screws (4), motor board". */

import type { Act, ActKind } from "../../src/engine/procedure/procedure.ts";
import { actKinds } from "../../src/engine/procedure/procedure.ts";
import type { Tray } from "../../src/engine/procedure/tray.ts";
import { t } from "../../src/engine/words.ts";
import type { FastenerKind, ModuleFastener, ModuleProcedure, ModuleStep } from "../../src/model/module.ts";
import { type Html, html, join, type Value } from "../html.ts";
import { countActs } from "./count-acts.ts";
import { partWords } from "./part-words.ts";

const verbs: Readonly<Record<ActKind, string>> = {
  slacken: t`Slacken`,
  remove: t`Remove`,
  work: t`Work on`,
  refit: t`Refit`,
  tighten: t`Tighten`,
};

/** `before` is the tray before the step: it says how many "all" are. Undefined for a step without acts and states. */
export function acts(step: ModuleStep, before: Tray, procedure: ModuleProcedure): Html | undefined {
  const counts = countActs(step.acts, before);
  const state = ([id, value]: readonly [string, string]) =>
    html`${procedure.states.get(id)?.name ?? id}: ${value}`;
  const rows: readonly (readonly [string, readonly Value[]])[] = [
    [t`Only while`, [...step.while].map(state)],
    [t`Leave on`, step.through.map((id) => partWords(id, procedure))],
    ...actKinds.map(
      (kind) =>
        [
          verbs[kind],
          step.acts.flatMap((act, i) => (act.kind === kind ? [thing(act, counts[i], procedure)] : [])),
        ] as const,
    ),
    [t`Brings about`, [...step.makes].map(state)],
  ];
  const shown = rows.filter(([, things]) => things.length > 0);
  if (shown.length === 0) return undefined;
  return html`<dl class="acts">
${shown.map(([verb, things]) => html`<div><dt>${verb}</dt><dd>${join(things, ", ")}</dd></div>\n`)}</dl>
`;
}

function thing(act: Act, moved: number | undefined, procedure: ModuleProcedure): Html {
  const set = procedure.fasteners.get(act.target);
  if (set === undefined) return html`${partWords(act.target, procedure)}`;
  const said = [moved === undefined ? undefined : howMany(moved, set), ...remarks(act.kind, set)];
  return html`${set.name}${bracketed(said.filter((each) => each !== undefined))}`;
}

function howMany(moved: number, { count }: ModuleFastener): string | undefined {
  if (moved !== count) return t`${moved} of ${count}`;
  return count > 1 ? String(count) : undefined;
}

/** What a hand has to know of a fastener at the moment it turns or drives it. */
const kindRemarks: Partial<Record<FastenerKind, (kind: ActKind) => string | undefined>> = {
  "left-hand": (kind) => (kind === "work" ? undefined : t`left-hand thread`),
  "taper pin": (kind) => (kind === "remove" ? t`driven out from the small end` : undefined),
};

function remarks(kind: ActKind, set: ModuleFastener): (string | undefined)[] {
  return [
    kindRemarks[set.kind]?.(kind),
    set.matched && (kind === "remove" || kind === "refit") ? t`each to its own place` : undefined,
    kind === "tighten" ? set.torque : undefined,
    kind === "tighten" && set.torqueSource !== undefined ? t`source: ${set.torqueSource}` : undefined,
  ];
}

const bracketed = (said: readonly string[]) => (said.length === 0 ? undefined : ` (${said.join("; ")})`);
