/** Whether a sign-off rests on what it must rest on: "a reason never replaces missing evidence". */
import { type Assessed, type Judged, statementKey } from "./assessed.ts";
import { called } from "./checks/words.ts";
import { revisionKey } from "./facts.ts";
import { grouped } from "./grouped.ts";
import { levels } from "./levels.ts";
import { mentorNames } from "./mentor-names.ts";
import { observationsMissing } from "./observations-missing.ts";
import { type SignedObservation, tallyOf } from "./observed.ts";
import { problem } from "./problem.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";
import type { Digest } from "./release.ts";
import type { SignOff } from "./sign-off.ts";
import type { Situation } from "./situation.ts";
import type { Missing } from "./state.ts";
import type { SignedStatement } from "./statements.ts";

export type SignedSignOff = SignedStatement<SignOff>;

/** A sign-off with everything against it, its evidence too. It counts where there is nothing. */
export interface JudgedSignOff {
  readonly signed: SignedSignOff;
  readonly problems: readonly RecordProblem[];
}

/** All sign-offs of a record, each held against the evidence in it. O(statements · log statements + observations · sign-offs of a module). */
export function judgeSignOffs(assessed: Assessed, situation: Situation): JudgedSignOff[] {
  const known = knownEvidence(assessed);
  const observations = grouped(assessed.judged.filter(isObservation), ({ signed }) =>
    revisionKey(signed.statement),
  );
  const modules = grouped(assessed.judged.filter(isSignOff), ({ signed }) => revisionKey(signed.statement));
  return [...modules].flatMap(([key, signOffs]) =>
    inTime(signOffs).map((each, place, all) => {
      const watched = { observations: observations.get(key) ?? [], earlier: all.slice(0, place) };
      const more = isSettled(each)
        ? []
        : [...listed(each.signed, known), ...notWatched(each.signed, watched, situation)];
      return { signed: each.signed, problems: withoutEcho(each.problems, more) };
    }),
  );
}

/** A statement that can't be confirmed by itself is told once: that what it rests on can't be either adds nothing. */
function withoutEcho(own: readonly RecordProblem[], more: readonly RecordProblem[]): RecordProblem[] {
  const isUnconfirmed = own.some(({ code }) => code === "status-list");
  return [...own, ...more.filter(({ code }) => !(isUnconfirmed && code === "status-list"))];
}

/** Of what was withdrawn, or signed by someone with no right to, or about another person, there is no more to say. */
const isSettled = ({ problems }: Judged): boolean => problems.some(({ code }) => settling.has(code));
const settling: ReadonlySet<RecordCode> = new Set([
  "withdrawn",
  "issuer-unlisted",
  "issuer-compromised",
  "not-allowed",
  "self-signed",
  "subject-mismatch",
] as const);

type Of<Signed extends SignedStatement> = Judged & { readonly signed: Signed };
export type JudgedObservation = Of<SignedObservation>;
export const isObservation = (judged: Judged): judged is JudgedObservation =>
  judged.signed.statement.kind === "observation";
const isSignOff = (judged: Judged): judged is Of<SignedSignOff> =>
  judged.signed.statement.kind === "sign-off";

const inTime = (list: readonly Of<SignedSignOff>[]) =>
  list.toSorted(({ signed: a }, { signed: b }) => a.from - b.from || (a.digest < b.digest ? -1 : 1));

/** What evidence there is, by every digest under which it may be listed: whether it speaks for the sign-off. */
function knownEvidence({ events, read, rescored, judged }: Assessed): ReadonlyMap<Digest, boolean> {
  const known = new Map(events.map(({ id }) => [id, true]));
  for (const [id, marked] of rescored) known.set(id, marked.ok);
  const speaks = new Map(
    judged.map(({ signed, problems }) => [
      statementKey(signed),
      isUsable(problems, ["lapsed", "status-list"]),
    ]),
  );
  for (const [id, each] of read) {
    const counts = each.ok && speaks.get(statementKey(each.signed)) === true;
    known.set(id, counts);
    if (each.ok) known.set(each.signed.digest, counts);
  }
  return known;
}

const isUsable = (problems: readonly RecordProblem[], ignored: readonly RecordCode[]): boolean =>
  problems.every(({ code }) => ignored.includes(code));

function listed(signed: SignedSignOff, known: ReadonlyMap<Digest, boolean>): RecordProblem[] {
  return signed.statement.evidence.flatMap(({ name, digest }) => {
    const speaks = known.get(digest);
    if (speaks === true) return [];
    const why = speaks === undefined ? "which is not in this record" : "which does not add up";
    return [
      problem(
        "evidence",
        `${called(signed)} rests on "${name}" (${digest}), ${why}. Bring the trainee's other files together with this one; if it is lost, have it done and signed again.`,
      ),
    ];
  });
}

interface Watched {
  /** Of the same module and revision. */
  readonly observations: readonly JudgedObservation[];
  /** Sign-offs made before this one. */
  readonly earlier: readonly Of<SignedSignOff>[];
}

/** By the rules of the release that was signed, as far as it is kept. An observation counts for the day on which it was made. */
function notWatched(signed: SignedSignOff, watched: Watched, situation: Situation): RecordProblem[] {
  const { statement } = signed;
  const release = situation.releases.release(statement, statement.content);
  if (release === undefined) return [];
  const faults = scoreFault(signed, release.hasQuiz, release.rules.pass);
  if (statement.level === "under eye") return faults;
  const after = usedUpBy(signed, watched.earlier);
  const missingWith = (ignored: readonly RecordCode[]): Missing[] => {
    const seen = watched.observations.filter(
      (each) => isUsable(each.problems, ignored) && each.signed.day <= signed.day && each.signed.day > after,
    );
    const tallies = tallyOf(
      seen.map((each) => each.signed),
      release.phases,
      mentorNames(situation),
    );
    return observationsMissing(tallies, release.rules);
  };
  const missing = missingWith(["lapsed", "status-list"]);
  if (missing.length > 0) return [...faults, problem("evidence", tooLittle(signed, missing))];
  const unsure = missingWith(["lapsed"]).length > 0;
  return unsure ? [...faults, problem("status-list", unconfirmed(signed))] : faults;
}

function scoreFault(signed: SignedSignOff, hasQuiz: boolean, pass: number): RecordProblem[] {
  const { score } = signed.statement;
  if (!hasQuiz || (score !== undefined && score >= pass)) return [];
  const found = score === undefined ? "no quiz score" : `a quiz score of ${Math.floor(score * 100)} %`;
  return [
    problem(
      "evidence",
      `${called(signed)} bears ${found}; the module asks for ${Math.ceil(pass * 100)} %. Sit the quiz and have it signed again.`,
    ),
  ];
}

/**
 * The date up to which observations are used up: that of the last sign-off at this level or a higher one on an earlier day. To
 * renew a sign-off, or to win back one that was withdrawn, one is watched again. Sign-offs that never held use nothing up.
 */
export function usedUpBy(
  { statement, day }: { readonly statement: Pick<SignOff, "level">; readonly day: string },
  earlier: readonly Judged[],
): string {
  const days = earlier
    .filter(
      ({ signed, problems }) =>
        signed.statement.kind === "sign-off" &&
        levels.indexOf(signed.statement.level) >= levels.indexOf(statement.level) &&
        signed.day < day &&
        isUsable(problems, ["lapsed", "status-list", "withdrawn"]),
    )
    .map(({ signed }) => signed.day);
  return days.sort().at(-1) ?? "";
}

const words: { readonly [Kind in Missing["kind"]]?: (missing: Missing) => string } = {
  watched: (missing) => `watched ${ofNeeded(missing)}`,
  unaided: (missing) => `unaided ${ofNeeded(missing)}`,
  occasions: (missing) => `on ${ofNeeded(missing)} days`,
  mentors: (missing) => `by ${ofNeeded(missing)} mentors`,
  phase: (missing) => (missing.kind === "phase" ? `phase ${missing.phase}` : ""),
};

const ofNeeded = (missing: Missing): string => ("has" in missing ? `${missing.has} of ${missing.needs}` : "");

const tooLittle = (signed: SignedSignOff, missing: readonly Missing[]): string =>
  `${called(signed)} lacks observations that the module asks for: ${missing
    .map((each) => words[each.kind]?.(each) ?? each.kind)
    .join(", ")}. Have what is missing watched, and the sign-off made again.`;

const unconfirmed = (signed: SignedSignOff): string =>
  `${called(signed)} rests on observations that can't be confirmed, because the list of what their mentor has withdrawn is missing or out of date. Get the newest lists from the programme's site.`;
