/** An edition of a site: every file of it as one build made them, by which it is kept on a device. */

/** Path from the site's folder, the first 128 bits of its SHA-256 in base64url, its size in bytes. */
export type EditionFile = readonly [path: string, digest: string, bytes: number];

export interface Edition {
  readonly files: readonly EditionFile[];
}

/** What the worker is told by the line that the build puts before it: the digest of the list's text. */
export type EditionGlobal = { benchwrightEdition?: string };

/** The file of an edition's list, from the site's folder. */
export const editionFile = (version: string): string => `offline-${version}.json`;

/** The script that answers for the site where the network is away; its folder is what it may answer for. */
export const workerFile = "worker.js";

/**
 * Up to so many bytes an edition is kept whole at the first visit. A larger one would use up a visitor's mobile data and
 * the room that a phone gives to a site: its modules are kept when they are first opened, or all of them when asked for.
 */
export const keptAtOnce = 50_000_000;

/** The page for an address that is not kept, where the network is away. */
export const awayPage = "away/";
