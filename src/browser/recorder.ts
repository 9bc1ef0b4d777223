/** The recorder: what writes to a person's record. Pages that may need it load it beside their own script. */
import { openOwnRecord } from "./record/own-record.ts";
import type { RecorderGlobal } from "./record/recorder-global.ts";

(globalThis as RecorderGlobal).benchwrightRecorder = openOwnRecord;
