/** The bits of a list of withdrawals, by Bitstring Status List 1.0: the first is the highest of the first byte. */

/** Bits of a list: the least that the standard allows (section 2.2), so that one list hides whom it is about. */
export const listLength = 131_072;

/** The list with these places set. Throws on one that it does not have. O(places). */
export function bitsOf(places: Iterable<number>): Uint8Array {
  const bits = new Uint8Array(listLength / 8);
  for (const place of places) {
    if (!Number.isInteger(place) || place < 0 || place >= listLength)
      throw new RangeError(`${place} is no place on the list; expected 0 to ${listLength - 1}`);
    bits[place >> 3]! |= 0x80 >> (place & 7);
  }
  return bits;
}

/** True too of a place that the list does not have: what can't be looked up is not good. */
export function isBitSet(bits: Uint8Array, place: number): boolean {
  if (!Number.isInteger(place) || place < 0 || place >= bits.length * 8) return true;
  return (bits[Math.floor(place / 8)]! & (0x80 >> (place % 8))) !== 0;
}

/** The places that are set, from the first. O(bits). */
export function placesIn(bits: Uint8Array): readonly number[] {
  return [...bits].flatMap((byte, at) =>
    byte === 0
      ? []
      : [0, 1, 2, 3, 4, 5, 6, 7].filter((bit) => byte & (0x80 >> bit)).map((bit) => at * 8 + bit),
  );
}
