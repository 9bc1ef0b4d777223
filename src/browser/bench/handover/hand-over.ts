/** Handing the place over to another device: a link and a code of it. */
import { t } from "../../../engine/words.ts";
import { qrCode } from "../../evening/qr.ts";
import { button, element } from "../../page/element.ts";
import type { Card } from "../cards.ts";
import { openDialog } from "../dialog.ts";
import type { Place } from "../place.ts";
import type { Sheet } from "./code.ts";
import { tookWords } from "./handover-words.ts";
import { linkOf } from "./link.ts";

export interface HandOver {
  readonly cards: readonly Card[];
  readonly sheet: Sheet;
  readonly place: () => Place;
  readonly clock: () => number;
}

export function handOver({ cards, sheet, place, clock }: HandOver): void {
  const now = clock();
  const handed = { place: place(), takenAt: now };
  const link = linkOf(location.href, handed.place, sheet, now);
  const field = element("textarea", { readonly: true, rows: "3", id: "s_bench-link" });
  field.value = link;
  field.addEventListener("focus", () => field.select());
  const close = button(t`Close`, () => dialog.close(), { class: "is-main" });
  const dialog = openDialog(
    t`Hand over the place`,
    () => {},
    element("p", {}, tookWords(cards, handed, now)),
    codeOf(link),
    element(
      "p",
      {},
      t`Point the camera of the other device at the code, or send the link. What is ticked off here stays here too; what is done from now on does not follow.`,
    ),
    element("p", { class: "warning" }, placeWarning()),
    element("label", { for: field.id }, t`Link`),
    field,
    element("div", { class: "bench-buttons" }, copyButton(field), close),
  );
}

/** A camera needs the code on white ground, with its edge. */
function codeOf(link: string): HTMLElement {
  try {
    return element("div", { class: "bench-code" }, qrCode(link, t`Code of the link`));
  } catch {
    return element("p", {}, t`The link is too long for a code: send it.`);
  }
}

/** Undefined where the address leads to the same page everywhere. */
function placeWarning(): string | undefined {
  if (location.protocol === "file:")
    return t`This page was opened from a file. The link works only where the other device has the site in the same place; elsewhere, open this page there and put what stands from # on behind its address.`;
  if (["localhost", "127.0.0.1", "[::1]"].includes(location.hostname))
    return t`This page comes from this device itself. The link works only where the other device has the site at the same address; elsewhere, open this page there and put what stands from # on behind its address.`;
  return undefined;
}

function copyButton(field: HTMLTextAreaElement): HTMLElement {
  const told = element("span", { role: "status" });
  const copy = button(t`Copy the link`, async () => {
    try {
      await navigator.clipboard.writeText(field.value);
      told.textContent = t`Copied.`;
    } catch {
      field.focus();
      told.textContent = t`This browser does not copy by itself: the link is marked, copy it by hand.`;
    }
  });
  return element("span", { class: "bench-copy" }, copy, told);
}
