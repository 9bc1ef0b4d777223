/** How large a figure is shown: in steps, so that keys and buttons do the same. */

/** 1 is the whole figure in the window. */
export const scales: readonly number[] = [1, 1.5, 2, 3, 4, 6, 8];

/** The next step up or down; the same where there is none. */
export function nextScale(now: number, by: 1 | -1): number {
  const at = scales.indexOf(now) + by;
  return scales[Math.min(Math.max(at, 0), scales.length - 1)]!;
}

/** Where to scroll to, so that what lies in the middle stays there. Lengths in pixels. */
export const keptMiddle = (scroll: number, window: number, before: number, after: number): number =>
  ((scroll + window / 2) * after) / before - window / 2;

/** The size at which the whole of a thing of these proportions is seen in a window. */
export function wholeWidth(proportion: number, width: number, height: number): number {
  return Math.max(1, Math.min(width, height * proportion));
}
