/** The title block of an operation sheet, with the data fields of ISO 7200:2004. */

import type { Module } from "../../src/model/module.ts";
import type { Programme } from "../../src/model/programme.ts";
import { type Html, html } from "../html.ts";
import { date } from "../words.ts";

/** Draws the block; `kind` is the document type. The page's `h1` is in it. */
export function titleBlock(module: Module, programme: Programme, kind: string): Html {
  const fields: readonly (readonly [string, string | Html | undefined])[] = [
    ["Legal owner", programme.name],
    ["Document type", kind],
    ["Identification number", module.id],
    ["Revision", String(module.revision)],
    ["Date of issue", module.issued === undefined ? undefined : date(module.issued)],
    ["Sheet", html`<span class="on-screen">1 of 1</span><span class="on-paper">see foot</span>`],
    ["Written by", module.writtenBy],
    ["Approved by", module.approvedBy],
  ];
  return html`<header class="title-block">
<div class="title-block-title"><h1>${module.title}</h1>
<p>${module.summary}</p></div>
<dl>
${fields.map(([name, value]) => html`<div><dt>${name}</dt><dd>${value ?? "—"}</dd></div>\n`)}</dl>
</header>`;
}
