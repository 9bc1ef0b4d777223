/** What a question sends back to: its `see:` as a link of the site, in words. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import { addressOfPath, readLink } from "../../src/model/link.ts";
import type { See } from "../../src/model/page-data.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";

/** `written` is a link of the content, read as from the module's own file; undefined where it leads to no page. */
export function seeLink(written: string, view: ModuleView, book: Book, from: Address): See | undefined {
  const link = readLink(view.module.path, written);
  if (link.kind !== "page") return undefined;
  const address = addressOfPath(link.path, link.at);
  return address === undefined
    ? undefined
    : { href: linkTo(from, address), text: words(address, view, book) };
}

function words(address: Address, view: ModuleView, book: Book): string {
  const module = book.cards.get(address.id);
  if (address.kind !== "module" || module === undefined) return sheetTitle(address, book);
  const place = module.id === view.module.id ? "" : `${module.title}, `;
  const step = module.steps.find((each) => each.id === address.at);
  if (step !== undefined) return t`${place}step ${step.number}: ${step.title}`;
  return address.at === undefined || place !== "" ? module.title : t`the operation sheet`;
}

function sheetTitle({ kind, id }: Address, book: Book): string {
  const sheets = new Map<Address["kind"], ReadonlyMap<string, { sheet: { title: string } }>>([
    ["tool", book.tools],
    ["substance", book.substances],
    ["hazard", book.hazards],
  ]);
  return sheets.get(kind)?.get(id)?.sheet.title ?? id;
}
