/** How a person stands with a module on a date. */
import type { Level } from "./levels.ts";

/** What is still missing before a mentor may sign. */
export type Missing =
  | { readonly kind: "reading" }
  | { readonly kind: "hazard"; readonly hazard: string }
  | { readonly kind: "quiz"; readonly best: number | undefined; readonly pass: number }
  | { readonly kind: "supervised-quiz" }
  | { readonly kind: "practice"; readonly practice: string }
  | { readonly kind: "dry-run" }
  | {
      readonly kind: "watched" | "unaided" | "occasions" | "mentors";
      readonly has: number;
      readonly needs: number;
    }
  | { readonly kind: "phase"; readonly phase: string }
  | { readonly kind: "module"; readonly module: string };

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
] as const;
export type Standing = (typeof standings)[number];

export interface ModuleState {
  readonly module: string;
  readonly standing: Standing;
  /** In the order of work: reading, hazards, quiz, practice, observations. Empty where nothing is. */
  readonly missing: readonly Missing[];
  /** Of the sign-off that counts, or the last that did. */
  readonly level: Level | undefined;
  /** YYYY-MM-DD in the programme's time zone: the last day on which it holds; undefined where it does not lapse. */
  readonly until: string | undefined;
  /** Ids of the mentors who signed or watched. */
  readonly mentors: readonly string[];
}
