/** The place in an address, behind the `#`, where no server sees it. */
import type { Place } from "../place.ts";
import { packPlace, type Sheet } from "./code.ts";

/** No element of a page has an id that begins so. */
const mark = "s_place=";

/** `address` is that of the page; what it has behind `#` is replaced. */
export function linkOf(address: string, place: Place, sheet: Sheet, now: number): string {
  return `${address.split("#", 1)[0]}#${mark}${packPlace(place, sheet, now)}`;
}

/** The packed place in what stands behind `#`; undefined where there is none. */
export const packedIn = (hash: string): string | undefined =>
  hash.startsWith(mark) ? hash.slice(mark.length) : undefined;
