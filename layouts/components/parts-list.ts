/** Fasteners and parts of a machine, as lists to lay out the tray by. */

import type { Loose, NeverLeft } from "../../src/engine/procedure/leaving.ts";
import type { Hold } from "../../src/engine/procedure/procedure.ts";
import { valueWords } from "../../src/engine/value-words.ts";
import { t } from "../../src/engine/words.ts";
import { materialNamed } from "../../src/engine/workshop/bolts/materials.ts";
import { rowOf } from "../../src/model/address.ts";
import type { ModuleFastener, ModulePart, ModuleProcedure, TappedHole } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { sentence } from "../words.ts";
import { partWords } from "./part-words.ts";
import { type Column, ruledTable } from "./ruled-table.ts";

export function fasteners({ fasteners, neverLeft }: ModuleProcedure): Html | undefined {
  if (fasteners.size === 0) return undefined;
  return html`<h3>Fasteners</h3>
${ruledTable("fasteners", fastenerColumns(neverLeft), [...fasteners.values()], ({ id }) => rowOf(id))}`;
}

const fastenerColumns = (neverLeft: NeverLeft): readonly Column<ModuleFastener>[] => [
  { name: t`No.`, kind: "count", value: ({ count }) => String(count) },
  {
    name: t`Fastener`,
    kind: "head",
    value: (set) => html`${set.name}${small(fastenerRemarks(set, neverLeft.fasteners.get(set.id) ?? []))}`,
  },
  {
    name: t`Size`,
    value: ({ thread, length }) => [thread, length].filter((each) => each !== undefined).join(" × "),
  },
  { name: t`Drive`, value: ({ drive }) => drive && valueWords(drive) },
  { name: t`Kept`, value: ({ keep }) => keep },
  { name: t`Tighten`, value: torque },
];

function fastenerRemarks(
  { kind, strengthClass, into, matched, stays, note }: ModuleFastener,
  neverLeft: readonly Loose[],
): (string | undefined)[] {
  return [
    kindWords(kind),
    jointWords(strengthClass, into),
    matched ? t`matched: each to its own hole, in numbered places` : undefined,
    stays === undefined ? undefined : t`stays: ${stays}`,
    neverLeft.length === 0 ? undefined : t`never left ${neverLeft.join(t` or `)} between sessions`,
    note,
  ];
}

const kindWords = (kind: ModuleFastener["kind"]) =>
  kind === "machine screw"
    ? undefined
    : kind === "makers own"
      ? t`thread of the maker’s own`
      : valueWords(kind);

/** "class 8.8; into brass, engagement 5 mm": what the screw is and what it goes into. */
function jointWords(strength: string | undefined, into: TappedHole | undefined): string | undefined {
  const words = [
    strength === undefined ? undefined : /\d/.test(strength) ? t`class ${strength}` : t`of ${strength}`,
    into === undefined ? undefined : holeWords(into),
  ].filter((each) => each !== undefined);
  return words.length === 0 ? undefined : words.join("; ");
}

function holeWords({ material, engagement, isSound }: TappedHole): string {
  const soundness = isSound ? "" : t` that is not sound`;
  const length = engagement === undefined ? "" : t`, engagement ${engagement}`;
  return t`into ${materialWords(material)}${soundness}${length}`;
}

/** A plain word as the author wrote it; of a row of the table, such as zinc-3, what the trade calls it. */
function materialWords(written: string): string {
  const known = materialNamed(written);
  return known.ok && /[-\d]/.test(written) ? known.value.name : written;
}

/** A figure never stands without its source. */
function torque({ torque, torqueSource }: ModuleFastener): Html | string | undefined {
  return torqueSource === undefined ? torque : html`${torque} <small>source: ${torqueSource}</small>`;
}

export function parts({ parts, fasteners, neverLeft }: ModuleProcedure): Html | undefined {
  if (parts.size === 0) return undefined;
  const columns: readonly Column<ModulePart>[] = [
    {
      name: t`Part`,
      kind: "head",
      value: (part) => html`${partWords(part.id, { parts })}${small(partRemarks(part, parts, neverLeft))}`,
    },
    { name: t`Held by`, value: (part) => holds(part, fasteners) },
    { name: t`Kept`, value: ({ keep }) => keep },
  ];
  return html`<h3>Parts</h3>
${ruledTable("parts", columns, [...parts.values()])}`;
}

function partRemarks(
  part: ModulePart,
  parts: ModuleProcedure["parts"],
  neverLeft: NeverLeft,
): (string | undefined)[] {
  const nameOf = (id: string) => parts.get(id)?.name ?? id;
  return [
    part.in === undefined ? undefined : t`in the ${nameOf(part.in)}`,
    part.replaces === undefined ? undefined : t`in place of the ${nameOf(part.replaces)}`,
    part.keepDry ? t`kept dry of oil` : undefined,
    neverLeft.parts.has(part.id) ? t`never left off between sessions` : undefined,
    part.note,
  ];
}

function small(remarks: readonly (string | undefined)[]): Html | undefined {
  const said = remarks.filter((each) => each !== undefined);
  return said.length === 0 ? undefined : html` <small>${said.map(sentence).join(" ")}</small>`;
}

function holds({ heldBy }: ModulePart, sets: ModuleProcedure["fasteners"]): string {
  return [...heldBy].map(([id, hold]) => holdWords(hold, sets.get(id)!)).join("; ");
}

/** "motor bolts: 2 out, 1 slack"; "board screws" where all of them must be out. */
function holdWords({ out, slack }: Hold, set: ModuleFastener): string {
  if (out === set.count) return set.name;
  const counts = [out > 0 && t`${out} out`, slack > 0 && t`${slack} slack`].filter((each) => each !== false);
  return `${set.name}: ${counts.join(", ")}`;
}
