import type { Mentor, SignOffRules } from "../../engine/competency/rules.ts";
import { usualRules } from "../../engine/competency/rules-of.ts";
import type { MentorData, ModuleSignOffData } from "../schema/sign-off.ts";

/** What holds where nothing is said. The pass mark is then the quiz's own. */
export const defaultSignOff: SignOffRules = { ...usualRules, pass: 0 };

/** The field in which each rule is written. */
export const signOffFields = {
  pass: "pass",
  practice: "practice",
  dryRun: "dry-run",
  watched: "watched",
  unaided: "unaided",
  occasions: "occasions",
  mentors: "mentors",
  months: "months",
  newRevision: "new-revision",
  minimumAge: "minimum-age",
  induction: "induction",
  mentorPresent: "mentor-present",
  traineesPerMentor: "trainees-per-mentor",
} as const satisfies Readonly<Record<keyof SignOffRules, keyof ModuleSignOffData>>;

/** Those rules that are written. */
export function makeSignOff(data: ModuleSignOffData = {}): Partial<SignOffRules> {
  const written = Object.entries(signOffFields).map(([rule, field]) => [rule, data[field]] as const);
  return Object.fromEntries(written.filter(([, value]) => value !== undefined));
}

export function makeMentor({ id, name, key, from, to, compromised, keep, ...data }: MentorData): Mentor {
  return {
    ...{ id, name, key, from, to, compromised, keep },
    maySign: data["may-sign"],
    highestLevel: data["highest-level"],
    ownRecords: data["own-records"],
  };
}
