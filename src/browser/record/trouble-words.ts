import { t } from "../../engine/words.ts";

/** Why something is kept no longer than the page is open, in words, and what to do. */

/** The browser keeps nothing; it has no room, or has refused once; another window has taken up another record. */
export type Trouble = "denied" | "full" | "replaced";

export const troubleWords: Readonly<Record<Trouble, string>> = {
  denied: t`This browser does not let the page keep anything. What you do here is gone when you leave the page: save it as a file first, and show that to your mentor.`,
  full: t`There is no room left to keep this in the browser, or it has refused. It stays until you leave the page: save your record as a file now, then make room and add the file again.`,
  replaced: t`Your record was erased, or another one taken up, in another window. What you do here is not added to it. Save it as a file if you want it, then load the page anew.`,
};
