/** What works where, for a page of the competency record: it depends on how the site is reached. */
import { ruledTable } from "../../components/ruled-table.ts";
import { type Html, html } from "../../html.ts";

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
    { name: "What", kind: "head", value: ({ what }) => what },
    { name: "Address with https, or localhost", value: ({ secure }) => secure },
    { name: "Plain http on a workshop’s network", value: ({ http }) => http },
    { name: "Opened from a disk (file)", value: ({ disk }) => disk },
  ],
  rows,
)}</section>
`;
}

/** Of the pages on which a mentor works. */
export const deskWhere: readonly WhereRow[] = [
  {
    what: "Opening files, having them marked again, the evening sheet",
    secure: "yes",
    http: "yes",
    disk: "yes",
  },
  {
    what: "Keeping files and notes over a reload",
    secure: "yes",
    http: "yes",
    disk: "yes, where the browser lets pages from a disk keep things",
  },
  {
    what: "Making a key that stays in the browser",
    secure: "yes, where it has Ed25519 (browsers of 2025 and later)",
    http: "no: browsers keep their cryptography from such addresses",
    disk: "yes, where it has Ed25519; all pages opened from disk may share it",
  },
  { what: "A key in a locked file", secure: "yes", http: "no, for the same reason", disk: "yes" },
  {
    what: "Signing",
    secure:
      "yes; best at an address that this site has to itself, since every page of the address can use the key",
    http: "no: note it on the evening sheet, save the notes, and sign at another address",
    disk: "yes",
  },
];
