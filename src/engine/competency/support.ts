/** Whether a sign-off rests on what it must rest on: "a reason never replaces missing evidence". */
import { t } from "../words.ts";
import type { Assessed } from "./assessed.ts";
import { called } from "./checks/words.ts";
import { watchedProblems } from "./enough-watched.ts";
import { revisionKey } from "./facts.ts";
import { grouped } from "./grouped.ts";
import {
  isObservation,
  isSignOff,
  type Judged,
  type JudgedObservation,
  type SignedSignOff,
} from "./judged.ts";
import { type Known, knownEvidence } from "./known-evidence.ts";
import { problem } from "./problem.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";
import type { Situation } from "./situation.ts";

/** A sign-off with everything against it, its evidence too. It counts where there is nothing. */
export type JudgedSignOff = Judged<SignedSignOff>;

/** All sign-offs of a record, each held against the evidence in it. O(events + sign-offs · observations of a module). */
export function judgeSignOffs(assessed: Assessed, situation: Situation): JudgedSignOff[] {
  const known = knownEvidence(assessed);
  const observations = grouped(assessed.judged.filter(isObservation), ({ signed }) =>
    revisionKey(signed.statement),
  );
  const modules = grouped(assessed.judged.filter(isSignOff), ({ signed }) => revisionKey(signed.statement));
  return [...modules].flatMap(([key, signOffs]) =>
    judgeInTurn(signOffs, observations.get(key) ?? [], known, situation),
  );
}

/** Of one module at one revision, by time: what was signed before uses up what was watched. */
function judgeInTurn(
  signOffs: readonly JudgedSignOff[],
  observations: readonly JudgedObservation[],
  known: Known,
  situation: Situation,
): JudgedSignOff[] {
  const done: JudgedSignOff[] = [];
  for (const { signed, problems } of signOffs.toSorted(inTime)) {
    const watched = { observations, earlier: done };
    const more = isSettled(problems)
      ? []
      : [...listedProblems(signed, known), ...watchedProblems(signed, watched, situation)];
    done.push({ signed, problems: withoutEcho(problems, more) });
  }
  return done;
}

const inTime = ({ signed: a }: JudgedSignOff, { signed: b }: JudgedSignOff): number =>
  a.from - b.from || (a.digest < b.digest ? -1 : 1);

/** A statement that can't be confirmed by itself is told once: that what it rests on can't be either adds nothing. */
function withoutEcho(own: readonly RecordProblem[], more: readonly RecordProblem[]): RecordProblem[] {
  const isUnconfirmed = own.some(({ code }) => code === "status-list");
  return [...own, ...more.filter(({ code }) => !(isUnconfirmed && code === "status-list"))];
}

/** Of what was withdrawn, or signed by someone with no right to, or about another person, there is no more to say. */
const isSettled = (problems: readonly RecordProblem[]): boolean =>
  problems.some(({ code }) => settling.has(code));
const settling: ReadonlySet<RecordCode> = new Set([
  "withdrawn",
  "issuer-unlisted",
  "issuer-compromised",
  "not-allowed",
  "self-signed",
  "subject-mismatch",
] as const);

/** Everything that it lists must be there, and add up. */
function listedProblems(signed: SignedSignOff, known: Known): RecordProblem[] {
  return signed.statement.evidence.flatMap(({ name, digest }) => {
    const speaks = known(digest);
    if (speaks === true) return [];
    const why = speaks === undefined ? t`which is not in this record` : t`which does not add up`;
    return [
      problem(
        "evidence",
        t`${called(signed)} rests on "${name}" (${digest}), ${why}. Bring the trainee's other files together with this one; if it is lost, have it done and signed again.`,
      ),
    ];
  });
}
