/** What a programme asks before it lets someone work alone, and who may say so. From `programme.yaml` and modules. */
import type { Level } from "./levels.ts";

/** What a sign-off at level "alone" needs. Of a programme's and a module's own rules the stricter holds, field by field. */
export interface SignOffRules {
  /** The pass mark, as a fraction. */
  readonly pass: number;
  /** Every practice of the module put right. */
  readonly practice: boolean;
  /** The whole procedure performed on paper without a critical stop. */
  readonly dryRun: boolean;
  /** How often it was watched with help allowed, and how often unaided, at least. */
  readonly watched: number;
  readonly unaided: number;
  /** Of the observations that count: on how many days, and by how many mentors, at least. */
  readonly occasions: number;
  readonly mentors: number;
  /** How long a sign-off holds; undefined where it does not lapse. */
  readonly months: number | undefined;
  /** Of a sign-off on an earlier revision: it holds until it lapses, or it must be made again. */
  readonly newRevision: "holds" | "again";
  /** Years of age, and other things that the mentor makes sure of, in words. Nothing computes them: nobody's age is recorded. */
  readonly minimumAge: number | undefined;
  readonly induction: string | undefined;
  /** A mentor must be in the room even for who is signed off alone; how many trainees one mentor may watch over. */
  readonly mentorPresent: boolean;
  readonly traineesPerMentor: number | undefined;
}

export interface Mentor {
  readonly id: string;
  /** As the roster shows it. */
  readonly name: string;
  /** did:key. */
  readonly key: string;
  /** Ids of modules, or all of them. */
  readonly maySign: "all" | readonly string[];
  readonly highestLevel: Level;
  /** Dates, YYYY-MM-DD, both included. */
  readonly from: string;
  readonly to: string | undefined;
  /** From this date the key is in other hands: only the digests in `keep` count. */
  readonly compromised: string | undefined;
  /** Digests of credentials that count although the key is compromised. */
  readonly keep: readonly string[];
  /** The keys of their own records, which they can't sign for. */
  readonly ownRecords: readonly string[];
}

/** Of the whole programme. */
export interface RecordRules {
  /** An https address or a tag (RFC 4151) that names the programme for ever. */
  readonly identifier: string;
  readonly programme: string;
  /** IANA name; a date means its end there. */
  readonly timeZone: string;
  readonly mentors: readonly Mentor[];
  /** Whether a lapsed sign-off on a needed module suspends what builds on it. */
  readonly lapsedNeeds: "suspend" | "keep";
  /** Days before a sign-off lapses in which it is said so. */
  readonly soonDays: number;
}
