/** The tray, drawn as on the operation sheet. */

import type { Entry, StateEntry, TrayAccount } from "../../engine/procedure/tray-account.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";

/** `caption` says when it is so. */
export function trayView(account: TrayAccount, caption: string): HTMLElement {
  const slack = account.slack.length === 0 ? [] : [section(t`Slack, on the machine`, account.slack)];
  return element(
    "figure",
    { class: "tray" },
    element("figcaption", {}, caption),
    element(
      "dl",
      {},
      ...account.compartments.map(({ place, entries }) => compartment(place, entries)),
      total(account),
      ...slack,
      ...account.states.map(state),
    ),
  );
}

/** Where its one entry says more exactly where it is, the compartment says it. */
function compartment(place: string, entries: readonly Entry[]): HTMLElement {
  const [only, ...others] = entries;
  if (only?.detail === undefined || others.length > 0) return section(place, entries);
  return section(`${place}, ${only.detail}`, [{ ...only, detail: undefined }]);
}

function section(name: string, entries: readonly Entry[]): HTMLElement {
  const isChanged = entries.some(({ change }) => change !== 0);
  const lines = entries.map((entry) => line(entry, isChanged));
  return element("div", { class: isChanged ? "changed" : undefined }, element("dt", {}, name), ...lines);
}

function total({ total: count }: TrayAccount): HTMLElement {
  const words = count === 0 ? t` Empty: everything is on` : t` in all`;
  const value = element("dd", {}, element("b", {}, String(count)), words);
  return element("div", { class: "tray-total" }, element("dt", {}, t`Total`), value);
}

function line({ name, detail, count, change, numbered }: Entry, isTold: boolean): HTMLElement {
  const notes = [detail, numbered === undefined ? undefined : t`numbered 1 to ${numbered}`].filter(
    (note) => isTold && note !== undefined,
  );
  const words =
    notes.length === 0 ? name : element("span", {}, `${name} `, element("small", {}, notes.join("; ")));
  const mark = change === 0 ? [] : [" ", element("i", {}, `${change > 0 ? "+" : "−"}${Math.abs(change)}`)];
  const kind = change === 0 ? undefined : change > 0 ? t`on` : "back";
  return element("dd", { class: kind }, element("b", {}, String(count)), " ", words, ...mark);
}

function state({ name, value, was }: StateEntry): HTMLElement {
  const before = was === undefined ? [] : [" ", element("i", {}, t`was ${was}`)];
  const says = element("dd", { class: was === undefined ? undefined : t`on` }, value, ...before);
  return element("div", { class: "tray-state" }, element("dt", {}, name), says);
}
