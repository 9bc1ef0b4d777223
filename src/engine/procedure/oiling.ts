/** Whether oil goes where it stays: on what is clean and dry, and not on what is kept dry. */
import type { Step } from "./procedure.ts";
import type { Treatment, TreatmentOf } from "./treatment.ts";

export type OilFault =
  /** Lubricated for the last time before it was cleaned for the last time. */
  | {
      readonly kind: "washed-off";
      readonly target: string;
      readonly step: string;
      readonly cleaned: string;
    }
  /** Lubricated although nothing has dried it since that step cleaned it. */
  | { readonly kind: "on-wet"; readonly target: string; readonly step: string; readonly cleaned: string }
  /** To be kept dry, and not cleaned and dried again after oil came on it. */
  | { readonly kind: "kept-dry"; readonly target: string; readonly step: string };

/**
 * What is wrong with the oiling of each part or set that steps work on, in the written order; targets in the order in which they are first
 * worked on. Within one step cleaning comes before lubricating. Any wait dries whatever is wet. Oil that does not lubricate may
 * come at any time but on what is kept dry. O(acts).
 */
export function oilFaults<S extends Step>(
  steps: readonly S[],
  treatmentOf: TreatmentOf<S>,
  keepDry: ReadonlySet<string>,
): OilFault[] {
  const targets = new Set(
    steps.flatMap(({ acts }) => acts.filter(({ kind }) => kind === "work").map(({ target }) => target)),
  );
  return [...targets].flatMap((target) => {
    const events = eventsOf(steps, treatmentOf, target);
    return keepDry.has(target)
      ? keptDry(target, events)
      : [...onWet(target, events), ...washedOff(target, events)];
  });
}

/** A step as one target meets it. */
interface Event extends Treatment {
  readonly step: string;
  readonly waits: boolean;
}

const untouched: Treatment = {
  ...{ cleans: false, lubricates: false, oily: false },
  ...{ flammable: false, dries: false, hotWork: false },
};

/** The steps that work on the target, and those that wait. */
function eventsOf<S extends Step>(steps: readonly S[], treatmentOf: TreatmentOf<S>, target: string): Event[] {
  return steps.flatMap((step) => {
    const isWorkedOn = step.acts.some((act) => act.kind === "work" && act.target === target);
    if (!isWorkedOn && step.wait === 0) return [];
    return [{ ...(isWorkedOn ? treatmentOf(step) : untouched), step: step.id, waits: step.wait > 0 }];
  });
}

function washedOff(target: string, events: readonly Event[]): OilFault[] {
  const oiled = events.findLastIndex(({ lubricates }) => lubricates);
  const cleaned = events.findLastIndex(({ cleans }) => cleans);
  if (oiled < 0 || cleaned <= oiled) return [];
  return [{ kind: "washed-off", target, step: events[oiled]!.step, cleaned: events[cleaned]!.step }];
}

function onWet(target: string, events: readonly Event[]): OilFault[] {
  const faults: OilFault[] = [];
  let wetSince: string | undefined;
  for (const { step, cleans, lubricates, dries, waits } of events) {
    if (lubricates && !dries && wetSince !== undefined)
      faults.push({ kind: "on-wet", target, step, cleaned: wetSince });
    if (cleans) wetSince = step;
    if (dries || waits) wetSince = undefined;
  }
  return faults;
}

function keptDry(target: string, events: readonly Event[]): OilFault[] {
  let oiled: string | undefined;
  let isCleaned = false;
  for (const { step, cleans, oily, dries, waits } of events) {
    if (cleans) isCleaned = true;
    if (oily) {
      oiled = step;
      isCleaned = false;
    }
    if (isCleaned && (dries || waits)) oiled = undefined;
  }
  return oiled === undefined ? [] : [{ kind: "kept-dry", target, step: oiled }];
}
