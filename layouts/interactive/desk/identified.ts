import { type Address, linkToFile } from "../../../src/model/address.ts";
import type { RecordPageData } from "../../../src/model/page-data.ts";
import type { Programme } from "../../../src/model/programme.ts";

/** What a page of the record hands to its script. Throws a RangeError for a programme that keeps no records. */
export function recordPageData({ identifier }: Programme, from: Address): RecordPageData {
  if (identifier === undefined) throw new RangeError("the programme has no identifier");
  return { programme: identifier, root: linkToFile(from, "") };
}
