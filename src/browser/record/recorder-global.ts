/** What `recorder.js` leaves for the other scripts of a page, so that none of them carries it. */
import type { openOwnRecord } from "./own-record.ts";

export type RecorderGlobal = { benchwrightRecorder?: typeof openOwnRecord };

/** Undefined where the page keeps no record, or its recorder has not come: the page works without. */
export const recorderHere = (): typeof openOwnRecord | undefined =>
  (globalThis as RecorderGlobal).benchwrightRecorder;
