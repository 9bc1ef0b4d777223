/** How a person stands with a module on a date. */
import type { Level } from "./levels.ts";

/** What is still missing before a mentor may sign. */
export type Missing =
  | { readonly kind: "reading" }
  | { readonly kind: "hazard"; readonly hazard: string }
  | { readonly kind: "quiz"; readonly best: number | undefined; readonly pass: number }
  /** `sat`: a sitting was handed in, and is for a mentor to mark who has the whole quiz. */
  | { readonly kind: "supervised-quiz"; readonly sat: boolean }
  | { readonly kind: "practice"; readonly practice: string }
  | { readonly kind: "dry-run" }
  | {
      readonly kind: "watched" | "unaided" | "occasions" | "mentors";
      readonly has: number;
      readonly needs: number;
    }
  | { readonly kind: "phase"; readonly phase: string }
  | { readonly kind: "module"; readonly module: string };

/**
 * Of a person with no sign-off, or none above "under eye", the first four. Only "signed off" and "lapses soon" let a person work
 * alone. "unconfirmed": there is a sign-off, and no list of withdrawals in date to say that it still holds. "suspended": there
 * is one, and a module that it needs does not hold.
 */
export const standings = [
  "not begun",
  "under way",
  "ready to be watched",
  "ready to be signed",
  "signed off",
  "lapses soon",
  "lapsed",
  "withdrawn",
  "earlier revision",
  "suspended",
  "unconfirmed",
] as const;
export type Standing = (typeof standings)[number];

export interface ModuleState {
  readonly module: string;
  readonly standing: Standing;
  /**
   * Before a mentor may sign at level "alone", in the order of work: needed modules, reading, hazards, quiz, practice,
   * observations. Empty of who is signed off; of "lapses soon" and "lapsed" what renewing takes.
   */
  readonly missing: readonly Missing[];
  /** Of the sign-off that counts, or the last that did; `revision` is the one that it was signed on. */
  readonly level: Level | undefined;
  readonly revision: number | undefined;
  /** YYYY-MM-DD in the programme's time zone: the last day on which it holds; undefined where it does not lapse. */
  readonly until: string | undefined;
  /** YYYY-MM-DD: last stopped for safety then, and neither watched again nor signed off since. */
  readonly stopped: string | undefined;
  /** Ids of the mentors who signed or watched: who signed first, then by time. */
  readonly mentors: readonly string[];
}
