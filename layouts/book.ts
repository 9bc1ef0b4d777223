/** What every page is made from: the site, the names of its files, and how prose is rendered. */
import type { Address } from "../src/model/address.ts";
import type { AuthorsGuide } from "../src/model/authors-guide.ts";
import type { Size } from "../src/model/picture-files.ts";
import type { Hazard, Sheet, Substance, Tool } from "../src/model/sheet.ts";
import type { Assets, ModuleCard, SheetView, Site } from "../src/model/site.ts";
import type { Section } from "../src/model/source.ts";
import type { Html } from "./html.ts";

/** Renders the prose under a heading of the content file at `path`, with links as they are on the page `from`. */
export type RenderProse = (section: Section, path: string, from: Address) => Html;

export interface Book {
  readonly site: Site;
  readonly assets: Assets;
  readonly prose: RenderProse;
  /** The size of a picture of the content folder, where it can be read. */
  readonly sizeOf: (file: string) => Size | undefined;
  readonly cards: ReadonlyMap<string, ModuleCard>;
  readonly tools: ReadonlyMap<string, SheetOf<Tool>>;
  readonly substances: ReadonlyMap<string, SheetOf<Substance>>;
  readonly hazards: ReadonlyMap<string, SheetOf<Hazard>>;
  /** What the page for authors shows, where the site has one. */
  readonly authors?: AuthorsGuide | undefined;
}

export interface SheetOf<S extends Sheet> extends SheetView {
  readonly sheet: S;
}

/** Looks up once what pages need again and again. */
export function bookOf(site: Site, assets: Assets, prose: RenderProse, sizeOf: Book["sizeOf"]): Book {
  return {
    site,
    assets,
    prose,
    sizeOf,
    cards: new Map(site.cards.map((card) => [card.id, card])),
    tools: sheets(site, isTool),
    substances: sheets(site, isSubstance),
    hazards: sheets(site, isHazard),
  };
}

function sheets<S extends Sheet>(
  site: Site,
  is: (view: SheetView) => view is SheetOf<S>,
): Map<string, SheetOf<S>> {
  return new Map(site.sheets.filter(is).map((view) => [view.sheet.id, view]));
}

const isTool = (view: SheetView): view is SheetOf<Tool> => view.sheet.kind === "tool";
const isSubstance = (view: SheetView): view is SheetOf<Substance> => view.sheet.kind === "substance";
const isHazard = (view: SheetView): view is SheetOf<Hazard> => view.sheet.kind === "hazard";
