/** Where pictures of a content folder are made for its site: looked at once, made once, and put where they belong. */
import { mkdirSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { Diagnostic } from "../model/diagnostic.ts";
import { filesOf, type Size } from "../model/picture-files.ts";
import { forgetOld, keepPicture, keptPicture, keyOf } from "./kept.ts";
import { faultIn, type Look, lookAt } from "./look.ts";
import { makePicture } from "./make.ts";
import { handsHere, pooled } from "./pool.ts";
import { type MadeBytes, PictureFault } from "./raster.ts";

/** Pictures by path, with what changes whenever the file does. */
export type Pictures = ReadonlyMap<string, string>;

export interface Looked {
  readonly sizes: ReadonlyMap<string, Size>;
  readonly diagnostics: readonly Diagnostic[];
  /** Texts of drawings with faults, by path. */
  readonly texts: ReadonlyMap<string, string>;
}

export interface PutPictures {
  readonly diagnostics: readonly Diagnostic[];
  /** Files that belong to the site and were not put into the folder. */
  readonly staying: readonly string[];
}

export interface ShopOptions {
  readonly contentDir: string;
  /** Where made pictures are kept; undefined to keep none. */
  readonly cacheDir: string | undefined;
}

export class PictureShop {
  readonly #contentDir: string;
  readonly #cacheDir: string | undefined;
  readonly #looks = new Map<string, { readonly stamp: string; readonly look: Look }>();

  constructor({ contentDir, cacheDir }: ShopOptions) {
    this.#contentDir = contentDir;
    this.#cacheDir = cacheDir;
  }

  /** Sizes and faults. What has not changed since it was looked at is not opened again. */
  async look(pictures: Pictures): Promise<Looked> {
    const files = [...pictures.keys()];
    const looks = await pooled(files, handsHere(), (file) => this.lookOf(file, pictures.get(file)!));
    const named = files.map((file, at) => [file, looks[at]!] as const);
    return {
      sizes: new Map(named.flatMap(([file, { size }]) => (size === undefined ? [] : [[file, size]]))),
      diagnostics: looks.flatMap(({ diagnostics }) => diagnostics),
      texts: new Map(named.flatMap(([file, { text }]) => (text === undefined ? [] : [[file, text]]))),
    };
  }

  /**
   * Puts every picture into the site's folder; what can't be read to its end is told. Where the site before is standing, another
   * kind of shop may leave there what has not changed.
   */
  async put(pictures: Pictures, outDir: string, _isStanding: boolean): Promise<PutPictures> {
    const diagnostics = await this.faults(pictures, (made) => writeMade(outDir, made));
    if (this.#cacheDir !== undefined) forgetOld(this.#cacheDir);
    return { diagnostics, staying: [] };
  }

  /** What can't be read to its end; what can is handed to `take`. Writes nothing but what is kept. */
  async faults(
    pictures: Pictures,
    take: (made: readonly MadeBytes[]) => void = () => undefined,
  ): Promise<readonly Diagnostic[]> {
    const faults = await pooled([...pictures.keys()], handsHere(), async (file) => {
      const made = await this.#made(file, pictures.get(file)!);
      if ("fault" in made) return [made.fault];
      take(made);
      return [];
    });
    return faults.flat();
  }

  protected async lookOf(file: string, stamp: string): Promise<Look> {
    const before = this.#looks.get(file);
    if (before?.stamp === stamp) return before.look;
    const look = await this.#read(file).then(
      (bytes) => lookAt(file, bytes),
      (cause: unknown): Look => ({
        ...{ digest: "", size: undefined, text: undefined },
        diagnostics: [faultIn(file, cause)],
      }),
    );
    this.#looks.set(file, { stamp, look });
    return look;
  }

  /** Undefined where nothing is kept of it. */
  protected async keptOf(file: string, stamp: string): Promise<MadeBytes[] | undefined> {
    if (this.#cacheDir === undefined) return undefined;
    const { digest } = await this.lookOf(file, stamp);
    return keptPicture(this.#cacheDir, keyOf(digest, file), file);
  }

  async #made(file: string, stamp: string): Promise<MadeBytes[] | { readonly fault: Diagnostic }> {
    return (await this.keptOf(file, stamp)) ?? this.make(file, stamp);
  }

  protected async make(file: string, stamp: string): Promise<MadeBytes[] | { readonly fault: Diagnostic }> {
    const { digest } = await this.lookOf(file, stamp);
    try {
      const made = await makePicture(file, await this.#read(file));
      if (this.#cacheDir !== undefined) keepPicture(this.#cacheDir, keyOf(digest, file), file, made);
      return made;
    } catch (cause) {
      return { fault: faultIn(file, cause) };
    }
  }

  async #read(file: string): Promise<Buffer> {
    try {
      return await readFile(join(this.#contentDir, file));
    } catch (cause) {
      throw new PictureFault("unreadable", cause instanceof Error ? cause.message : String(cause));
    }
  }
}

export function writeMade(
  outDir: string,
  made: readonly MadeBytes[],
  write: (to: string, bytes: Uint8Array) => void = writeFileSync,
): void {
  for (const { file, bytes } of made) {
    const to = join(outDir, file);
    mkdirSync(dirname(to), { recursive: true });
    write(to, bytes);
  }
}

/** The files that a picture will have in the site. */
export function plannedFiles(file: string, size: Size | undefined): readonly string[] {
  if (size === undefined) return [file];
  const { main, sizes } = filesOf(file, size);
  return [main, ...sizes].map((each) => each.file);
}
