/** A run as it is kept in the browser. */
import type { Graph } from "../../engine/procedure/graph.ts";
import { performSteps, type Try } from "../../engine/procedure/perform.ts";
import { fieldsOf } from "../page/store.ts";

export interface KeptRun {
  /** Draws the order in which the steps are offered. */
  readonly seed: string;
  /** Only ever added to. */
  readonly tries: readonly Try[];
  /** The trainee went on after the last try, which had stopped the run. */
  readonly wentOn: boolean;
}

export const newRun = (seed: string): KeptRun => ({ seed, tries: [], wentOn: false });

/** As JSON: each try with its verdict in a word. */
export function keepRun({ seed, tries, wentOn }: KeptRun): unknown {
  return { seed, wentOn, tries: tries.map(({ step, verdict }) => ({ step, verdict: verdict.kind })) };
}

/** Reads a kept run and judges it again from the steps tried; undefined where it can't be a run of this graph. */
export function readRun(kept: unknown, graph: Graph): KeptRun | undefined {
  const { seed, tries, wentOn } = fieldsOf(kept);
  if (typeof seed !== "string" || !Array.isArray(tries)) return undefined;
  const steps = tries.map((each) => fieldsOf(each).step);
  if (!steps.every((step) => typeof step === "string")) return undefined;
  const judged = performSteps(graph, steps);
  return judged === undefined ? undefined : { seed, tries: judged, wentOn: wentOn === true };
}
