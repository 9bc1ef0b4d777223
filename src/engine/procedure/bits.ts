/**
 * Rows of bits: relations among indices 0..n-1, one bit a pair, so that joining two rows costs n/32 operations.
 * A single set is a relation of one row.
 */

export interface BitRows {
  readonly rows: number;
  /** 32-bit words a row. */
  readonly words: number;
  readonly bits: Uint32Array;
}

/** An empty relation of `rows` rows over `columns` columns. */
export function bitRows(rows: number, columns: number): BitRows {
  const words = Math.ceil(columns / 32);
  return { rows, words, bits: new Uint32Array(rows * words) };
}

export function hasBit(relation: BitRows, row: number, column: number): boolean {
  return ((relation.bits[row * relation.words + (column >>> 5)]! >>> (column & 31)) & 1) === 1;
}

export function setBit(relation: BitRows, row: number, column: number): void {
  relation.bits[row * relation.words + (column >>> 5)]! |= 1 << (column & 31);
}

export function clearBit(relation: BitRows, row: number, column: number): void {
  relation.bits[row * relation.words + (column >>> 5)]! &= ~(1 << (column & 31));
}

/** Adds row `source` of `from` to row `row` of `into`; both have as many columns. */
export function addRow(into: BitRows, row: number, from: BitRows, source: number): void {
  const target = row * into.words;
  const origin = source * from.words;
  for (let word = 0; word < into.words; word++) into.bits[target + word]! |= from.bits[origin + word]!;
}

/** The least column set in both rows, or -1. O(columns / 32). */
export function firstCommon(a: BitRows, rowA: number, b: BitRows, rowB: number): number {
  const startA = rowA * a.words;
  const startB = rowB * b.words;
  for (let word = 0; word < a.words; word++) {
    const common = a.bits[startA + word]! & b.bits[startB + word]!;
    if (common !== 0) return word * 32 + 31 - Math.clz32(common & -common);
  }
  return -1;
}

/** The columns set in both rows, ascending. O(columns / 32 + result). */
export function commonMembers(a: BitRows, rowA: number, b: BitRows, rowB: number): number[] {
  const found: number[] = [];
  for (let word = 0; word < a.words; word++) {
    pushBits(found, word, a.bits[rowA * a.words + word]! & b.bits[rowB * b.words + word]!);
  }
  return found;
}

/** Moves the columns of a row that are in `set` from there to the end of `taken`, ascending. O(columns / 32 + result). */
export function takeMembers(relation: BitRows, row: number, set: BitRows, taken: number[]): void {
  for (let word = 0; word < relation.words; word++) {
    const common = relation.bits[row * relation.words + word]! & set.bits[word]!;
    set.bits[word]! ^= common;
    pushBits(taken, word, common);
  }
}

function pushBits(found: number[], word: number, bits: number): void {
  for (let left = bits; left !== 0; left &= left - 1) found.push(word * 32 + 31 - Math.clz32(left & -left));
}

/** The columns set in a row, ascending. */
export function members(relation: BitRows, row: number): number[] {
  return commonMembers(relation, row, relation, row);
}

/** One row with the given columns set. */
export function setOf(columns: number, chosen: readonly number[]): BitRows {
  const set = bitRows(1, columns);
  for (const column of chosen) setBit(set, 0, column);
  return set;
}

/** One row with every column set. */
export function fullSet(columns: number): BitRows {
  const set = bitRows(1, columns);
  set.bits.fill(-1);
  if (columns % 32 !== 0) set.bits[set.words - 1] = 2 ** (columns % 32) - 1;
  return set;
}
