/** What works where on the pages on which a mentor works. */
import type { WhereRow } from "../../components/where-table.ts";

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
