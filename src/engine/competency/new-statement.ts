/** What a mentor is about to say, put together from the record, the module and what they chose; nothing is signed here. */
import type { Assessed } from "./assessed.ts";
import { endOfMonths } from "./calendar.ts";
import { noFacts, revisionKey } from "./facts.ts";
import { readInstant } from "./instant.ts";
import type { Level } from "./levels.ts";
import type { CompetencyRecord } from "./record.ts";
import type { Digest, ReleaseCard } from "./release.ts";
import type { NewKey, Observation, SignOff } from "./sign-off.ts";
import type { Situation } from "./situation.ts";

/** Who signs, when, and what chance has given. */
export interface Occasion {
  /** did:key of the mentor. */
  readonly issuer: string;
  /** RFC 3339 in UTC. */
  readonly now: string;
  /** `urn:uuid:…`, new. */
  readonly id: string;
  readonly statusIndex: number;
}

export interface AboutPerson {
  readonly record: CompetencyRecord;
  readonly assessed: Assessed;
  readonly situation: Situation;
}

/** The name is that of the roster; of a key that is not listed, which may sign nothing, the key itself. */
function signedBy({ issuer, now, id, statusIndex }: Occasion, { record, situation }: AboutPerson) {
  const issuerName = situation.mentors.get(issuer)?.[0]?.name ?? issuer;
  return {
    ...{ id, issuer, issuerName, statusIndex },
    subject: record.owner,
    subjectName: record.name,
    validFrom: now,
    validUntil: undefined,
  };
}

const ofRelease = ({ module, title, revision, content }: ReleaseCard) => ({
  module,
  title,
  revision,
  content,
});

export type Seen = Pick<Observation, "outcome" | "phases" | "words" | "ticked">;

/** `phases`: all of them are written as none, which means the whole module. */
export function newObservation(
  occasion: Occasion,
  about: AboutPerson,
  card: ReleaseCard,
  { outcome, phases, words, ticked }: Seen,
): Observation {
  const isWhole = card.phases.every(({ id }) => phases.includes(id));
  return {
    kind: "observation",
    ...signedBy(occasion, about),
    ...ofRelease(card),
    ...{ outcome, words, ticked, phases: isWhole ? [] : phases },
  };
}

export interface Granted {
  readonly level: Level;
  readonly words: string;
  /** The quiz as a fraction, marked by whoever has the whole of a supervised one; undefined where the record tells. */
  readonly marked: number | undefined;
}

/** It lists all that speaks for it in the record, and ends as the module's rules say. */
export function newSignOff(
  occasion: Occasion,
  about: AboutPerson,
  card: ReleaseCard,
  { level, words, marked }: Granted,
): SignOff {
  const { months } = card.rules;
  const from = readInstant(occasion.now)!;
  const facts = about.assessed.gathered.of.get(revisionKey(card)) ?? noFacts;
  return {
    kind: "sign-off",
    ...signedBy(occasion, about),
    ...ofRelease(card),
    validUntil: months === undefined ? undefined : endOfMonths(from, months, about.situation.rules.timeZone),
    ...{ level, words, score: card.quiz === undefined ? undefined : (facts.passed ?? marked) },
    evidence: evidenceFor(card, about),
  };
}

/** A mentor knows that who holds the record's key is who held the old one. */
export const newKeyStatement = (occasion: Occasion, about: AboutPerson, oldKey: string): NewKey => ({
  kind: "new-key",
  ...signedBy(occasion, about),
  oldKey,
});

type Evidence = SignOff["evidence"][number];

/** Of what a trainee did by themself the last that is right, of each kind; and every observation that counts or only waits to be confirmed. */
function evidenceFor(card: ReleaseCard, { assessed }: AboutPerson): Evidence[] {
  const last = new Map<string, Evidence>();
  for (const event of assessed.events) {
    const marked = assessed.rescored.get(event.id);
    if (!("module" in event) || revisionKey(event) !== revisionKey(card) || marked?.ok !== true) continue;
    const name = nameOf(marked.verdict);
    if (name !== undefined) last.set(name, { name, digest: event.id });
  }
  return [...last.values(), ...observationsFor(card, assessed)];
}

type Marked = Extract<NonNullable<ReturnType<Assessed["rescored"]["get"]>>, { ok: true }>;

/** Undefined of what speaks for nothing. */
function nameOf(verdict: Marked["verdict"]): string | undefined {
  switch (verdict.kind) {
    case "quiz":
      return verdict.passed ? "Quiz" : undefined;
    case "handed in":
      return "Quiz, supervised";
    case "practice":
      return verdict.right ? `Practice ${verdict.practice}` : undefined;
    case "run":
      return verdict.done && verdict.stops === 0 ? "Done on paper" : undefined;
  }
}

function observationsFor(card: ReleaseCard, { judged }: Assessed): Evidence[] {
  return judged.flatMap(({ signed, problems }): Evidence[] => {
    const { statement, day } = signed;
    if (statement.kind !== "observation" || revisionKey(statement) !== revisionKey(card)) return [];
    if (statement.outcome !== "watched" && statement.outcome !== "unaided") return [];
    if (problems.some(({ code }) => code !== "status-list")) return [];
    const digest: Digest = signed.digest;
    return [{ name: `Observation, ${statement.outcome}, by ${statement.issuerName}, ${day}`, digest }];
  });
}
