import { t } from "../../words.ts";
import { problem } from "../problem.ts";
import type { Check } from "./check.ts";
import { called } from "./words.ts";

/** Whether it is about the person in whose record it lies. */
export const subject: Check = (signed, _situation, keys) =>
  keys === undefined || keys.has(signed.statement.subject)
    ? undefined
    : problem(
        "subject-mismatch",
        t`${called(signed)} is about the key ${signed.statement.subject}, which is not that of this record's owner nor one that a mentor has signed over to it. It counts for nobody here. If the key is an old one of theirs, ask a mentor to sign "old key → new key".`,
      );
