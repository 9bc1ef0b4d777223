import { t } from "../../engine/words.ts";

/** Whether the browser will keep what it holds. */

/** Undefined where the browser does not say. */
export async function isPromised(): Promise<boolean | undefined> {
  try {
    return await navigator.storage?.persisted?.();
  } catch {
    return undefined;
  }
}

/** `unsaved`: how many events are in no file yet. */
export function stayWords(promised: boolean | undefined, unsaved: number, total: number): string {
  const stays =
    promised === true
      ? t`The browser has promised to keep the record until you erase it.`
      : t`The browser may clear the record away when it needs room, some after a week without a visit.`;
  return `${stays} ${fileWords(unsaved, total)}`;
}

function fileWords(unsaved: number, total: number): string {
  if (total === 0) return t`There is nothing in it yet.`;
  if (unsaved === 0) return t`All of it is in a file that you have saved.`;
  return unsaved === 1 ? t`One entry is in no file yet.` : t`${unsaved} entries are in no file yet.`;
}
