import { valueWords } from "../../src/engine/value-words.ts";
import { t } from "../../src/engine/words.ts";
import type { FastenerKind } from "../../src/model/module.ts";

/** What kind of fastener it is, in words. */
export const kindWords = (kind: FastenerKind): string =>
  kind === "makers own" ? t`maker’s own thread` : valueWords(kind);
