/** A module as evidence refers to it: kept by digest, so that old answers can be marked again. Plain JSON. */
import type { PackedProcedure } from "../procedure/packed.ts";
import type { Precedence } from "../procedure/precedence.ts";
import type { Quiz } from "../quiz/quiz.ts";
import type { SignOffRules } from "./rules.ts";

/** `uEi…`: multibase base64url of the multihash SHA-256, as `digestMultibase` of Open Badges. */
export type Digest = string;

export interface ReleasedPractice {
  readonly id: string;
  readonly title: string;
  /** Of the canonical JSON of `graph`, `mixedIn` and the titles. */
  readonly digest: Digest;
  readonly graph: Precedence;
  readonly mixedIn: readonly string[];
}

export interface ReleasedQuiz {
  /** Of the canonical JSON of the public part: without keys where it is supervised. */
  readonly digest: Digest;
  /** Undefined where the quiz is supervised: whoever holds the content folder marks it. */
  readonly quiz: Quiz | undefined;
  readonly supervised: boolean;
}

export interface ReleasedStep {
  readonly id: string;
  readonly title: string;
  readonly critical: boolean;
  readonly check: string | undefined;
  readonly phase: string | undefined;
}

export interface Release {
  readonly module: string;
  readonly title: string;
  readonly summary: string;
  readonly revision: number;
  /** Of what the author wrote of this module; each revision accepts a list of them. */
  readonly content: Digest;
  readonly needs: readonly string[];
  /** Ids and titles of the hazards that are to be read and acknowledged. */
  readonly hazards: readonly { readonly id: string; readonly title: string }[];
  readonly steps: readonly ReleasedStep[];
  readonly phases: readonly { readonly id: string; readonly title: string }[];
  readonly asLeft: readonly { readonly check: string; readonly limit: string | undefined }[];
  readonly quiz: ReleasedQuiz | undefined;
  readonly practices: readonly ReleasedPractice[];
  /** Of the whole procedure on paper; undefined where there are no steps. */
  readonly run:
    | { readonly digest: Digest; readonly precedence: Precedence; readonly procedure: PackedProcedure }
    | undefined;
  readonly rules: SignOffRules;
}

/** Without what only re-scoring needs: light enough to have all of them on one page. */
export type ReleaseCard = Omit<Release, "quiz" | "practices" | "run"> & {
  readonly quiz: Pick<ReleasedQuiz, "digest" | "supervised"> | undefined;
  readonly practices: readonly Pick<ReleasedPractice, "id" | "title" | "digest">[];
  readonly run: { readonly digest: Digest } | undefined;
  /** Content digests accepted for each revision, from `revisions.yaml`; the present one among them. */
  readonly revisions: readonly AcceptedRevision[];
};

/** A row of `revisions.yaml`. */
export interface AcceptedRevision {
  readonly revision: number;
  readonly content: readonly Digest[];
  /** The programme has taken it back: from this date (YYYY-MM-DD) on no sign-off and no observation on it counts. */
  readonly withdrawn?: { readonly from: string; readonly because: string } | undefined;
}
