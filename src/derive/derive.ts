/** Content to site: all that can be worked out about it before any page is made. */
import type { Release } from "../engine/competency/release.ts";
import { routeStages } from "../engine/competency/route.ts";
import { type Content, sheetsOf } from "../model/content.ts";
import type { Module } from "../model/module.ts";
import { remembered } from "../model/remembered.ts";
import type { ModuleCard, ModuleView, SearchDocument, Site, Status } from "../model/site.ts";
import { deriveModule } from "./module.ts";
import { releaseOf } from "./release.ts";
import { moduleDocuments } from "./search.ts";
import { statusOf } from "./status.ts";
import { usesIn } from "./uses.ts";

/** What follows from modules alone, whatever others there are. */
export interface Derived {
  readonly views: readonly ModuleView[];
  /** Documents of each module by its id. */
  readonly documents: ReadonlyMap<string, readonly SearchDocument[]>;
  /** Of each module; empty where the programme keeps no records. */
  readonly releases: readonly Release[];
}

/** Expects content without errors: graphs free of cycles, names that exist. */
export function derive(content: Content): Derived {
  const modules = [...content.modules.values()];
  const views = modules.map((module) => viewOf(module, content));
  return {
    views,
    documents: new Map(modules.map((module) => [module.id, moduleDocuments(module, content)])),
    releases: views.flatMap(({ release }) => release ?? []),
  };
}

function viewOf(module: Module, content: Content): ModuleView {
  const view = deriveModule(module, content);
  const release = content.programme.identifier === undefined ? undefined : releaseOf(view, content);
  return marked(view, release, statusOf(module, release, content));
}

const marked = remembered(
  (view: ModuleView, release: Release | undefined, status: Status | undefined): ModuleView => ({
    ...view,
    release,
    status,
  }),
);

/** The site of all modules whose cards are given, with the views of all or of a share of them. */
export function siteOf(content: Content, cards: readonly ModuleCard[], views: readonly ModuleView[]): Site {
  const ordered = inNeededOrder(cards, content.programme.language);
  const usedBy = usesIn(ordered);
  const view = new Map(views.map((each) => [each.module.id, each]));
  return {
    programme: content.programme,
    cards: ordered,
    modules: ordered.map(({ id }) => view.get(id)).filter((each) => each !== undefined),
    sheets: sheetsOf(content).map((sheet) => ({ sheet, usedBy: usedBy(sheet) })),
    pictures: content.pictures,
  };
}

/** Stage by stage of the route, within a stage by title. */
function inNeededOrder(cards: readonly ModuleCard[], language: string): ModuleCard[] {
  const stages = routeStages(new Map(cards.map(({ id, needs }) => [id, needs])));
  const stageOf = new Map(stages.flatMap((ids, stage) => ids.map((id) => [id, stage] as const)));
  const { compare } = new Intl.Collator(language);
  const stage = ({ id }: ModuleCard): number => stageOf.get(id)!;
  return [...cards].sort(
    (a, b) => stage(a) - stage(b) || compare(a.title, b.title) || (a.id < b.id ? -1 : 1),
  );
}
