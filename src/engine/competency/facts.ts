/** What a trainee's own events come to, gathered in one pass: by module and revision. */
import type { RecordEvent } from "./event.ts";
import { isEvidence, type Rescored, type Verdict } from "./evidence.ts";
import type { Digest } from "./release.ts";

/** Of one revision of a module. */
export interface Facts {
  readonly read: boolean;
  /** The greatest part of the points in a sitting that was passed by the quiz's own rule; and in any. */
  readonly passed: number | undefined;
  readonly best: number | undefined;
  /** A supervised sitting waits to be marked. */
  readonly handedIn: boolean;
  readonly practices: ReadonlySet<string>;
  /** A run on paper was finished without a critical stop. */
  readonly run: boolean;
}

export const noFacts: Facts = {
  read: false,
  passed: undefined,
  best: undefined,
  handedIn: false,
  practices: new Set(),
  run: false,
};

export interface Gathered {
  /** By `revisionKey`. */
  readonly of: ReadonlyMap<string, Facts>;
  readonly hazards: ReadonlySet<string>;
}

export const revisionKey = ({ module, revision }: { readonly module: string; readonly revision: number }) =>
  `${revision} ${module}`;

/** `rescored`: what each piece of evidence comes to, by the id of its event. The order of events makes no difference. O(events). */
export function gather(events: readonly RecordEvent[], rescored: ReadonlyMap<Digest, Rescored>): Gathered {
  const of = new Map<string, Facts>();
  const hazards = new Set<string>();
  for (const event of events) {
    if (event.kind === "hazard") hazards.add(event.hazard);
    if (event.kind !== "read" && !isEvidence(event)) continue;
    const key = revisionKey(event);
    const before = of.get(key) ?? noFacts;
    if (event.kind === "read") of.set(key, { ...before, read: true });
    else {
      const marked = rescored.get(event.id);
      of.set(key, marked?.ok === true ? withVerdict(before, marked.verdict) : before);
    }
  }
  return { of, hazards };
}

function withVerdict(facts: Facts, verdict: Verdict): Facts {
  switch (verdict.kind) {
    case "quiz":
      return {
        ...facts,
        best: greater(facts.best, verdict.fraction),
        passed: verdict.passed ? greater(facts.passed, verdict.fraction) : facts.passed,
      };
    case "handed in":
      return { ...facts, handedIn: true };
    case "practice":
      return verdict.right ? { ...facts, practices: new Set([...facts.practices, verdict.practice]) } : facts;
    case "run":
      return { ...facts, run: facts.run || (verdict.done && verdict.stops === 0) };
  }
}

const greater = (a: number | undefined, b: number): number => Math.max(a ?? 0, b);
