/** How a job may end. */
import type { Module } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { box } from "./box.ts";

const ways = [
  { key: "done", name: "Done" },
  { key: "conserve", name: "Conserved as it is" },
  { key: "refer", name: "Referred on" },
] as const;

export function ends({ ends }: Module): Html | undefined {
  const shown = ways.filter(({ key }) => ends[key] !== undefined);
  if (shown.length === 0) return undefined;
  return html`<h3>How the job may end</h3>
<dl class="lines">
${shown.map(({ key, name }) => html`<div><dt>${box} ${name}</dt><dd>${ends[key]}</dd></div>\n`)}</dl>
`;
}
