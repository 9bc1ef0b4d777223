/** What the observations of a module come to. */
import type { Observation } from "./sign-off.ts";
import type { SignedStatement } from "./statements.ts";

export type SignedObservation = SignedStatement<Observation>;

/** Of a phase, or of a whole module that has none. */
export interface Tally {
  readonly phase: string;
  readonly watched: number;
  readonly unaided: number;
  /** Dates on which, and mentors by whom, it was watched or done unaided. */
  readonly days: ReadonlySet<string>;
  readonly mentors: ReadonlySet<string>;
  /** A stop for safety after which it was not watched again. */
  readonly stopped: SignedObservation | undefined;
}

/**
 * Our rule. Each phase is counted by itself; an observation of the whole module counts for every phase. A stop for safety takes
 * back what was watched of the same phases before it: whoever was stopped is watched anew. "Not yet" adds nothing and takes
 * back nothing. `mentorOf` names the person behind a key. O(observations · phases).
 */
export function tallyOf(
  observations: readonly SignedObservation[],
  phases: readonly string[],
  mentorOf: (key: string) => string,
): Tally[] {
  const places = phases.length === 0 ? [wholeModule] : phases;
  const tallies = new Map(places.map((phase) => [phase, fresh(phase, undefined)]));
  for (const observation of observations.toSorted(inTime)) {
    const { phases: named } = observation.statement;
    for (const phase of named.length === 0 ? places : named) {
      const tally = tallies.get(phase);
      if (tally !== undefined) tallies.set(phase, after(tally, observation, mentorOf));
    }
  }
  return [...tallies.values()];
}

const wholeModule = "";

/** By time; of one time a stop comes last, whatever the order of signing. */
export function inTime(a: SignedObservation, b: SignedObservation): number {
  return a.from - b.from || Number(isStop(a)) - Number(isStop(b)) || (a.digest < b.digest ? -1 : 1);
}

const isStop = ({ statement }: SignedObservation): boolean => statement.outcome === "stopped for safety";

const fresh = (phase: string, stopped: Tally["stopped"]): Tally => ({
  ...{ phase, stopped },
  watched: 0,
  unaided: 0,
  days: new Set(),
  mentors: new Set(),
});

function after(tally: Tally, observation: SignedObservation, mentorOf: (key: string) => string): Tally {
  const { outcome, issuer } = observation.statement;
  if (outcome === "not yet") return tally;
  if (outcome === "stopped for safety") return fresh(tally.phase, observation);
  return {
    phase: tally.phase,
    watched: tally.watched + Number(outcome === "watched"),
    unaided: tally.unaided + Number(outcome === "unaided"),
    days: new Set([...tally.days, observation.day]),
    mentors: new Set([...tally.mentors, mentorOf(issuer)]),
    stopped: undefined,
  };
}

/** The last stop that still stands. */
export const stoppedIn = (tallies: readonly Tally[]): SignedObservation | undefined =>
  tallies
    .flatMap(({ stopped }) => stopped ?? [])
    .toSorted(inTime)
    .at(-1);
