/** The dry run. */
import type { DryRunData } from "../model/page-data.ts";
import { Run } from "./dry-run/run.ts";
import { RunView } from "./dry-run/run-view.ts";
import { announcer } from "./page/announcer.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { storeAt } from "./page/store.ts";

const data = pageData<DryRunData>();
const paper = document.querySelector<HTMLElement>(".run-paper");
if (data !== undefined && paper !== null) {
  const store = storeAt(`dry-run:${data.module}@${data.revision}`);
  const view = new RunView({ data, run: new Run(data, store), announce: announcer() });
  paper.replaceWith(view.element);
  scriptIsHere();
}
