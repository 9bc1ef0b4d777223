/** What a band of the drawing, or of the list in words, is called. */
import { t } from "../../src/engine/words.ts";
import type { Module } from "../../src/model/module.ts";
import type { Band } from "./bands.ts";

/** Undefined for steps of no phase that stand alone. */
export function bandTitle(
  { phase, isContinued }: Band,
  bands: readonly Band[],
  { phases }: Module,
): string | undefined {
  if (phase === "" && bands.length === 1) return undefined;
  const title = phases.get(phase) ?? t`Other steps`;
  return isContinued ? t`${title}, continued` : title;
}
