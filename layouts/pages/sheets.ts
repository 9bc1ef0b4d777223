/** The lists of all tools, substances and hazards. */
import { t } from "../../src/engine/words.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import { type Sheet, signalWords } from "../../src/model/sheet.ts";
import type { SheetView } from "../../src/model/site.ts";
import type { Book, SheetOf } from "../book.ts";
import { labelWord, pictograms } from "../components/pictogram.ts";
import { ruledTable } from "../components/ruled-table.ts";
import { signalWord } from "../components/signal-word.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";
import { counted } from "../words.ts";

export interface SheetList {
  readonly id: "tools" | "substances" | "hazards";
  readonly title: string;
  readonly summary: string;
  /** The table's head for what `mark` shows; undefined where the sheets of this kind have no mark. */
  readonly marked: string | undefined;
  /** What stands above the table. */
  readonly lead?: (from: Address) => Html;
  readonly rows: (
    book: Book,
    from: Address,
  ) => readonly { readonly view: SheetView; readonly mark: Html | undefined }[];
}

export const sheetLists: readonly SheetList[] = [
  {
    id: "tools",
    title: t`Tools`,
    summary: t`What the steps ask for, what each is good for, and how it is looked after.`,
    marked: undefined,
    rows: (book) => sorted(book.tools).map((view) => ({ view, mark: undefined })),
  },
  {
    id: "substances",
    title: t`Substances`,
    summary: t`What cleans, dries, loosens and lubricates. For each, the supplier’s safety data sheet decides.`,
    marked: t`On its label`,
    rows: (book, from) =>
      sorted(book.substances).map((view) => ({
        view,
        mark: html`${pictograms(view.sheet.pictograms, from)} ${labelWord(view.sheet)}`,
      })),
  },
  {
    id: "hazards",
    title: t`Hazards`,
    summary: t`What can hurt you, or the machine, and how to keep it from doing so. The gravest stand first.`,
    marked: t`Signal word`,
    lead: (from) =>
      html`<p><a href="${linkTo(from, { kind: "plain", id: "poster" })}">The safety messages as a poster for the wall</a></p>
`,
    rows: (book) =>
      sorted(book.hazards)
        .sort((a, b) => signalWords.indexOf(a.sheet.signal) - signalWords.indexOf(b.sheet.signal))
        .map((view) => ({ view, mark: signalWord(view.sheet.signal) })),
  },
];

function sorted<S extends Sheet>(sheets: ReadonlyMap<string, SheetOf<S>>): SheetOf<S>[] {
  return [...sheets.values()].sort((a, b) => a.sheet.title.localeCompare(b.sheet.title));
}

export function sheetListPage(list: SheetList, book: Book): string {
  const from: Address = { kind: "plain", id: list.id };
  const rows = list.rows(book, from);
  return frame({
    address: from,
    title: list.title,
    programme: book.site.programme,
    assets: book.assets,
    description: list.summary,
    main: html`<div class="sheet">
<header class="sheet-head"><h1>${list.title}</h1>
<p class="summary">${list.summary}</p></header>
${list.lead?.(from)}${rows.length === 0 ? html`<p>None yet.</p>` : table(list, rows, from)}
</div>`,
  });
}

function table({ marked }: SheetList, rows: ReturnType<SheetList["rows"]>, from: Address): Html {
  type Row = (typeof rows)[number];
  return ruledTable<Row>(
    "sheets",
    [
      { name: t`Name`, kind: "head", value: ({ view: { sheet } }) => nameOf(sheet, from) },
      { name: marked ?? "", kind: "mark", value: ({ mark }) => mark },
      { name: t`What it is`, kind: "mark", value: ({ view }) => view.sheet.summary },
      { name: t`Used in`, value: ({ view }) => counted(view.usedBy.length, "module") },
    ],
    rows,
  );
}

const nameOf = ({ kind, id, title }: Sheet, from: Address) =>
  html`<a href="${linkTo(from, { kind, id })}">${title}</a>`;
