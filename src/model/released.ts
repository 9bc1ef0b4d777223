/** What a programme keeps of what was released and withdrawn, so that records can be checked long afterwards. */
import type { JsonObject } from "../engine/competency/json.ts";
import type { AcceptedRevision, Digest, Release } from "../engine/competency/release.ts";

/** The contents under which each revision of a module was released, from its `revisions.yaml`. */
export interface Revisions {
  readonly module: string;
  readonly path: string;
  /** In rising order. */
  readonly revisions: readonly AcceptedRevision[];
}

/** A release as it was kept: `released/<revision>-<digest>.json`. */
export interface KeptRelease {
  readonly path: string;
  readonly release: Release;
  /** The file: canonical JSON, whose digest its name bears. */
  readonly text: string;
}

/** A mentor's signed list of what they have withdrawn: `withdrawals/<mentor>.json`. */
export interface Withdrawals {
  readonly mentor: string;
  readonly path: string;
  readonly list: JsonObject;
}

/** Where they lie in the content folder; lists of withdrawals in the site, too. */
export const revisionsPath = (module: string): string => `modules/${module}/revisions.yaml`;
export const releasePath = (module: string, revision: number, digest: Digest): string =>
  `modules/${module}/released/${revision}-${digest}.json`;
export const withdrawalsPath = (mentor: string): string => `withdrawals/${mentor}.json`;
