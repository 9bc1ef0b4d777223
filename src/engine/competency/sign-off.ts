/** What a mentor signs, as the programme means it; `credential.ts` puts it into the shape of Open Badges 3.0 and reads it back. */
import type { Level, Outcome } from "./levels.ts";
import type { Digest } from "./release.ts";

interface Signed {
  /** `urn:uuid:…`. */
  readonly id: string;
  /** did:key of the mentor, and their name as the roster shows it. */
  readonly issuer: string;
  readonly issuerName: string;
  /** did:key of the trainee, and the name that the mentor saw. */
  readonly subject: string;
  readonly subjectName: string;
  /** RFC 3339 in UTC. */
  readonly validFrom: string;
  readonly validUntil: string | undefined;
  /** The place of this credential on the mentor's list of withdrawals. */
  readonly statusIndex: number;
}

interface OfRelease {
  readonly module: string;
  readonly title: string;
  readonly revision: number;
  readonly content: Digest;
}

/** One thing that a mentor watched. */
export interface Observation extends Signed, OfRelease {
  readonly kind: "observation";
  readonly outcome: Outcome;
  /** Ids of the phases watched; empty where it was the whole module. */
  readonly phases: readonly string[];
  /** What was seen, or "not yet, because". */
  readonly words: string;
  /** Ids of the steps ticked. */
  readonly ticked: readonly string[];
}

export interface SignOff extends Signed, OfRelease {
  readonly kind: "sign-off";
  readonly level: Level;
  /** The quiz score as a fraction; undefined where there is no quiz. */
  readonly score: number | undefined;
  /** Digests of the events on which it rests: sitting, practices, observations. */
  readonly evidence: readonly { readonly name: string; readonly digest: Digest }[];
  readonly words: string;
}

/** A mentor knows that the holder of `subject` is who held `oldKey`. */
export interface NewKey extends Signed {
  readonly kind: "new-key";
  readonly oldKey: string;
}

export type Statement = Observation | SignOff | NewKey;
