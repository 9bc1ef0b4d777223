/** Writes files of the site with few calls: each folder is made once, and nothing is waited for that the disk does at once. */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Page } from "./page.ts";

/** Told of each file that is written, with its bytes. */
export type Note = (file: string, bytes: Uint8Array) => void;

/** Writes texts below `outDir`, each at its own path. */
export function writerTo(outDir: string, note?: Note): (file: string, text: string) => void {
  const made = new Set<string>();
  return (file, text) => {
    const folder = dirname(file);
    if (!made.has(folder)) mkdirSync(join(outDir, folder), { recursive: true });
    made.add(folder);
    const bytes = Buffer.from(text);
    writeFileSync(join(outDir, file), bytes);
    note?.(file, bytes);
  };
}

/** Makes and writes pages one after the other, so that no page is kept once it is written. */
export function writeEach(pages: readonly Page[], outDir: string, note?: Note): void {
  const write = writerTo(outDir, note);
  for (const { file, make } of pages) write(file, make());
}

/** Pages after which others on this thread get their turn. */
const stretch = 50;

/** Like `writeEach`, with breaks in which a terminal can be told how far it is. */
export async function writeInStretches(pages: readonly Page[], outDir: string, note?: Note): Promise<void> {
  const write = writerTo(outDir, note);
  for (const [at, { file, make }] of pages.entries()) {
    write(file, make());
    if (at % stretch === stretch - 1) await new Promise((done) => setImmediate(done));
  }
}
