/** When one may sit again. The page keeps to the programme's rule; whoever wants to get round it can, in their own browser. */

/** Milliseconds since 1970 from which the next sitting may begin; undefined where it may at once. */
export function sitAgainAt(
  ended: number | undefined,
  passed: boolean,
  minutes: number,
  now: number,
): number | undefined {
  if (passed || minutes === 0 || ended === undefined) return undefined;
  const at = ended + minutes * 60_000;
  return at > now ? at : undefined;
}

/** "Thursday, 26 November at 14:30", in the language of the page and the time of the device. */
export function whenWords(at: number, language: string): string {
  return new Date(at).toLocaleString(language, {
    weekday: "long",
    day: "numeric",
    month: "long",
    hour: "2-digit",
    minute: "2-digit",
  });
}
