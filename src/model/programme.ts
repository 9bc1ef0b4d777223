import type { Mentor, RecordRules, SignOffRules } from "../engine/competency/rules.ts";

/** A thing to look for on the machine before any work: lead paint, a radium dial. */
export interface Condition {
  readonly id: string;
  readonly name: string;
  readonly lookFor: string;
  readonly ifUnknown: string;
}

/** One organisation's settings, from `programme.yaml`. */
export interface Programme {
  readonly name: string;
  readonly place: string | undefined;
  readonly summary: string | undefined;
  readonly language: string;
  readonly units: "metric" | "inch";
  /** Length of a work session in minutes. */
  readonly session: number;
  /** Pass mark of quizzes that state none, as a fraction. */
  readonly pass: number;
  /** Minutes from a sitting of a quiz that was not passed to the next; 0 where one may sit again at once. */
  readonly sitAgain: number;
  readonly conditions: ReadonlyMap<string, Condition>;
  readonly emergency: string | undefined;
  readonly room: Room;
  /** An https address or a tag that names the programme for ever; undefined where it keeps no competency records. */
  readonly identifier: string | undefined;
  /** IANA name: a date of the record means its end there. */
  readonly timeZone: string;
  /** What a sign-off asks for where a module does not ask for more. */
  readonly signOff: SignOffRules;
  readonly lapsedNeeds: RecordRules["lapsedNeeds"];
  readonly mentors: readonly Mentor[];
  readonly soonDays: number;
  /** Lists of names that mean the same, for the search. */
  readonly words: readonly (readonly string[])[];
}

/** What records go by; undefined where the programme keeps none. */
export function recordRulesOf({ identifier, name, ...programme }: Programme): RecordRules | undefined {
  if (identifier === undefined) return undefined;
  const { timeZone, mentors, lapsedNeeds, soonDays } = programme;
  return { identifier, programme: name, timeZone, mentors, lapsedNeeds, soonDays };
}

/** The room in which substances are used indoors. */
export interface Room {
  readonly volumeM3: number;
  readonly celsius: number;
  /** Every source of ignition is kept out of it. */
  readonly noIgnition: boolean;
  /** False where programme.yaml says nothing and a small room is assumed. */
  readonly isStated: boolean;
}
