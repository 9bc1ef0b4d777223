/** When a photograph was taken, by what its camera wrote into it. */
import readExif from "exif-reader";

/** Exif 2.32 (CIPA DC-008-2019), 4.6.5 F: DateTimeOriginal, with SubSecTimeOriginal and OffsetTimeOriginal where they are there. */
export interface Taken {
  /** By the camera's clock, as milliseconds since 1970 would count if that clock showed UTC. */
  readonly clock: number;
  /** What the clock is ahead of UTC, in minutes; undefined where the camera did not write it. */
  readonly ahead: number | undefined;
}

/** `exif` is the raw block; undefined where there is no block, none that can be read, or no time in it. O(length of the block). */
export function takenIn(exif: Buffer | undefined): Taken | undefined {
  if (exif === undefined) return undefined;
  const { DateTimeOriginal, SubSecTimeOriginal, OffsetTimeOriginal } = photoTags(exif);
  const seconds = DateTimeOriginal instanceof Date ? DateTimeOriginal.getTime() : Number.NaN;
  // A clock that was never set writes zeros, which come out as a day long before there were cameras that write.
  if (!(seconds >= 0)) return undefined;
  return { clock: seconds + millisecondsIn(SubSecTimeOriginal), ahead: minutesAhead(OffsetTimeOriginal) };
}

function photoTags(exif: Buffer): Readonly<Record<string, unknown>> {
  try {
    return readExif(exif).Photo ?? {};
  } catch {
    return {};
  }
}

/** The digits behind the decimal point of a second: "5" is half a second. */
function millisecondsIn(digits: unknown): number {
  const written = typeof digits === "string" ? digits.trim() : "";
  return /^\d+$/.test(written) ? Number(`0.${written}`) * 1000 : 0;
}

/** "+01:00" is 60. */
function minutesAhead(offset: unknown): number | undefined {
  const found = typeof offset === "string" ? /^([+-])(\d\d):(\d\d)$/.exec(offset.trim()) : null;
  if (found === null) return undefined;
  const minutes = Number(found[2]) * 60 + Number(found[3]);
  return found[1] === "-" ? -minutes : minutes;
}
