/** What is done with records, sign-offs and releases on the command line. */
import { commandOf } from "./actions.ts";
import { check } from "./record/check.ts";
import { recall } from "./record/recall.ts";
import { release } from "./record/release.ts";
import { withdraw } from "./record/withdraw.ts";

export const record = commandOf(
  "record",
  "checks records and sign-offs, releases modules, withdraws what was signed, recalls revisions",
  [check, release, withdraw, recall],
);
