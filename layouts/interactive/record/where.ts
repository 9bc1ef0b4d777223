/** What works where: it depends on how the site is reached. */
import { ruledTable } from "../../components/ruled-table.ts";
import { type Html, html } from "../../html.ts";

interface Row {
  readonly what: string;
  readonly secure: string;
  readonly http: string;
  readonly disk: string;
}

const rows: readonly Row[] = [
  {
    what: "Reading, practice, quiz, dry run, and the record of them",
    secure: "yes",
    http: "yes",
    disk: "yes, where the browser lets pages from one folder share what they keep; if the log stays empty, it does not",
  },
  {
    what: "Saving the record as a file, adding a file to it, printing it",
    secure: "yes",
    http: "yes",
    disk: "yes",
  },
  { what: "Checking a mentor’s signature", secure: "yes", http: "yes", disk: "yes" },
  {
    what: "Asking the browser not to clear the record away",
    secure: "yes",
    http: "no: save the file often",
    disk: "some browsers",
  },
  {
    what: "Taking your key along, or taking it up, under a passphrase",
    secure: "yes",
    http: "no: browsers give the cipher to secure addresses only",
    disk: "yes",
  },
];

export function whatWorksWhere(): Html {
  return html`<section class="group" aria-labelledby="s_where">
<h2 id="s_where">What works where</h2>
<p class="record-here"></p>
${ruledTable<Row>(
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
