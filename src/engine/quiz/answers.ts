import { t } from "../words.ts";
import { bad, good, type Result } from "../workshop/result.ts";
import { jsonKind } from "./kind.ts";
import type { Answers } from "./score.ts";

/** Reads answers from JSON: one object, the id of each question to its answer. The answers themselves stay unread. */
export function readAnswers(json: unknown): Result<Answers, "not-answers"> {
  if (typeof json === "object" && json !== null && !Array.isArray(json)) {
    return good(new Map(Object.entries(json)));
  }
  return bad("not-answers", jsonKind(json), t`an object from question ids to answers`);
}
