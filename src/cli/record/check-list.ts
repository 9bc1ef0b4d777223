/** A list of withdrawals by itself: signed by a mentor of the programme, theirs, and in date. */
import { endOfDay } from "../../engine/competency/calendar.ts";
import { statusListId } from "../../engine/competency/credential.ts";
import { textAt } from "../../engine/competency/fields.ts";
import { readInstant } from "../../engine/competency/instant.ts";
import type { Json } from "../../engine/competency/json.ts";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import { isOver } from "../../engine/competency/situation.ts";
import { readStatusList } from "../../engine/competency/status-list.ts";
import { gunzip } from "../gzip.ts";
import { nodePrimitives } from "../primitives.ts";

export const isList = (json: Json): boolean =>
  textAt(json, "credentialSubject", "type") === "BitstringStatusList";

/** `on`: YYYY-MM-DD, the day to the end of which it must hold. */
export async function checkList(
  json: Json,
  { mentors, identifier, timeZone }: RecordRules,
  on: string,
): Promise<RecordProblem[]> {
  const read = await readStatusList(json, { primitives: nodePrimitives, gunzip });
  if (!read.ok) return [read.problem];
  const { issuer, id, validUntil } = read.list;
  const faults = [
    ...(mentors.some(({ key }) => key === issuer)
      ? []
      : [`it is signed by ${issuer}, who is no mentor of this programme`]),
    ...(id === statusListId(identifier, issuer) ? [] : [`it is the list ${id}, not that of this programme`]),
    ...(isOver(readInstant(validUntil)!, endOfDay(on, timeZone))
      ? [`it holds until ${validUntil}, and not to the end of ${on}`]
      : []),
  ];
  return faults.map((words) => ({
    code: "status-list",
    message: `The list of withdrawals can't be relied on: ${words}. The mentor makes a new one with record withdraw.`,
  }));
}
