/** What works where, for a page of the competency record: it depends on how the site is reached. */
import { t } from "../../src/engine/words.ts";
import { type Html, html } from "../html.ts";
import { ruledTable } from "./ruled-table.ts";

export interface WhereRow {
  readonly what: string;
  readonly secure: string;
  readonly http: string;
  readonly disk: string;
}

/** The script says in the empty paragraph where the page stands just now. */
export function whereTable(rows: readonly WhereRow[]): Html {
  return html`<section class="group" aria-labelledby="s_where">
<h2 id="s_where">What works where</h2>
<p class="record-here"></p>
${ruledTable<WhereRow>(
  "where",
  [
    { name: t`What`, kind: "head", value: ({ what }) => what },
    { name: t`Address with https, or localhost`, value: ({ secure }) => secure },
    { name: t`Plain http on a workshop’s network`, value: ({ http }) => http },
    { name: t`Opened from a disk (file)`, value: ({ disk }) => disk },
  ],
  rows,
)}</section>
`;
}
