/** Where editions are kept: a cache for each, named by the site's path and the digest of its list. */
import { type Edition, editionFile } from "../../model/edition.ts";
import type { Standing } from "./messages.ts";

/** A folder of an origin may hold a site beside those of other folders. */
const prefix = (root: string): string => `benchwright ${new URL(root).pathname} `;

export const cacheName = (root: string, version: string): string => `${prefix(root)}${version}`;

/** The address of a file under which it is kept. */
export const addressIn = (root: string, path: string): string => new URL(encodeURI(path), root).href;

/** Digests of the lists of the editions of which something is kept. */
export async function keptVersions(caches: CacheStorage, root: string): Promise<string[]> {
  const names = (await caches.keys()).filter((name) => name.startsWith(prefix(root)));
  return names.map((name) => name.slice(prefix(root).length)).filter((version) => version !== notes);
}

/** The list of an edition as it is kept; undefined where it is not. */
export async function keptEdition(
  caches: CacheStorage,
  root: string,
  version: string,
): Promise<Edition | undefined> {
  const address = addressIn(root, editionFile(version));
  const found = await caches.match(address, { cacheName: cacheName(root, version) });
  return found === undefined ? undefined : ((await found.json()) as Edition);
}

/** The cache of what is noted beside the editions; no digest is so short. */
const notes = "notes";

interface Notes {
  /** The edition whose worker answers. */
  readonly current: string;
  /** Pages that began with another edition than the current one, by their ids. */
  readonly begun: Readonly<Record<string, string>>;
  /** How keeping has ended, where not well. */
  readonly standing: Standing;
}

/** Reads one note; undefined where there is none. */
export async function readNote<Name extends keyof Notes>(
  caches: CacheStorage,
  root: string,
  name: Name,
): Promise<Notes[Name] | undefined> {
  const found = await caches.match(addressIn(root, name), { cacheName: cacheName(root, notes) });
  return found === undefined ? undefined : ((await found.json()) as Notes[Name]);
}

/** Undefined takes the note away. */
export async function writeNote<Name extends keyof Notes>(
  caches: CacheStorage,
  root: string,
  name: Name,
  value: Notes[Name] | undefined,
): Promise<void> {
  const cache = await caches.open(cacheName(root, notes));
  if (value === undefined) await cache.delete(addressIn(root, name));
  else await cache.put(addressIn(root, name), new Response(JSON.stringify(value)));
}
