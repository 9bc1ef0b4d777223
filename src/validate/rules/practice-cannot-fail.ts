/** A practice in which any order is right and nothing is to be left out can't be failed. */
import type { Graph } from "../../engine/procedure/graph.ts";
import { anyOrderIsRight } from "../../engine/procedure/precedes.ts";
import { type PracticeSteps, practiceSteps } from "../../model/practice.ts";
import { adviceRule, spotOfPractice } from "./advice.ts";

export const canFail = ({ steps, mixedIn }: PracticeSteps, graph: Graph): boolean =>
  mixedIn.length > 0 || !anyOrderIsRight(graph, steps);

export const practiceCannotFail = adviceRule(
  "practices that can't fail",
  (module, graph, content, reporter) => {
    for (const practice of practiceSteps(module)) {
      if (practice.chosen === undefined || canFail(practice, graph)) continue;
      const found = `"${practice.title}": none of its ${practice.steps.length} steps has to come before another`;
      reporter.report("practice-cannot-fail", spotOfPractice(practice, module, content), found);
    }
  },
);
