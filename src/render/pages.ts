/** Every page of the site, and what makes it. */
import type { Book } from "../../layouts/book.ts";
import { benchPage } from "../../layouts/interactive/bench.ts";
import { checkPage } from "../../layouts/interactive/check.ts";
import { deskPage } from "../../layouts/interactive/desk.ts";
import { dryRunPage } from "../../layouts/interactive/dry-run.ts";
import { eveningPage } from "../../layouts/interactive/evening.ts";
import { faultsPage } from "../../layouts/interactive/faults.ts";
import { quizKeyPage } from "../../layouts/interactive/key.ts";
import { practicePage } from "../../layouts/interactive/practice.ts";
import { quizPage } from "../../layouts/interactive/quiz.ts";
import { recordPage } from "../../layouts/interactive/record.ts";
import { searchPage } from "../../layouts/interactive/search.ts";
import { sumsPage } from "../../layouts/interactive/sums.ts";
import { type ModulePage, modulePages } from "../../layouts/module-pages.ts";
import { aboutPage } from "../../layouts/pages/about.ts";
import { authorsPage } from "../../layouts/pages/authors.ts";
import { awayPage } from "../../layouts/pages/away.ts";
import { formulasPage } from "../../layouts/pages/formulas.ts";
import { homePage } from "../../layouts/pages/home.ts";
import { modulePage } from "../../layouts/pages/module.ts";
import { modulesPage } from "../../layouts/pages/modules.ts";
import { orderPage } from "../../layouts/pages/order.ts";
import { paperPage } from "../../layouts/pages/paper.ts";
import { posterPage } from "../../layouts/pages/poster.ts";
import { routePage } from "../../layouts/pages/route.ts";
import { sheetPage } from "../../layouts/pages/sheet.ts";
import { sheetListPage, sheetLists } from "../../layouts/pages/sheets.ts";
import { threadsPage } from "../../layouts/pages/threads.ts";
import { type Address, fileOf } from "../model/address.ts";
import type { ModuleCard, ModuleView } from "../model/site.ts";
import type { PageGroup } from "./eleventy.ts";
import type { Page } from "./page.ts";

type MakeModulePage = (view: ModuleView, book: Book) => string;

const makers: Readonly<Record<ModulePage["kind"], MakeModulePage>> = {
  order: orderPage,
  bench: benchPage,
  paper: paperPage,
  practice: practicePage,
  "dry-run": dryRunPage,
  quiz: quizPage,
};

/** The pages that a module may have besides its operation sheet. */
const companions: readonly { kind: Address["kind"]; has: ModulePage["has"]; make: MakeModulePage }[] = [
  { kind: "quiz-key", has: ({ hasKey }) => hasKey, make: quizKeyPage },
  ...modulePages.map(({ kind, has }) => ({ kind, has, make: makers[kind] })),
];

interface PlainPage {
  readonly id: string;
  readonly make: (book: Book) => string;
  /** Where not every programme has it. */
  readonly has?: (book: Book) => boolean;
}

const keepsRecords = ({ site }: Book): boolean => site.programme.identifier !== undefined;

const isKeptOnDevices = ({ assets }: Book): boolean => assets.scripts.has("offline");

const plainPages: readonly PlainPage[] = [
  { id: "", make: homePage },
  { id: "modules", make: modulesPage },
  { id: "route", make: routePage },
  { id: "about", make: aboutPage },
  { id: "authors", make: authorsPage, has: ({ authors }) => authors !== undefined },
  { id: "away", make: awayPage, has: isKeptOnDevices },
  { id: "search", make: searchPage },
  { id: "faults", make: faultsPage },
  { id: "poster", make: posterPage },
  { id: "sums", make: sumsPage },
  { id: "sums/threads", make: threadsPage },
  { id: "record", make: recordPage, has: keepsRecords },
  { id: "check", make: checkPage, has: keepsRecords },
  { id: "desk", make: deskPage, has: keepsRecords },
  { id: "desk/evening", make: eveningPage, has: keepsRecords },
  { id: "sums/formulas", make: formulasPage },
  ...sheetLists.map((list) => ({ id: list.id, make: (book: Book) => sheetListPage(list, book) })),
];

/** Pages of the programme and its sheets. They are few and name everything, so they are made anew each time. */
export function programmeGroups(book: Book): PageGroup[] {
  return [
    {
      name: "plain",
      pages: plainPages
        .filter(({ has = () => true }) => has(book))
        .map(({ id, make }) => page({ kind: "plain", id }, () => make(book), [{}])),
    },
    {
      name: "sheets",
      pages: book.site.sheets.map((view) =>
        page({ kind: view.sheet.kind, id: view.sheet.id }, () => sheetPage(view, book), [{}]),
      ),
    },
  ];
}

/** Pages of modules: the operation sheets, and those that go with them, module by module. */
export function pagesOfModules(book: Book): { sheets: Page[]; others: Page[] } {
  const common = commonInputs(book);
  const sheets: Page[] = [];
  const others: Page[] = [];
  for (const view of book.site.modules) {
    const cards = new Map(view.names.flatMap((id) => cardOf(id, book)));
    const own = { ...book, cards };
    const inputs = [view, JSON.stringify([...cards.values()]), ...common];
    const made = (kind: Address["kind"], make: MakeModulePage) =>
      page({ kind, id: view.module.id }, () => make(view, own), inputs);
    sheets.push(made("module", modulePage));
    others.push(...companions.filter(({ has }) => has(view.card)).map(({ kind, make }) => made(kind, make)));
  }
  return { sheets, others };
}

/** A module's pages see the cards of those modules only that they name, so that they depend on no other. */
function cardOf(id: string, { cards }: Book): [string, ModuleCard][] {
  const card = cards.get(id);
  return card === undefined ? [] : [[id, card]];
}

/** What every page of a module may show besides the module. */
function commonInputs({ site, assets }: Book): unknown[] {
  const files = JSON.stringify([
    assets.style,
    assets.furtherStyle,
    assets.paperStyle,
    [...assets.scripts],
    [...site.pictures],
  ]);
  return [files, site.programme, ...site.sheets.map(({ sheet }) => sheet)];
}

function page(address: Address, make: () => string, inputs: Page["inputs"]): Page {
  return { file: fileOf(address), make, inputs };
}
