/** Questions in which things are given a place. */
import { graphOfProcedure } from "../../../engine/procedure/graph-of-procedure.ts";
import { restrictForAnswers } from "../../../engine/procedure/restrict-for-answers.ts";
import type { Question } from "../../../engine/quiz/kinds.ts";
import { nearestWords } from "../../nearest.ts";
import { asked, type DataOf, type Making, report } from "./making.ts";

export function makeArrange(data: DataOf<"arrange">, making: Making): Question | undefined {
  const { procedure } = making.module;
  const titles = new Map(procedure.steps.map(({ id, title }) => [id, title]));
  const unknown = data.steps.filter((id) => !titles.has(id));
  for (const id of unknown) {
    report(
      making,
      "unknown-step",
      ["steps", data.steps.indexOf(id)],
      `the module has no step "${id}"${nearestWords(id, titles.keys())}`,
    );
  }
  const isSound = unknown.length === 0 && titles.size === procedure.steps.length;
  const graph = isSound ? graphOfProcedure(procedure).graph : null;
  if (graph === null) return undefined;
  const precedence = restrictForAnswers(graph, data.steps, (id) => titles.get(id) ?? id);
  return {
    ...asked(data),
    kind: "arrange",
    steps: data.steps.map((id) => ({ id, title: titles.get(id)! })),
    precedence,
  };
}

export function makeMatch(data: DataOf<"match">): Question {
  return {
    ...asked(data),
    kind: "match",
    items: data.pairs.map(({ item, why }, choice) => ({ text: item, choice, why })),
    choices: [...data.pairs.map((pair) => pair.with), ...data.others.map(({ text }) => text)],
    whyNot: data.others.map(({ why }) => why),
  };
}

export function makeSort(data: DataOf<"sort">, making: Making): Question | undefined {
  const items = data.items.map(({ text, group, why }) => ({ text, group: data.groups.indexOf(group), why }));
  for (const [place, { group }] of items.entries()) {
    if (group >= 0) continue;
    const { group: found } = data.items[place]!;
    const words = `there is no group "${found}"${nearestWords(found, data.groups)}`;
    report(making, "quiz-unknown-group", ["items", place, "group"], words);
  }
  if (items.some(({ group }) => group < 0)) return undefined;
  return { ...asked(data), kind: "sort", groups: data.groups, items };
}
