/** Writes something into the record and says so. */
import type { Recorded } from "../../model/page-data.ts";
import { element } from "../page/element.ts";
import { keptLine } from "./kept-line.ts";
import type { Happened } from "./own-record.ts";
import { recorderHere } from "./recorder-global.ts";

/** Undefined where the page keeps no record. */
export function recordedLine(record: Recorded | undefined, happened: Happened): HTMLElement | undefined {
  const open = recorderHere();
  if (record === undefined || open === undefined) return undefined;
  const place = element("div");
  void open(record.programme).then((own) =>
    place.append(keptLine({ own, href: record.href, adding: own.add(happened) })),
  );
  return place;
}
