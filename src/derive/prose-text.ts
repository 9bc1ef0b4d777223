/** What prose says, as plain text. */
import type { ProseToken } from "../model/source.ts";

/** The text of every paragraph, list item and cell. */
export const textsOf = (prose: readonly ProseToken[]): string[] =>
  prose.filter(({ type }) => type === "inline").map(plain);

/** The text of every cell of a table. */
export const cellsOf = (prose: readonly ProseToken[]): string[] =>
  prose.filter((_, index) => /^t[dh]_open$/.test(prose[index - 1]?.type ?? "")).map(plain);

const plain = ({ children }: ProseToken): string =>
  (children ?? []).map(({ type, content }) => (type === "softbreak" ? " " : content)).join("");
