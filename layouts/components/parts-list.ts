/** Fasteners and parts of a machine, as a list to lay out the tray by. */
import type { Hold } from "../../src/engine/procedure/procedure.ts";
import type { ModuleFastener, ModulePart, ModuleProcedure } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { sentence } from "../words.ts";

export function fasteners({ fasteners }: ModuleProcedure): Html | undefined {
  if (fasteners.size === 0) return undefined;
  return html`<h3>Fasteners</h3>
<table class="ruled fasteners">
<thead><tr><th scope="col" class="count">No.</th><th scope="col">Fastener</th><th scope="col">Thread and length</th><th scope="col">Drive</th><th scope="col">Kept</th><th scope="col">Tighten</th></tr></thead>
<tbody>
${[...fasteners.values()].map(fastener)}</tbody>
</table>
`;
}

function fastener(set: ModuleFastener): Html {
  const size = [set.thread, set.length].filter((each) => each !== undefined).join(" × ");
  return html`<tr><td class="count">${set.count}</td><th scope="row">${set.name}${remarks(set)}</th><td data-name="Size">${size || "—"}</td><td data-name="Drive">${set.drive ?? "—"}</td><td data-name="Kept">${set.keep ?? "—"}</td><td data-name="Tighten">${torque(set)}</td></tr>
`;
}

function remarks({ kind, matched, note }: ModuleFastener): Html | undefined {
  const said = [
    kind === "machine screw" ? undefined : kind,
    matched ? "matched: each to its own hole, numbered" : undefined,
    note,
  ].filter((each) => each !== undefined);
  return said.length === 0 ? undefined : html` <small>${said.map(sentence).join(" ")}</small>`;
}

/** A figure never stands without its source. */
function torque({ torque, torqueSource }: ModuleFastener): Html {
  return html`${torque ?? "—"}${torqueSource === undefined ? undefined : html` <small>source: ${torqueSource}</small>`}`;
}

export function parts({ parts, fasteners }: ModuleProcedure): Html | undefined {
  if (parts.size === 0) return undefined;
  return html`<h3>Parts</h3>
<table class="ruled parts">
<thead><tr><th scope="col">Part</th><th scope="col">Held by</th><th scope="col">Kept</th></tr></thead>
<tbody>
${[...parts.values()].map(
  (part) =>
    html`<tr><th scope="row">${part.name}${partRemarks(part, parts)}</th><td data-name="Held by">${holds(part, fasteners)}</td><td data-name="Kept">${part.keep ?? "—"}</td></tr>\n`,
)}</tbody>
</table>
`;
}

function partRemarks(part: ModulePart, parts: ModuleProcedure["parts"]): Html | undefined {
  const nameOf = (id: string) => parts.get(id)?.name ?? id;
  const said = [
    part.in === undefined ? undefined : `in the ${nameOf(part.in)}`,
    part.replaces === undefined ? undefined : `takes the place of the ${nameOf(part.replaces)}`,
    part.note,
  ].filter((each) => each !== undefined);
  return said.length === 0 ? undefined : html` <small>${said.map(sentence).join(" ")}</small>`;
}

function holds({ heldBy }: ModulePart, sets: ModuleProcedure["fasteners"]): string {
  return heldBy.size === 0 ? "—" : [...heldBy].map(([id, hold]) => holdWords(hold, sets.get(id)!)).join("; ");
}

/** "motor bolts: 2 out, 1 slack"; "board screws" where all of them must be out. */
function holdWords({ out, slack }: Hold, set: ModuleFastener): string {
  if (out === set.count) return set.name;
  const counts = [out > 0 && `${out} out`, slack > 0 && `${slack} slack`].filter((each) => each !== false);
  return `${set.name}: ${counts.join(", ")}`;
}
