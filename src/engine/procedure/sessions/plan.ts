/** All that is reckoned about the time of a procedure. */
import { type CriticalPath, criticalPath } from "../critical-path.ts";
import type { Graph } from "../graph.ts";
import { planSessions, type Sessions } from "./plan-sessions.ts";
import { inSeconds, type TimedStep } from "./timed-step.ts";

export interface Plan {
  /** Minutes of work. */
  readonly handsOn: number;
  /** Minutes of waiting, one after the other. */
  readonly waits: number;
  readonly criticalPath: CriticalPath;
  readonly split: Sessions;
}

/**
 * The plan of `steps`, which stand in the written order and are those of the graph, in sessions of `length` minutes. Times
 * count to the second.
 */
export function planOf(graph: Graph, steps: readonly TimedStep[], length: number): Plan {
  const minutes = (of: (step: TimedStep) => number): number =>
    steps.reduce((sum, step) => sum + inSeconds(of(step)), 0) / 60;
  return {
    handsOn: minutes(({ time }) => time),
    waits: minutes(({ wait }) => wait),
    criticalPath: criticalPath(graph, steps),
    split: planSessions(steps, length),
  };
}
