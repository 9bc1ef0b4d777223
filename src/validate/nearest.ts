/**
 * The known word nearest to one that is not known, by edit distance (Levenshtein); undefined where none is near. At most a
 * third of the letters may differ. O(known · length²).
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  let best: string | undefined;
  let least = Math.floor(Math.max(word.length, 3) / 3) + 1;
  for (const candidate of known) {
    const distance = editDistance(word.slice(0, 80), candidate);
    if (distance < least) {
      best = candidate;
      least = distance;
    }
  }
  return best;
}

/** "; the nearest known is x", or nothing. */
export function nearestWords(word: string, known: Iterable<string>): string {
  const found = nearest(word, known);
  return found === undefined ? "" : `; the nearest known is "${found}"`;
}

function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const replaced = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}
