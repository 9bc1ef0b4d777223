/** What works where: it depends on how the site is reached. */
import { type WhereRow, whereTable } from "../../components/where-table.ts";
import type { Html } from "../../html.ts";

const rows: readonly WhereRow[] = [
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

export const whatWorksWhere = (): Html => whereTable(rows);
