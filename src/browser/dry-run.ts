/** The dry run. */
import type { DryRunData } from "../model/page-data.ts";
import { Run } from "./dry-run/run.ts";
import { RunView } from "./dry-run/run-view.ts";
import { announcer } from "./page/announcer.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { storeAt } from "./page/store.ts";
import { recordedLine } from "./record/recorded-line.ts";

function finished({ module, revision, record }: DryRunData, run: Run): HTMLElement | undefined {
  if (record === undefined) return undefined;
  const { isOver: done, stops } = run.summary();
  const claimed = { done, stops };
  return recordedLine(record, {
    kind: "run",
    ...{ module, revision, graph: record.digest, tried: run.tried(), claimed },
  });
}

const data = pageData<DryRunData>();
const paper = document.querySelector<HTMLElement>(".run-paper");
if (data !== undefined && paper !== null) {
  const store = storeAt(`dry-run:${data.module}@${data.revision}`);
  const run = new Run(data, store);
  const view = new RunView({ data, run, announce: announcer(), finished: () => finished(data, run) });
  paper.replaceWith(view.element);
  scriptIsHere();
}
