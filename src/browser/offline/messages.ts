/** What pages and the worker say to each other. */

/** Asked of a worker that waits: to answer for the site from now on. */
export const take = "take";
/** Asked of the worker that answers: how much is kept. The answer is a `HowFar`. */
export const howFar = "how far";

export interface HowFar {
  readonly version: string;
  readonly kept: number;
  readonly of: number;
  readonly bytes: number;
}

/** How it stands with keeping: told to pages while it goes on, and kept where it has come to an end before the last file. */
export interface Standing {
  readonly kept: number;
  readonly of: number;
  /** Undefined while it goes on. */
  readonly trouble?: Trouble;
}

export type Trouble =
  /** The browser gives no more room. */
  | { readonly kind: "full" }
  /** The network or the host has failed at a file. */
  | { readonly kind: "not-coming"; readonly path: string }
  /** A file is not the one of the list: the site is being changed, or its host changes files. */
  | { readonly kind: "differs"; readonly path: string };
