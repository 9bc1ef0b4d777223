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
