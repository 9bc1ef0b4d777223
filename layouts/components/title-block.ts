/** The title block of an operation sheet, with the data fields of ISO 7200:2004. */

import { t } from "../../src/engine/words.ts";
import type { Programme } from "../../src/model/programme.ts";
import type { ModuleView, Status } from "../../src/model/site.ts";
import { type Html, html } from "../html.ts";
import { date } from "../words.ts";

/** Draws the block; `kind` is the document type. The page's `h1` is in it. */
export function titleBlock({ module, status }: ModuleView, programme: Programme, kind: string): Html {
  const fields: readonly (readonly [string, string | undefined])[] = [
    [t`Legal owner`, programme.name],
    [t`Document type`, kind],
    [t`Identification number`, module.id],
    [t`Revision`, String(module.revision)],
    ...(status === undefined ? [] : [[t`Document status`, statusWords[status]] as const]),
    [t`Date of issue`, module.issued === undefined ? undefined : date(module.issued)],
    [t`Written by`, module.writtenBy],
    [t`Approved by`, module.approvedBy],
  ];
  const given = fields.filter(([, value]) => value !== undefined);
  // To be filled in by hand; on the screen an empty field says nothing, nor which sheet of how many.
  const onPaper = fields.filter(([, value]) => value === undefined).map(([name]) => [name, ""] as const);
  return html`<header class="title-block">
<div class="title-block-title"><h1>${module.title}</h1>
<p>${module.summary}</p></div>
<dl>
${given.map(([name, value]) => html`<div><dt>${name}</dt><dd>${value}</dd></div>\n`)}${[...onPaper, [t`Sheet`, t`see foot`] as const].map(([name, value]) => html`<div class="on-paper"><dt>${name}</dt><dd>${value}</dd></div>\n`)}</dl>
</header>`;
}

const statusWords: Readonly<Record<Status, string>> = {
  draft: t`Draft`,
  "not released": t`Not released`,
  released: t`Released`,
};
