/** Numbers as bytes, and sums that tell whether they were changed. */

/** LEB128: seven bits a byte, the lowest first. `value` is a whole number from 0 to 2⁵³ − 1. */
export function writeNumber(bytes: number[], value: number): void {
  let rest = value;
  for (; rest >= 0x80; rest = Math.floor(rest / 0x80)) bytes.push((rest % 0x80) | 0x80);
  bytes.push(rest);
}

/** Reads what was written, in order. `ok` is false once something was not there or could not be so written. */
export class Reader {
  readonly #bytes: readonly number[];
  #at = 0;
  ok = true;

  constructor(bytes: readonly number[]) {
    this.#bytes = bytes;
  }

  get isAtEnd(): boolean {
    return this.#at === this.#bytes.length;
  }

  byte(): number {
    const byte = this.#bytes[this.#at++];
    if (byte === undefined) this.ok = false;
    return byte ?? 0;
  }

  number(): number {
    let value = 0;
    for (let scale = 1; this.ok; scale *= 0x80) {
      const byte = this.byte();
      value += (byte & 0x7f) * scale;
      if (!Number.isSafeInteger(value)) this.ok = false;
      if (byte < 0x80) return value;
    }
    return 0;
  }

  /** As many truths as are asked for, eight a byte. */
  truths(count: number): boolean[] {
    const bytes = Array.from({ length: Math.ceil(count / 8) }, () => this.byte());
    return Array.from({ length: count }, (_, i) => ((bytes[i >> 3]! >> (i & 7)) & 1) === 1);
  }
}

export function writeTruths(bytes: number[], truths: readonly boolean[]): void {
  for (let i = 0; i < truths.length; i += 8)
    bytes.push(truths.slice(i, i + 8).reduce((sum, each, bit) => sum | (Number(each) << bit), 0));
}

/** FNV-1a, 32 bits: a change of one byte always changes it. Source: G. Fowler, L. C. Noll, K.-P. Vo, the FNV hash. */
export function sumOf(bytes: readonly number[]): number {
  let sum = 0x811c9dc5;
  for (const byte of bytes) sum = Math.imul(sum ^ byte, 0x01000193) >>> 0;
  return sum;
}

/** The bytes of UTF-8. */
export const bytesOf = (text: string): number[] => [...new TextEncoder().encode(text)];
