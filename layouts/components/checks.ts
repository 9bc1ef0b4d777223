/** Checks with their limits, as found or as left, with room to write what was found. */
import { t } from "../../src/engine/words.ts";
import type { LimitCheck } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { ruledTable } from "./ruled-table.ts";

export function checks(list: readonly LimitCheck[], title: string, found: string): Html | undefined {
  if (list.length === 0) return undefined;
  return html`<h3>${title}</h3>
${ruledTable<LimitCheck>(
  "checks",
  [
    { name: t`Check`, kind: "head", value: ({ check }) => check },
    { name: t`Limit`, value: ({ limit }) => limit },
    { name: found, kind: "found", value: () => undefined },
  ],
  list,
)}`;
}
