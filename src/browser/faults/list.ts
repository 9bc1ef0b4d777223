/** The list of faults to go over, gathered from what the pages of all modules have kept. */
import { faultsIn } from "../../engine/review/faults.ts";
import { listToGoOver, type ToGoOver, type Tried } from "../../engine/review/to-go-over.ts";
import type { FaultsData, FaultsModule } from "../../model/page-data.ts";
import { type FaultWords, faultsStore, type Places, readPlaces } from "./kept.ts";

export interface ListedFault extends ToGoOver {
  readonly words: FaultWords;
  /** Titles of the places of `in`, in the same order. */
  readonly titles: readonly string[];
}

export interface ListedModule {
  readonly module: FaultsModule;
  readonly faults: readonly ListedFault[];
  /** Where something is still open, each once. */
  readonly places: readonly { readonly where: string; readonly title: string }[];
}

/** Of the revisions that the site has now. O(what is kept). */
export function gathered({ modules }: FaultsData): ListedModule[] {
  const kept = new Map(
    modules.map(({ id, revision }) => [id, readPlaces(faultsStore({ module: id, revision }).load())]),
  );
  const tried = [...kept].flatMap(([module, places]) => triedIn(module, places));
  const byId = new Map(modules.map((module) => [module.id, module]));
  return listToGoOver(tried).map(({ module, faults }) => {
    const places = kept.get(module)!;
    const open = [...places].filter(([, { goes }]) => faultsIn(goes.map(([, go]) => go)).length > 0);
    return {
      module: byId.get(module)!,
      faults: faults.map((fault) => listed(fault, places)),
      places: open.map(([where, { title }]) => ({ where, title })),
    };
  });
}

function triedIn(module: string, places: Places): Tried[] {
  return [...places].map(([where, { goes }]) => ({
    module,
    where,
    about: where === "quiz" ? "question" : "step",
    goes: goes.map(([, go]) => go),
  }));
}

/** In the words of the place where it went wrong, with what every place has noted. */
function listed(fault: ToGoOver, places: Places): ListedFault {
  const told = fault.in.flatMap(({ where }) => places.get(where)!.words.get(fault.id) ?? []);
  const notes = [...new Set(told.flatMap((words) => words.notes))];
  return {
    ...fault,
    words: { text: told[0]?.text ?? fault.id, see: told[0]?.see, notes },
    titles: fault.in.map(({ where }) => places.get(where)!.title),
  };
}
