/** The tray beside a step: a ruled ledger of what is off the machine once the step is done. */

import type { Entry, StateEntry, TrayAccount } from "../../src/engine/procedure/tray-account.ts";
import { t } from "../../src/engine/words.ts";
import { attribute, type Html, html } from "../html.ts";

export interface TrayLook {
  /** It has what a folded one shows. */
  readonly folds?: boolean | undefined;
  /** Ids of things that a figure numbers: their lines bear them. */
  readonly named?: ReadonlySet<string> | undefined;
}

type Named = ReadonlySet<string>;

const noOnes: Named = new Set();

/** Draws an account; `number` is that of the step after which it holds. */
export function tray(account: TrayAccount, number: number, look: TrayLook = {}): Html {
  const { folds = false, named = noOnes } = look;
  return html`<figure class="tray">
<figcaption>On the tray after step ${number}</figcaption>
${folds ? html`<p class="tray-sum">${sumOf(account)}</p>\n` : undefined}<dl>
${account.compartments.map(({ place, entries }) => compartment(place, entries, named))}${totalOf(account)}${slackOf(account, folds, named)}${account.states.map(state)}</dl>
</figure>`;
}

/** "Nothing off; 4 slack". */
function sumOf({ total, slack }: TrayAccount): string {
  const loose = slack.reduce((sum, { count }) => sum + count, 0);
  return t`${total === 0 ? t`Nothing` : total} off${loose === 0 ? "" : t`; ${loose} slack`}`;
}

function slackOf({ slack }: TrayAccount, folds: boolean, named: Named): Html | undefined {
  if (slack.length === 0) return undefined;
  return section(t`Slack, on the machine`, slack, named, folds ? ["tray-slack"] : []);
}

/** Where its one entry says more exactly where it is, the compartment says it. */
function compartment(place: string, entries: readonly Entry[], named: Named): Html {
  const [only, ...others] = entries;
  if (only?.detail === undefined || others.length > 0) return section(place, entries, named);
  return section(`${place}, ${only.detail}`, [{ ...only, detail: undefined }], named);
}

/** Sections in which something changed are marked: on a small screen only they stand line by line. */
function section(name: string, entries: readonly Entry[], named: Named, kinds: readonly string[] = []): Html {
  const isChanged = entries.some(({ change }) => change !== 0);
  const classes = [...kinds, ...(isChanged ? ["changed"] : [])].join(" ");
  return html`<div${classes === "" ? undefined : html` class="${classes}"`}><dt>${name}</dt>${entries.map((entry) => line(entry, isChanged, named))}</div>\n`;
}

function totalOf({ total }: TrayAccount): Html {
  const words = total === 0 ? t`Empty: everything is on` : t`in all`;
  return html`<div class="tray-total"><dt>Total</dt><dd><b>${total}</b> ${words}</dd></div>\n`;
}

/** What is to be known of a thing beyond its place is told where the hand is at that place: where something changed. */
function line({ id, name, detail, count, change, numbered }: Entry, isTold: boolean, named: Named): Html {
  const notes = [detail, numbered === undefined ? undefined : t`numbered 1 to ${numbered}`].filter(
    (note) => isTold && note !== undefined,
  );
  const words = notes.length === 0 ? name : html`<span>${name} <small>${notes.join("; ")}</small></span>`;
  return html`<dd${changeClass(change)}${attribute("data-of", named.has(id) && id)}><b>${count}</b> ${words}${changeMark(change)}</dd>`;
}

const changeClass = (change: number) =>
  change === 0 ? undefined : change > 0 ? html` class="on"` : html` class="back"`;

/** A true minus sign, which stands level with the plus. */
const changeMark = (change: number) =>
  change === 0 ? undefined : html` <i>${change > 0 ? "+" : "−"}${Math.abs(change)}</i>`;

function state({ name, value, was }: StateEntry): Html {
  return html`<div class="tray-state"><dt>${name}</dt><dd${was === undefined ? undefined : html` class="on"`}>${value}${was === undefined ? undefined : html` <i>was ${was}</i>`}</dd></div>\n`;
}
