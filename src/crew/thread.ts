/** Hands on threads of their own, and the one on this thread, asked alike. */
import { Worker } from "node:worker_threads";
import { Hand } from "./hand.ts";
import type { Share } from "./share.ts";

/** A hand of which every answer has to be waited for. */
export type Helper = {
  [Name in keyof Hand]: (...given: Parameters<Hand[Name]>) => Promise<Awaited<ReturnType<Hand[Name]>>>;
} & { end(): Promise<void> };

export interface WorkerSetting {
  readonly contentDir: string;
  readonly share: Share;
}

export interface Task {
  readonly number: number;
  readonly name: keyof Hand;
  readonly given: unknown[];
}

export interface Answer {
  readonly number: number;
  readonly value?: unknown;
  readonly fault?: unknown;
}

const tasks = [
  "open",
  "check",
  "derive",
  "renderModules",
  "renderProgramme",
] as const satisfies (keyof Hand)[];

/** A hand on this thread. It begins only when others have been told what to do. */
export function here(setting: WorkerSetting): Helper {
  const hand = new Hand(setting.contentDir, setting.share);
  return helper(
    async (name, given) => {
      await undefined;
      return (hand[name] as (...given: unknown[]) => unknown).apply(hand, given);
    },
    async () => undefined,
  );
}

/** A hand on a thread of its own, which `script` runs. A thread that dies rejects whatever was asked of it. */
export function onThread(script: URL, setting: WorkerSetting): Helper {
  const worker = new Worker(script, { workerData: setting });
  const waiting = new Map<number, { done(value: unknown): void; fail(fault: unknown): void }>();
  worker.on("message", ({ number, value, fault }: Answer) => {
    const asked = waiting.get(number);
    waiting.delete(number);
    if (fault === undefined) asked?.done(value);
    else asked?.fail(fault);
  });
  worker.on("error", (fault) => {
    for (const { fail } of waiting.values()) fail(fault);
    waiting.clear();
  });
  let number = 0;
  return helper(
    (name, given) =>
      new Promise((done, fail) => {
        waiting.set(++number, { done, fail });
        worker.postMessage({ number, name, given } satisfies Task);
      }),
    async () => void (await worker.terminate()),
  );
}

function helper(
  ask: (name: keyof Hand, given: unknown[]) => Promise<unknown>,
  end: () => Promise<void>,
): Helper {
  const asked = Object.fromEntries(tasks.map((name) => [name, (...given: unknown[]) => ask(name, given)]));
  return { ...asked, end } as Helper;
}
