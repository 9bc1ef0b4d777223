/** A module on paper: the sheets for the bench, the tins, the mentor, the owner and the author, printed as chosen. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { ModuleView } from "../../src/model/site.ts";
import type { Book } from "../book.ts";
import { titleBlock } from "../components/title-block.ts";
import { frame } from "../frame.ts";
import { type Html, html, join } from "../html.ts";
import { paperChoice } from "../paper/choice.ts";
import { type PaperSheet, paperSheet, type SheetSource } from "../paper/sheet.ts";
import { paperSheets } from "../paper/sheets.ts";

/** For a module with steps. */
export function paperPage(view: ModuleView, book: Book): string {
  const { module } = view;
  const from: Address = { kind: "paper", id: module.id };
  const source: SheetSource = { view, book, from };
  const sheets = paperSheets.flatMap((sheet) => made(sheet, source));
  return frame({
    address: from,
    title: t`On paper: ${module.title}`,
    programme: book.site.programme,
    assets: book.assets,
    scripts: ["paper"],
    styles: [book.assets.paperStyle],
    description: t`Sheets to print for “${module.title}”: for the bench, the tray, the mentor and the owner.`,
    main: html`<div class="sheet paper">
<p class="sheet-kind on-screen"><a href="${linkTo(from, { kind: "module", id: module.id })}">Operation sheet</a> · On paper</p>
<div data-sheet="bench">${titleBlock(view, book.site.programme, t`Bench sheet`)}</div>
${introduction(sheets, book, from)}${sheets.map(({ sheet, content }) => paperSheet(sheet, content, source))}</div>`,
  });
}

interface Made {
  readonly sheet: PaperSheet;
  readonly content: Html;
}

function made(sheet: PaperSheet, source: SheetSource): Made[] {
  const content = sheet.make(source);
  return content === undefined ? [] : [{ sheet, content }];
}

function introduction(sheets: readonly Made[], book: Book, from: Address): Html {
  const links = sheets.map(({ sheet }) => html`<a href="#s_${sheet.id}">${sheet.name}</a>`);
  return html`<div class="paper-introduction on-screen">
<p>Below stand the sheets as they are printed, each from a page of its own. Dashed lines are for cutting. The <a href="${linkTo(from, { kind: "plain", id: "poster" })}">poster of the safety messages</a> is for the wall.</p>
<nav aria-label="Sheets"><p class="step-links">${join(links, " ")}</p></nav>
${paperChoice(
  sheets.map(({ sheet }) => sheet),
  book.site.programme,
)}</div>
`;
}
