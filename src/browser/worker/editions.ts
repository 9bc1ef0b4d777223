/** The editions that the worker may have to answer from, each opened once in its life. */
import { type EditionFile, editionFile } from "../../model/edition.ts";
import { fetchFile } from "../offline/fetch-file.ts";
import { addressIn, cacheName, keptEdition } from "../offline/shelf.ts";

export interface OpenEdition {
  readonly version: string;
  readonly files: ReadonlyMap<string, EditionFile>;
  readonly cache: Cache;
}

export class Editions {
  readonly #caches: CacheStorage;
  readonly #root: string;
  readonly #open = new Map<string, Promise<OpenEdition | undefined>>();

  constructor(caches: CacheStorage, root: string) {
    this.#caches = caches;
    this.#root = root;
  }

  /** Undefined where nothing is kept of it. */
  at(version: string): Promise<OpenEdition | undefined> {
    const known = this.#open.get(version) ?? this.#read(version);
    this.#open.set(version, known);
    return known;
  }

  /** Fetches the list of an edition where it is not kept yet. Throws a NotKept where it does not come. */
  async begin(version: string): Promise<OpenEdition> {
    const path = editionFile(version);
    if ((await keptEdition(this.#caches, this.#root, version)) === undefined) {
      const address = addressIn(this.#root, path);
      const list = await fetchFile(address, path, version);
      await (await this.#caches.open(cacheName(this.#root, version))).put(address, list);
    }
    this.#open.delete(version);
    return (await this.at(version))!;
  }

  async #read(version: string): Promise<OpenEdition | undefined> {
    const edition = await keptEdition(this.#caches, this.#root, version);
    if (edition === undefined) return undefined;
    const files = new Map(edition.files.map((file) => [file[0], file]));
    return { version, files, cache: await this.#caches.open(cacheName(this.#root, version)) };
  }
}
