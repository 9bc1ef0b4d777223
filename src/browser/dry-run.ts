/** The dry run. */
import type { DryRunData } from "../model/page-data.ts";
import { Run } from "./dry-run/run.ts";
import { RunView } from "./dry-run/run-view.ts";
import { notingRuns } from "./faults/of-run.ts";
import { announcer } from "./page/announcer.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { part } from "./page/part.ts";
import { storeAt } from "./page/store.ts";
import { recordedLine } from "./record/recorded-line.ts";

/** More than a record takes of one run. */
const mostTries = 10_000;

function finished({ module, revision, record }: DryRunData, run: Run): HTMLElement | undefined {
  const tried = run.tried();
  if (record === undefined || tried.length > mostTries) return undefined;
  const { isOver: done, stops } = run.summary();
  const claimed = { done, stops };
  return recordedLine(record, {
    kind: "run",
    ...{ module, revision, graph: record.digest, tried, claimed },
  });
}

const data = pageData<DryRunData>();
const paper = part.querySelector<HTMLElement>(".run-paper");
if (data !== undefined && paper !== null) {
  const store = notingRuns(storeAt(`dry-run:${data.module}@${data.revision}`), data);
  const run = new Run(data, store);
  const view = new RunView({ data, run, announce: announcer(), finished: () => finished(data, run) });
  paper.replaceWith(view.element);
  scriptIsHere();
}
