/** Down-sets as rows of bits packed by chain, and tables of those of one size. */

/**
 * Where the rows of a table keep the height of a chain, that is how many of its elements a down-set holds. Heights on
 * all chains of a decomposition say the down-set wholly; packed, 30 steps need two words.
 */
interface Field {
  readonly word: number;
  readonly shift: number;
  readonly mask: number;
}

export interface Packing {
  readonly words: number;
  readonly fields: readonly Field[];
}

/** A field for each chain length below 2³¹, none across two words. */
export function packingOf(lengths: readonly number[]): Packing {
  let word = 0;
  let used = 0;
  const fields = lengths.map((length) => {
    const bits = 32 - Math.clz32(length);
    if (used + bits > 32) {
      word++;
      used = 0;
    }
    const shift = used;
    used += bits;
    return { word, shift, mask: 2 ** bits - 1 };
  });
  return { words: word + 1, fields };
}

/** Down-sets of one size, each with the number of ways to reach it: a hash table with open addressing. */
export class DownSetLayer {
  size = 0;
  readonly ways: bigint[] = [];
  #rows: Uint32Array;
  #slots: Int32Array;

  constructor(readonly packing: Packing) {
    this.#rows = new Uint32Array(64 * packing.words);
    this.#slots = new Int32Array(128).fill(-1);
  }

  /** Writes the heights of the down-set at `index`, chain by chain. */
  readHeights(index: number, heights: Int32Array): void {
    const { words, fields } = this.packing;
    for (let chain = 0; chain < fields.length; chain++) {
      const { word, shift, mask } = fields[chain]!;
      heights[chain] = (this.#rows[index * words + word]! >>> shift) & mask;
    }
  }

  /** Adds `ways` to the empty down-set. */
  addEmpty(ways: bigint): void {
    this.#addLast(ways);
  }

  /** Adds `ways` to the down-set that is the one at `index` of `from` with one more element of `chain`. */
  add(from: DownSetLayer, index: number, chain: number, ways: bigint): void {
    const { words, fields } = this.packing;
    const start = this.size * words;
    for (let word = 0; word < words; word++) this.#rows[start + word] = from.#rows[index * words + word]!;
    const { word, shift } = fields[chain]!;
    this.#rows[start + word]! += 2 ** shift;
    this.#addLast(ways);
  }

  /** Takes in the row behind the last, or, where it is there already, adds to that one. */
  #addLast(ways: bigint): void {
    const slot = this.#slotOf(this.size);
    const found = this.#slots[slot]!;
    if (found >= 0) {
      this.ways[found]! += ways;
      return;
    }
    this.#slots[slot] = this.size++;
    this.ways.push(ways);
    this.#makeRoom();
  }

  #slotOf(index: number): number {
    const mask = this.#slots.length - 1;
    let slot = this.#hash(index) & mask;
    while (this.#slots[slot]! >= 0 && !this.#same(this.#slots[slot]!, index)) slot = (slot + 1) & mask;
    return slot;
  }

  /** Multiplicative hashing: 2³² over the golden ratio (Knuth, The Art of Computer Programming 3, 6.4), high bits folded in. */
  #hash(index: number): number {
    const { words } = this.packing;
    let hash = 0;
    for (let word = 0; word < words; word++) {
      hash = Math.imul(hash ^ this.#rows[index * words + word]!, 0x9e3779b1);
      hash ^= hash >>> 15;
    }
    return hash;
  }

  #same(a: number, b: number): boolean {
    const { words } = this.packing;
    for (let word = 0; word < words; word++) {
      if (this.#rows[a * words + word] !== this.#rows[b * words + word]) return false;
    }
    return true;
  }

  /** Keeps one row free behind the last, and the slots at most half full. */
  #makeRoom(): void {
    const needed = (this.size + 1) * this.packing.words;
    if (needed > this.#rows.length) {
      const rows = new Uint32Array(this.#rows.length * 2);
      rows.set(this.#rows);
      this.#rows = rows;
    }
    if ((this.size + 1) * 2 <= this.#slots.length) return;
    this.#slots = new Int32Array(this.#slots.length * 2).fill(-1);
    for (let index = 0; index < this.size; index++) this.#slots[this.#slotOf(index)] = index;
  }
}
