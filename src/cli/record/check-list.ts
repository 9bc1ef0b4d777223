/** A list of withdrawals by itself: signed by a mentor of the programme, theirs, and in date. */
import { statusListId } from "../../engine/competency/credential.ts";
import { textAt } from "../../engine/competency/fields.ts";
import { readInstant } from "../../engine/competency/instant.ts";
import type { Json } from "../../engine/competency/json.ts";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import { readStatusList } from "../../engine/competency/status-list.ts";
import { gunzip } from "../gzip.ts";
import { nodePrimitives } from "../primitives.ts";

export const isList = (json: Json): boolean =>
  textAt(json, "credentialSubject", "type") === "BitstringStatusList";

/** `now` in ms since 1970. */
export async function checkList(
  json: Json,
  { mentors, identifier }: RecordRules,
  now: number,
): Promise<RecordProblem[]> {
  const read = await readStatusList(json, { primitives: nodePrimitives, gunzip });
  if (!read.ok) return [read.problem];
  const { issuer, id, validUntil } = read.list;
  const faults = [
    ...(mentors.some(({ key }) => key === issuer)
      ? []
      : [`it is signed by ${issuer}, who is no mentor of this programme`]),
    ...(id === statusListId(identifier, issuer) ? [] : [`it is the list ${id}, not that of this programme`]),
    ...(readInstant(validUntil)! < now ? [`it ran out at ${validUntil}`] : []),
  ];
  return faults.map((words) => ({
    code: "status-list",
    message: `The list of withdrawals can't be relied on: ${words}. The mentor makes a new one with record withdraw.`,
  }));
}
