/** The page of a tool, a substance or a hazard. */
import { t } from "../../src/engine/words.ts";
import type { Address } from "../../src/model/address.ts";
import { anchorOf } from "../../src/model/link.ts";
import type { Sheet } from "../../src/model/sheet.ts";
import type { SheetView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { notePlace, noteScripts } from "../components/note-place.ts";
import { plainSection } from "../components/plain-section.ts";
import { safetyMessage } from "../components/safety-message.ts";
import { sheetHead } from "../components/sheet-head.ts";
import { substanceFacts } from "../components/substance-facts.ts";
import { toolFacts } from "../components/tool-facts.ts";
import { usedBy } from "../components/used-by.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";

export function sheetPage(view: SheetView, book: Book): string {
  const { sheet } = view;
  const from: Address = { kind: sheet.kind, id: sheet.id };
  return frame({
    address: from,
    title: sheet.title,
    programme: book.site.programme,
    assets: book.assets,
    scripts: sheet.kind === "hazard" ? noteScripts(book) : [],
    description: sheet.summary,
    main: html`<div class="sheet">
${sheetHead(sheet)}<div class="sheet-text">
${facts(sheet, book, from)}${sheet.sections.map((section) => plainSection(section, anchorOf(section), sheet.path, book, from))}${sheet.kind === "hazard" ? notePlace({ kind: "hazard", id: sheet.id }, book, from) : undefined}</div>
${usedBy(view, sheet.kind === "hazard" ? t`Met in` : t`Used in`, from)}</div>`,
  });
}

function facts(sheet: Sheet, book: Book, from: Address): Html | undefined {
  if (sheet.kind === "tool") return toolFacts(sheet);
  return sheet.kind === "substance" ? substanceFacts(sheet, book, from) : safetyMessage(sheet, from);
}
