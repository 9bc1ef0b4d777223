/** The mentors' lists of withdrawals, as the site and the record have them. */
import type { Json } from "../../engine/competency/json.ts";
import { portable } from "../../engine/competency/libraries.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import { readStatusList, type StatusList } from "../../engine/competency/status-list.ts";
import type { ProgrammeData } from "../../model/record-data.ts";
import { gunzip } from "./gunzip.ts";

/** Those that can be read; without one, what its mentor signed can't be confirmed. */
export async function statusLists(
  { withdrawals }: ProgrammeData,
  { events }: Pick<CompetencyRecord, "events">,
): Promise<StatusList[]> {
  const kept = events.flatMap((event) => (event.kind === "withdrawal" ? [event.list] : []));
  const lists: Json[] = [...withdrawals.map(([, list]) => list), ...kept];
  const read = await Promise.all(lists.map((list) => readStatusList(list, { primitives: portable, gunzip })));
  return read.flatMap((each) => (each.ok ? [each.list] : []));
}
