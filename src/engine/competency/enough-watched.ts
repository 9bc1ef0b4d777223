/** Whether a sign-off bears the score and rests on the observations that its module asks for. */
import { markWords, shareWords } from "../quiz/score-words.ts";
import { t } from "../words.ts";
import { called } from "./checks/words.ts";
import { isUsable, type Judged, type JudgedObservation, type SignedSignOff } from "./judged.ts";
import { mentorNames } from "./mentor-names.ts";
import { observationsMissing } from "./observations-missing.ts";
import { tallyOf } from "./observed.ts";
import { problem } from "./problem.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";
import type { Signable } from "./releases.ts";
import type { Situation } from "./situation.ts";
import type { Missing } from "./state.ts";
import { usedUpBy } from "./used-up.ts";

export interface Watched {
  /** Of the same module and revision. */
  readonly observations: readonly JudgedObservation[];
  /** Sign-offs made before this one, with everything against them. */
  readonly earlier: readonly Judged[];
}

/** By the rules of the release that was signed, as far as it is kept. An observation counts for the day on which it was made. */
export function watchedProblems(
  signed: SignedSignOff,
  watched: Watched,
  situation: Situation,
): RecordProblem[] {
  const release = situation.releases.release(signed.statement, signed.statement.content);
  if (release === undefined) return [];
  const faults = scoreFault(signed, release.hasQuiz, release.rules.pass);
  if (signed.statement.level === "under eye") return faults;
  const missingWith = (passedOver: readonly RecordCode[]) =>
    missingBehind(signed, watched, release, situation, passedOver);
  const missing = missingWith(["lapsed", "status-list"]);
  if (missing.length > 0) return [...faults, problem("evidence", tooLittle(signed, missing))];
  const unsure = missingWith(["lapsed"]).length > 0;
  return unsure ? [...faults, problem("status-list", unconfirmed(signed))] : faults;
}

function missingBehind(
  signed: SignedSignOff,
  { observations, earlier }: Watched,
  { phases, rules }: Signable,
  situation: Situation,
  passedOver: readonly RecordCode[],
): Missing[] {
  const after = usedUpBy(signed, earlier);
  const seen = observations.filter(
    ({ signed: { day }, problems }) => isUsable(problems, passedOver) && day <= signed.day && day > after,
  );
  const tallies = tallyOf(
    seen.map((each) => each.signed),
    phases,
    mentorNames(situation),
  );
  return observationsMissing(tallies, rules);
}

function scoreFault(signed: SignedSignOff, hasQuiz: boolean, pass: number): RecordProblem[] {
  const { score } = signed.statement;
  if (!hasQuiz || (score !== undefined && score >= pass)) return [];
  const found = score === undefined ? t`no quiz score` : t`a quiz score of ${shareWords(score)}`;
  return [
    problem(
      "evidence",
      t`${called(signed)} bears ${found}; the module asks for ${markWords(pass)}. Sit the quiz and have it signed again.`,
    ),
  ];
}

const words: { readonly [Kind in Missing["kind"]]?: (missing: Missing) => string } = {
  watched: (missing) => t`watched ${ofNeeded(missing)}`,
  unaided: (missing) => t`unaided ${ofNeeded(missing)}`,
  occasions: (missing) => t`on ${ofNeeded(missing)} days`,
  mentors: (missing) => t`by ${ofNeeded(missing)} mentors`,
  phase: (missing) => (missing.kind === "phase" ? t`phase ${missing.phase}` : ""),
};

const ofNeeded = (missing: Missing): string =>
  "has" in missing ? t`${missing.has} of ${missing.needs}` : "";

const tooLittle = (signed: SignedSignOff, missing: readonly Missing[]): string =>
  t`${called(signed)} lacks observations that the module asks for: ${missing
    .map((each) => words[each.kind]?.(each) ?? each.kind)
    .join(", ")}. Have what is missing watched, and the sign-off made again.`;

const unconfirmed = (signed: SignedSignOff): string =>
  t`${called(signed)} rests on observations that can't be confirmed, because the list of what their mentor has withdrawn is missing or out of date. Get the newest lists from the programme's site.`;
