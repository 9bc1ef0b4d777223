/** Lets rows glide from where they were to where they are; at once where motion is not wanted. */
export function glide(rows: readonly HTMLElement[], change: () => void): void {
  const before = rows.map((row) => row.getBoundingClientRect().top);
  change();
  if (matchMedia("(prefers-reduced-motion: reduce)").matches) return;
  for (const [i, row] of rows.entries()) {
    const way = before[i]! - row.getBoundingClientRect().top;
    if (way === 0) continue;
    const from = { transform: `translateY(${way}px)` };
    row.animate([from, { transform: "none" }], { duration: 160, easing: "ease-out" });
  }
}
