/** What a record is a list of. Events are only ever added. */
import type { JsonObject } from "./json.ts";
import type { Digest } from "./release.ts";

interface Common {
  /** SHA-256 of the canonical JSON of all other fields, as `uEi…`. */
  readonly id: Digest;
  /** RFC 3339 with zone, to the millisecond, in UTC: `2026-11-27T19:30:00.000Z`. */
  readonly at: string;
}

interface OfModule {
  readonly module: string;
  readonly revision: number;
}

/** The module was read to its end, by the trainee's own word. */
export interface ReadEvent extends Common, OfModule {
  readonly kind: "read";
}

/** A hazard's sheet was read and understood, by the trainee's own word. */
export interface HazardEvent extends Common {
  readonly kind: "hazard";
  readonly hazard: string;
}

export interface QuizEvent extends Common, OfModule {
  readonly kind: "quiz";
  readonly quiz: Digest;
  /** From 1; the seed of a paper that is not supervised is SHA-256 of owner, quiz digest and this. */
  readonly attempt: number;
  readonly seed: string;
  readonly preferred: readonly string[];
  /** By question id, in the order of the paper; read by the engine as what they are: untrusted. */
  readonly answers: readonly (readonly [string, unknown])[];
  /** What the page said. Whoever reads the record works it out again; null of a supervised sitting. */
  readonly claimed: { readonly score: number; readonly max: number; readonly passed: boolean } | null;
}

export interface PracticeEvent extends Common, OfModule {
  readonly kind: "practice";
  readonly graph: Digest;
  readonly practice: string;
  readonly given: readonly string[];
  readonly claimed: { readonly right: boolean };
}

/** A run on paper: the steps tried, in order. */
export interface RunEvent extends Common, OfModule {
  readonly kind: "run";
  readonly graph: Digest;
  readonly tried: readonly string[];
  readonly claimed: { readonly done: boolean; readonly stops: number };
}

/** A mentor's signed credential: an observation, a sign-off, or "this key goes on for that key". */
export interface CredentialEvent extends Common {
  readonly kind: "observation" | "sign-off" | "new-key";
  readonly credential: JsonObject;
}

/** A programme's signed list of what was withdrawn, as it stood when the trainee fetched it. */
export interface WithdrawalEvent extends Common {
  readonly kind: "withdrawal";
  readonly list: JsonObject;
}

export type RecordEvent =
  | ReadEvent
  | HazardEvent
  | QuizEvent
  | PracticeEvent
  | RunEvent
  | CredentialEvent
  | WithdrawalEvent;
export type EventKind = RecordEvent["kind"];

type WithoutId<Event> = Event extends RecordEvent ? Omit<Event, "id"> : never;
/** An event before its id is worked out. */
export type NewEvent = WithoutId<RecordEvent>;
