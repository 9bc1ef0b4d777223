/** The true size of a fastener, as far as what is written of it says. */
import { parseDesignation } from "./designation.ts";
import { convert, parseQuantity } from "./quantity.ts";
import { dimensionsOf } from "./threads/dimensions.ts";

/** Lengths in mm, nominal: no tolerance is meant. */
export interface TrueSize {
  /** Undefined where the thread is not written, or in no table. */
  readonly thread: ThreadSizes | undefined;
  /** As written: under the head, of one without a head or countersunk over all. Undefined where it is not known. */
  readonly lengthMm: number | undefined;
}

export interface ThreadSizes {
  readonly diameterMm: number;
  /** Of the screw where the standard gives it, otherwise of the nut. */
  readonly rootMm: number;
  readonly pitchMm: number;
}

/** `thread` and `length` as people write them: "4 BA", "1/2 in". */
export function trueSize(thread: string | undefined, length: string | undefined): TrueSize {
  return {
    thread: thread === undefined ? undefined : sizesOfThread(thread),
    lengthMm: length === undefined ? undefined : millimetres(length),
  };
}

function sizesOfThread(text: string): ThreadSizes | undefined {
  const read = parseDesignation(text);
  if (!read.ok) return undefined;
  const { diameterMm, pitchMm } = read.value;
  const { rootDiameterMm, minorDiameterMm } = dimensionsOf(read.value);
  return { diameterMm, pitchMm, rootMm: rootDiameterMm ?? minorDiameterMm };
}

/** Undefined for what is no length; a bare number has no unit and is none. */
function millimetres(text: string): number | undefined {
  const read = parseQuantity(text, "length");
  const inMm = read.ok ? convert(read.value, "mm") : read;
  return inMm.ok && inMm.value.amount > 0 ? inMm.value.amount : undefined;
}
