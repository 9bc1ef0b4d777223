/**
 * A shop for a site that is being served while its content is written: pages need not wait for pictures. What was made before
 * is put at once; the rest is made beside, what a page asks for first.
 */
import { renameSync, writeFileSync } from "node:fs";
import type { Diagnostic } from "../model/diagnostic.ts";
import { handsHere } from "./pool.ts";
import { PictureShop, type Pictures, type PutPictures, plannedFiles, writeMade } from "./shop.ts";

interface Job {
  readonly file: string;
  readonly stamp: string;
  /** Its files in the site. */
  readonly files: readonly string[];
  readonly ended: Promise<void>;
  readonly end: () => void;
}

export class LaterShop extends PictureShop {
  /** By picture; what is being made is no longer among `#waiting`. */
  readonly #jobs = new Map<string, Job>();
  #waiting: Job[] = [];
  #working = 0;
  /** What stands in the site, by picture, with what it was made from. */
  #standing = new Map<string, string>();
  #next = new Map<string, string>();
  /** Undefined while a build is at it. */
  #siteDir: string | undefined;
  #told: (fault: Diagnostic) => void = () => undefined;

  override async put(pictures: Pictures, outDir: string, isStanding: boolean): Promise<PutPictures> {
    this.#siteDir = undefined;
    this.#next = new Map();
    this.#forget(pictures);
    const staying: string[] = [];
    for (const [file, stamp] of pictures) {
      const files = plannedFiles(file, (await this.lookOf(file, stamp)).size);
      const stands = isStanding && this.#standing.get(file) === stamp;
      const kept = stands || this.#jobs.has(file) ? undefined : await this.keptOf(file, stamp);
      if (kept !== undefined) writeMade(outDir, kept);
      else staying.push(...files);
      if (stands || kept !== undefined) this.#next.set(file, stamp);
      else if (!this.#jobs.has(file)) this.#add(file, stamp, files);
    }
    return { diagnostics: [], staying };
  }

  /** To be called when the site stands; what can't be read to its end is told. */
  begin(siteDir: string, told: (fault: Diagnostic) => void): void {
    [this.#siteDir, this.#told, this.#standing] = [siteDir, told, this.#next];
    const hands = Math.max(1, handsHere() - 1);
    while (this.#working < hands && this.#waiting.length > 0) void this.#work();
  }

  /** Ends when a file of the site is there, where it is one that is still to be made; it is then made next. */
  async waitFor(siteFile: string): Promise<void> {
    const job = [...this.#jobs.values()].find(({ files }) => files.includes(siteFile));
    if (job === undefined) return;
    const at = this.#waiting.indexOf(job);
    if (at > 0) this.#waiting.unshift(...this.#waiting.splice(at, 1));
    await job.ended;
  }

  /** Pictures that are gone or have changed since. */
  #forget(pictures: Pictures): void {
    for (const job of this.#jobs.values()) if (pictures.get(job.file) !== job.stamp) this.#finish(job);
    this.#waiting = this.#waiting.filter((job) => this.#jobs.get(job.file) === job);
  }

  #add(file: string, stamp: string, files: readonly string[]): void {
    const { promise: ended, resolve: end } = resolvable();
    const job = { file, stamp, files, ended, end };
    this.#jobs.set(file, job);
    this.#waiting.push(job);
  }

  #finish(job: Job): void {
    if (this.#jobs.get(job.file) === job) this.#jobs.delete(job.file);
    job.end();
  }

  async #work(): Promise<void> {
    this.#working++;
    for (let job = this.#waiting.shift(); job !== undefined; job = this.#waiting.shift()) {
      const made = (await this.keptOf(job.file, job.stamp)) ?? (await this.make(job.file, job.stamp));
      if (this.#jobs.get(job.file) !== job) continue;
      if (this.#siteDir === undefined) {
        this.#waiting.push(job);
        break;
      }
      if ("fault" in made) this.#told(made.fault);
      else {
        writeMade(this.#siteDir, made, writeWhole);
        this.#standing.set(job.file, job.stamp);
      }
      this.#finish(job);
    }
    this.#working--;
  }
}

function resolvable(): { readonly promise: Promise<void>; readonly resolve: () => void } {
  let resolve: () => void = () => undefined;
  const promise = new Promise<void>((done) => {
    resolve = done;
  });
  return { promise, resolve };
}

/** The file is whole from the moment it is there. */
function writeWhole(to: string, bytes: Uint8Array): void {
  writeFileSync(`${to}.writing`, bytes);
  renameSync(`${to}.writing`, to);
}
