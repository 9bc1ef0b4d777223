/** Numbers that look random and follow from a seed, so that a draw can be drawn again anywhere. Not for secrets. */

/** Gives a whole number from 0 to 2^32 − 1 each time. */
export type Source = () => number;

/**
 * xoshiro128** 1.1, D. Blackman and S. Vigna, "Scrambled linear pseudorandom number generators", ACM Trans. Math. Softw.
 * 47 (2021); reference code in the public domain, prng.di.unimi.it. The state is four 32-bit words, not all 0.
 */
export function xoshiro128(state: readonly [number, number, number, number]): Source {
  let [a, b, c, d] = state;
  return () => {
    const result = Math.imul(rotate(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotate(d, 11);
    return result;
  };
}

/**
 * The source that a seed text stands for. Each word of the state begins with a number of its own and takes in the bytes
 * of the text (UTF-16 units, low byte first) one by one, mixed by `mix32` after each.
 */
export function sourceOf(seed: string): Source {
  const [a, b, c, d] = wordsOf(seed);
  return xoshiro128((a | b | c | d) === 0 ? [1, 0, 0, 0] : [a, b, c, d]);
}

/** Four words of 32 bits that follow from a text: texts that differ hardly ever give the same. Not against deceit. O(length). */
export const wordsOf = (text: string): readonly [number, number, number, number] => [
  wordOf(text, 1),
  wordOf(text, 2),
  wordOf(text, 3),
  wordOf(text, 4),
];

function wordOf(seed: string, start: number): number {
  let word = mix32(start);
  for (let unit = 0; unit < seed.length; unit++) {
    const code = seed.charCodeAt(unit);
    word = mix32(word ^ (code & 0xff));
    word = mix32(word ^ (code >>> 8));
  }
  return word;
}

/** The finalizer of MurmurHash3 for 32 bits (`fmix32`), A. Appleby, in the public domain. */
export function mix32(value: number): number {
  let mixed = value | 0;
  mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return (mixed ^ (mixed >>> 16)) >>> 0;
}

const words = 2 ** 32;

/** A whole number from 0 to count − 1, each equally likely: what would favour the small ones is drawn again. */
export function below(count: number, next: Source): number {
  const fair = words - (words % count);
  let drawn = next();
  while (drawn >= fair) drawn = next();
  return drawn % count;
}

function rotate(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}
