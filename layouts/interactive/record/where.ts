/** What works where: it depends on how the site is reached. */
import { t } from "../../../src/engine/words.ts";
import { type WhereRow, whereTable } from "../../components/where-table.ts";
import type { Html } from "../../html.ts";

const rows: readonly WhereRow[] = [
  {
    what: t`Reading, practice, quiz, dry run, and the record of them`,
    secure: t`yes`,
    http: t`yes`,
    disk: t`yes, where the browser lets pages from one folder share what they keep; if the log stays empty, it does not`,
  },
  {
    what: t`Saving the record as a file, adding a file to it, printing it`,
    secure: t`yes`,
    http: t`yes`,
    disk: t`yes`,
  },
  { what: t`Checking a mentor’s signature`, secure: t`yes`, http: t`yes`, disk: t`yes` },
  {
    what: t`Asking the browser not to clear the record away`,
    secure: t`yes`,
    http: t`no: save the file often`,
    disk: t`some browsers`,
  },
  {
    what: t`Taking your key along, or taking it up, under a passphrase`,
    secure: t`yes`,
    http: t`no: browsers give the cipher to secure addresses only`,
    disk: t`yes`,
  },
];

export const whatWorksWhere = (): Html => whereTable(rows);
