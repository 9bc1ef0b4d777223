/** What goes wrong in runs on paper, as the dry-run page keeps them. */

import type { Try } from "../../engine/procedure/perform.ts";
import { performingGraph } from "../../engine/procedure/performing-graph.ts";
import { goOfRun } from "../../engine/review/goes.ts";
import { t } from "../../engine/words.ts";
import type { DryRunData } from "../../model/page-data.ts";
import { readRun } from "../dry-run/kept-run.ts";
import { pairWords } from "../dry-run/words.ts";
import type { Store } from "../page/store.ts";
import { FaultLog } from "./log.ts";

/** The store of the page's run, which notes faults whenever a step was tried. */
export function notingRuns(store: Store, data: DryRunData): Store {
  const graph = performingGraph(data.precedence);
  const titles = new Map(data.steps.map(({ id, title }) => [id, title]));
  return {
    load: () => store.load(),
    save(kept) {
      store.save(kept);
      const run = readRun(kept, graph);
      if (run === undefined) return;
      const log = new FaultLog({
        of: data,
        where: "dry-run",
        title: t`Dry run`,
        known: new Set(titles.keys()),
        words: (id) => ({
          text: titles.get(id) ?? id,
          see: undefined,
          notes: notesOf(id, run.tries, (step) => titles.get(step) ?? step),
        }),
      });
      log.note(run.seed, goOfRun(run.tries));
    },
  };
}

/** Why the step could not be done when it was tried last. */
function notesOf(step: string, tries: readonly Try[], title: (step: string) => string): string[] {
  const tried = tries.findLast((each) => each.step === step && each.verdict.kind !== "done");
  if (tried === undefined) return [];
  const { broken, critical } = tried.verdict;
  const pairs = broken.length > 0 ? broken : critical;
  return pairs.map((pair) => pairWords(pair, step, title));
}
