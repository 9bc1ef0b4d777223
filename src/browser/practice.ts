/** The practice page. */

import { graphOf } from "../engine/procedure/graph.ts";
import { t } from "../engine/words.ts";
import type { PracticeData, PracticeTask } from "../model/page-data.ts";
import { notesOfPractice } from "./faults/of-practice.ts";
import { type Announce, announcer } from "./page/announcer.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { element } from "./page/element.ts";
import { part } from "./page/part.ts";
import { storeAt } from "./page/store.ts";
import { chooseAmong } from "./practice/choice.ts";
import { Task } from "./practice/task.ts";
import { recordedLine } from "./record/recorded-line.ts";

const sections = [...part.querySelectorAll<HTMLElement>("[data-practice]")];
const links = [...part.querySelectorAll<HTMLAnchorElement>(".practice-choice a")];

function start(section: HTMLElement, task: PracticeTask, data: PracticeData, announce: Announce): void {
  const { graph } = graphOf(task.precedence);
  if (graph === null) return;
  const link = links.find(({ hash }) => hash === `#${section.id}`);
  const mark = element("span", { class: "choice-mark" });
  link?.append(mark);
  const view = new Task({
    task,
    graph,
    announce,
    store: storeAt(`practice:${data.module}@${data.revision}:${task.id}`),
    putRight: (given) => putRight(task, data, given),
    ...notesOfPractice(task, data),
    changed: ({ right }) => {
      mark.textContent = right ? t` (put right)` : "";
    },
  });
  section.replaceChildren(section.querySelector("h2")!, ...view.parts());
}

function putRight(
  { id, digest }: PracticeTask,
  { module, revision, record }: PracticeData,
  given: readonly string[],
): HTMLElement | undefined {
  if (digest === undefined) return undefined;
  const claimed = { right: true };
  return recordedLine(record, {
    kind: "practice",
    ...{ module, revision, graph: digest, practice: id, given, claimed },
  });
}

const data = pageData<PracticeData>();
if (data !== undefined) {
  const announce = announcer();
  const tasks = new Map(data.practices.map((task) => [task.id, task]));
  for (const section of sections) {
    const task = tasks.get(section.dataset.practice ?? "");
    if (task !== undefined) start(section, task, data, announce);
  }
  chooseAmong(sections, links);
  scriptIsHere();
}
