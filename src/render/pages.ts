/** Every page of the site, and what makes it. */
import type { Book } from "../../layouts/book.ts";
import { benchPage } from "../../layouts/interactive/bench.ts";
import { practicePage } from "../../layouts/interactive/practice.ts";
import { quizPage } from "../../layouts/interactive/quiz.ts";
import { searchPage } from "../../layouts/interactive/search.ts";
import { type ModulePage, modulePages } from "../../layouts/module-pages.ts";
import { aboutPage } from "../../layouts/pages/about.ts";
import { homePage } from "../../layouts/pages/home.ts";
import { modulePage } from "../../layouts/pages/module.ts";
import { modulesPage } from "../../layouts/pages/modules.ts";
import { sheetPage } from "../../layouts/pages/sheet.ts";
import { sheetListPage, sheetLists } from "../../layouts/pages/sheets.ts";
import { type Address, fileOf } from "../model/address.ts";
import type { ModuleView } from "../model/site.ts";
import type { Page, PageGroup } from "./eleventy.ts";

type MakeModulePage = (view: ModuleView, book: Book) => string;

const makers: Readonly<Record<ModulePage["kind"], MakeModulePage>> = {
  bench: benchPage,
  practice: practicePage,
  quiz: quizPage,
};

/** The operation sheet, which every module has, and the pages that it may have. */
const ofModule: readonly { kind: Address["kind"]; has: ModulePage["has"]; make: MakeModulePage }[] = [
  { kind: "module", has: () => true, make: modulePage },
  ...modulePages.map(({ kind, has }) => ({ kind, has, make: makers[kind] })),
];

const plainPages: readonly { readonly id: string; readonly make: (book: Book) => string }[] = [
  { id: "", make: homePage },
  { id: "modules", make: modulesPage },
  { id: "about", make: aboutPage },
  { id: "search", make: searchPage },
  ...sheetLists.map((list) => ({ id: list.id, make: (book: Book) => sheetListPage(list, book) })),
];

/** One group for each kind of page. */
export function pageGroups(book: Book): PageGroup[] {
  const { modules, sheets } = book.site;
  return [
    { name: "plain", pages: plainPages.map(({ id, make }) => page({ kind: "plain", id }, () => make(book))) },
    {
      name: "sheets",
      pages: sheets.map((view) =>
        page({ kind: view.sheet.kind, id: view.sheet.id }, () => sheetPage(view, book)),
      ),
    },
    ...ofModule.map(({ kind, has, make }) => ({
      name: kind,
      pages: modules.filter(has).map((view) => page({ kind, id: view.module.id }, () => make(view, book))),
    })),
  ];
}

function page(address: Address, make: () => string): Page {
  return { file: fileOf(address), make };
}
