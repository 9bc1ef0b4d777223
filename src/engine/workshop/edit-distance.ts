/** Levenshtein's distance by rows: R. A. Wagner, M. J. Fischer, J. ACM 21 (1974). O(n · m). */
export function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(changed, row[j]! + 1, next[j - 1]! + 1));
    }
    row = next;
  }
  return row[b.length]!;
}

/** The name that needs the fewest letters changed, or none where more than half would. O(names · n²). */
export function nearestName(names: readonly string[], text: string): string | undefined {
  let best: { name: string; changes: number } | undefined;
  for (const name of names) {
    const changes = editDistance(text, name);
    if (best === undefined || changes < best.changes) best = { name, changes };
  }
  return best && best.changes * 2 <= text.length ? best.name : undefined;
}
