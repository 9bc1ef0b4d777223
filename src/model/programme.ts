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
  readonly conditions: ReadonlyMap<string, Condition>;
  readonly emergency: string | undefined;
}
