/** What works where on the pages on which a mentor works. */
import { t } from "../../../src/engine/words.ts";
import type { WhereRow } from "../../components/where-table.ts";

export const deskWhere: readonly WhereRow[] = [
  {
    what: t`Opening files, having them marked again, the evening sheet`,
    secure: t`yes`,
    http: t`yes`,
    disk: t`yes`,
  },
  {
    what: t`Keeping files and notes over a reload`,
    secure: t`yes`,
    http: t`yes`,
    disk: t`yes, where the browser lets pages from a disk keep things`,
  },
  {
    what: t`Making a key that stays in the browser`,
    secure: t`yes, where it has Ed25519 (browsers of 2025 and later)`,
    http: t`no: browsers keep their cryptography from such addresses`,
    disk: t`yes, where it has Ed25519; all pages opened from disk may share it`,
  },
  { what: t`A key in a locked file`, secure: t`yes`, http: t`no, for the same reason`, disk: t`yes` },
  {
    what: t`Signing`,
    secure: t`yes; best at an address that this site has to itself, since every page of the address can use the key`,
    http: t`no: note it on the evening sheet, save the notes, and sign at another address`,
    disk: t`yes`,
  },
];
