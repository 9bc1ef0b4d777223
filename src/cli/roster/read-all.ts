/** Reads many record files, on several threads where there are enough of them. */
import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import type { RecordSource } from "../record/programme.ts";
import type { Read, RowReader } from "./rows.ts";
import type { RosterSetting } from "./worker.ts";

/** A thread takes half a second to begin. */
const filesAThread = 400;
const mostThreads = 8;
/** Files sent at a time: few enough that no thread is left waiting at the end. */
const batch = 50;

/** Records leave much behind that is soon of no use: with more room for it less time goes into clearing up. */
const resourceLimits = { maxYoungGenerationSizeMb: 64 };

/** Beside this file once the tool is compiled; there is none while it is not. */
const script = new URL("./roster-worker.js", import.meta.url);

/** In the order of the files, however many threads read them. */
export async function readAll(
  files: readonly string[],
  reader: RowReader,
  setting: RosterSetting & { readonly source: RecordSource },
): Promise<Read> {
  const threads = Math.min(availableParallelism(), mostThreads, Math.floor(files.length / filesAThread));
  if (threads < 2 || !existsSync(fileURLToPath(script))) return reader.read(files);
  const { source, day } = setting;
  const plain = { rules: source.rules, cards: source.cards, kept: source.kept, lists: source.lists };
  return joined(await shared(files, threads, { source: plain, day }));
}

/** Each thread takes the next batch as soon as it is through with its last. */
async function shared(files: readonly string[], threads: number, setting: RosterSetting): Promise<Read[]> {
  const results: Read[] = [];
  let next = 0;
  await Promise.all(
    Array.from({ length: threads }, async () => {
      const worker = new Worker(script, { workerData: setting, resourceLimits });
      try {
        for (let at = next++; at * batch < files.length; at = next++)
          results[at] = await ask(worker, files.slice(at * batch, (at + 1) * batch));
      } finally {
        await worker.terminate();
      }
    }),
  );
  return results;
}

const ask = (worker: Worker, files: readonly string[]): Promise<Read> =>
  new Promise((done, fail) => {
    worker.once("error", fail);
    worker.once("message", (read: Read) => {
      worker.off("error", fail);
      done(read);
    });
    worker.postMessage(files);
  });

const joined = (all: readonly Read[]): Read => ({
  rows: all.flatMap(({ rows }) => rows),
  broken: all.flatMap(({ broken }) => broken),
  doubtful: all.flatMap(({ doubtful }) => doubtful),
});
