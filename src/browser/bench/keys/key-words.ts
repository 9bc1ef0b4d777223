/** Keys and what they do, in words. */
import { t } from "../../../engine/words.ts";
import type { TaughtRole } from "./deeds.ts";

export const roleWords: Readonly<Record<TaughtRole, string>> = {
  on: t`On: to the end of what is shown, then to the next step`,
  back: t`Back: to the top, then to the step before`,
  tick: t`Tick the step off`,
};

export const pageKeyWords = [
  t`The side arrows turn at once.`,
  t`Page Down, Enter and the space bar go to the end of what is shown first, then on.`,
  t`Page Up, and the space bar with Shift, go back.`,
  t`A foot switch sends such a key. Where yours sends another, teach it here.`,
];

const names: ReadonlyMap<string, string> = new Map([
  [" ", t`Space bar`],
  ["Enter", t`Enter`],
  ["PageDown", t`Page Down`],
  ["PageUp", t`Page Up`],
  ["ArrowUp", t`Arrow up`],
  ["ArrowDown", t`Arrow down`],
  ["ArrowLeft", t`Arrow left`],
  ["ArrowRight", t`Arrow right`],
]);

/** As it stands on a keyboard; letters as capitals. */
export const keyName = (key: string): string =>
  names.get(key) ?? (key.length === 1 ? key.toUpperCase() : key);
