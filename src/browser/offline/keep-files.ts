/** Keeps files of an edition on the device: only what is not there yet, and only what has changed by way of the network. */
import type { EditionFile } from "../../model/edition.ts";
import { fetchFile, NotKept } from "./fetch-file.ts";
import { addressIn, cacheName, keptEdition, keptVersions } from "./shelf.ts";

export interface Keeping {
  readonly caches: CacheStorage;
  /** The address of the site's folder. */
  readonly root: string;
  readonly version: string;
  readonly told: (kept: number, of: number) => void;
}

/** So many files come at a time. */
const together = 8;

/**
 * Goes on where an earlier call has left off; what an earlier edition has of the same content is copied. Throws a NotKept
 * at the first batch in which one fails; what was kept stays.
 */
export async function keepFiles(wanted: readonly EditionFile[], keeping: Keeping): Promise<void> {
  const { caches, root, version, told } = keeping;
  const cache = await caches.open(cacheName(root, version));
  const there = await addressesIn(cache);
  const missing = wanted.filter(([path]) => !there.has(addressIn(root, path)));
  const earlier = missing.length === 0 ? new Map<string, Found>() : await byDigest(keeping);
  told(wanted.length - missing.length, wanted.length);
  for (let at = 0; at < missing.length; at += together) {
    const batch = missing.slice(at, at + together);
    const ends = await Promise.allSettled(batch.map((file) => keepOne(file, cache, earlier, root)));
    const failed = ends.find((end) => end.status === "rejected");
    if (failed !== undefined) throw failed.reason;
    told(wanted.length - missing.length + at + batch.length, wanted.length);
  }
}

const addressesIn = async (cache: Cache): Promise<Set<string>> =>
  new Set((await cache.keys()).map(({ url }) => url));

interface Found {
  readonly cache: Cache;
  readonly address: string;
}

/** Where content is kept already, by its digest. */
async function byDigest({ caches, root, version }: Keeping): Promise<Map<string, Found>> {
  const found = new Map<string, Found>();
  for (const other of await keptVersions(caches, root)) {
    const edition = other === version ? undefined : await keptEdition(caches, root, other);
    if (edition === undefined) continue;
    const cache = await caches.open(cacheName(root, other));
    for (const [path, digest] of edition.files) found.set(digest, { cache, address: addressIn(root, path) });
  }
  return found;
}

async function keepOne(
  [path, digest]: EditionFile,
  cache: Cache,
  earlier: ReadonlyMap<string, Found>,
  root: string,
): Promise<void> {
  const before = earlier.get(digest);
  const copy = before && (await before.cache.match(before.address));
  const address = addressIn(root, path);
  const file = copy ?? (await fetchFile(address, path, digest));
  await cache.put(address, file).catch((cause: unknown) => {
    throw isFull(cause) ? new NotKept({ kind: "full" }) : cause;
  });
}

const isFull = (cause: unknown): boolean =>
  cause instanceof DOMException && cause.name === "QuotaExceededError";
