/** How a person stands with one module. */
import { daysBetween, lastDay } from "./calendar.ts";
import { type Gathered, noFacts, revisionKey } from "./facts.ts";
import type { JudgedObservation } from "./judged.ts";
import { mentorNames } from "./mentor-names.ts";
import { needsMissing, needsSuspending } from "./needs.ts";
import { observationsMissing } from "./observations-missing.ts";
import { inTime, type SignedObservation, stoppedIn, tallyOf } from "./observed.ts";
import { isAlone, pastSignOff } from "./past-sign-off.ts";
import { presentSignOff } from "./present-sign-off.ts";
import { readiness } from "./readiness.ts";
import type { ReleaseCard } from "./release.ts";
import type { Situation } from "./situation.ts";
import type { Missing, ModuleState, Standing } from "./state.ts";
import type { JudgedSignOff } from "./support.ts";
import { theoryMissing } from "./theory-missing.ts";
import { usedUpBy } from "./used-up.ts";

/** What a person has on a module. */
export interface OwnEvidence {
  /** On any revision. */
  readonly signOffs: readonly JudgedSignOff[];
  /** On the present revision. */
  readonly observations: readonly JudgedObservation[];
  readonly gathered: Gathered;
  /** How they stand with modules that this one may need. */
  readonly states: ReadonlyMap<string, ModuleState>;
}

interface Found {
  readonly standing: Standing;
  readonly missing: readonly Missing[];
  readonly signOff: JudgedSignOff | undefined;
}

/** O(sign-offs + observations · phases). */
export function standingWith(card: ReleaseCard, own: OwnEvidence, situation: Situation): ModuleState {
  const present = presentSignOff(own.signOffs);
  const { standing, missing, signOff } =
    present !== undefined && isAlone(present.signed.statement.level)
      ? withSignOff(card, own, situation, present)
      : withoutSignOff(card, own, situation, present);
  return {
    module: card.module,
    ...{ standing, missing },
    level: signOff?.signed.statement.level,
    revision: signOff?.signed.statement.revision,
    until: lastDayOf(signOff, situation),
    stopped: stoppedOn(card, own, present),
    mentors: mentorsOf(own, signOff, situation),
  };
}

function withSignOff(
  card: ReleaseCard,
  own: OwnEvidence,
  situation: Situation,
  signOff: JudgedSignOff,
): Found {
  const suspending = needsSuspending(card, own.states, situation.rules);
  if (suspending.length > 0) return { standing: "suspended", missing: suspending, signOff };
  if (!isSoon(signOff, situation)) return { standing: "signed off", missing: [], signOff };
  return { standing: "lapses soon", missing: allMissing(card, own, situation), signOff };
}

function isSoon(signOff: JudgedSignOff, situation: Situation): boolean {
  const until = lastDayOf(signOff, situation);
  return until !== undefined && daysBetween(situation.on, until) <= situation.rules.soonDays;
}

function lastDayOf(signOff: JudgedSignOff | undefined, { rules }: Situation): string | undefined {
  const until = signOff?.signed.until;
  return until === undefined ? undefined : lastDay(until, rules.timeZone);
}

/** `underEye`: the sign-off at that level, where there is one. */
function withoutSignOff(
  card: ReleaseCard,
  own: OwnEvidence,
  situation: Situation,
  underEye: JudgedSignOff | undefined,
): Found {
  const past = pastSignOff(own.signOffs, situation.releases);
  if (past?.standing === "unconfirmed") return { ...past, missing: [] };
  const missing = allMissing(card, own, situation);
  if (past !== undefined) return { ...past, missing };
  return { standing: standingOnTheWay(card, own, missing), missing, signOff: underEye };
}

function standingOnTheWay(card: ReleaseCard, own: OwnEvidence, missing: readonly Missing[]): Standing {
  const isBegun =
    own.gathered.of.has(revisionKey(card)) || own.observations.length > 0 || own.signOffs.length > 0;
  if (!isBegun) return "not begun";
  const ready = readiness(missing);
  if (ready === undefined) return "under way";
  return ready === "watching" ? "ready to be watched" : "ready to be signed";
}

/** Before a mentor may sign at level "alone", again where it was signed before. */
function allMissing(card: ReleaseCard, own: OwnEvidence, situation: Situation): Missing[] {
  const { of, hazards } = own.gathered;
  const signOffs = own.signOffs.filter(({ signed }) => signed.statement.revision === card.revision);
  const after = usedUpBy({ statement: { level: "alone" }, day: endOfTime }, signOffs);
  const seen = seenIn(own).filter(({ day }) => day > after);
  const tallies = tallyOf(seen, phasesOf(card), mentorNames(situation));
  return [
    ...needsMissing(card, own.states),
    ...theoryMissing(card, of.get(revisionKey(card)) ?? noFacts, hazards),
    ...observationsMissing(tallies, card.rules),
  ];
}

/** Later than any date. */
const endOfTime = "9999-12-31";

/** Observations that count, and stops that can't be confirmed: it is safer to believe those. */
const seenIn = ({ observations }: OwnEvidence): SignedObservation[] =>
  observations
    .filter(
      ({ signed, problems }) =>
        problems.length === 0 ||
        (signed.statement.outcome === "stopped for safety" &&
          problems.every(({ code }) => code === "status-list")),
    )
    .map(({ signed }) => signed);

const phasesOf = ({ phases }: ReleaseCard): string[] => phases.map(({ id }) => id);

function stoppedOn(card: ReleaseCard, own: OwnEvidence, present: JudgedSignOff | undefined) {
  const stop = stoppedIn(tallyOf(seenIn(own), phasesOf(card), (key) => key));
  const isSignedSince = stop !== undefined && present !== undefined && present.signed.from >= stop.from;
  return isSignedSince ? undefined : stop?.day;
}

function mentorsOf(own: OwnEvidence, signOff: JudgedSignOff | undefined, situation: Situation): string[] {
  const keys = [...(signOff === undefined ? [] : [signOff.signed]), ...seenIn(own).sort(inTime)];
  return [...new Set(keys.map(({ statement }) => mentorNames(situation)(statement.issuer)))];
}
