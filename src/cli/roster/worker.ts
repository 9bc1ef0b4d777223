/** A thread that reads record files: it is sent their names, and sends back rows. */
import { parentPort, workerData } from "node:worker_threads";
import type { Day } from "../record/dates.ts";
import { programmeFrom, type RecordSource } from "../record/programme.ts";
import { RowReader } from "./rows.ts";

export interface RosterSetting {
  readonly source: RecordSource;
  readonly day: Day;
}

const { source, day } = workerData as RosterSetting;
const reader = programmeFrom(source).then((programme) => new RowReader(programme, day));

parentPort!.on("message", async (files: readonly string[]) => {
  parentPort!.postMessage(await (await reader).read(files));
});
