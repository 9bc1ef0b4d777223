/** A hand on a thread of its own: it does what it is told, one task after the other. */
import { parentPort, workerData } from "node:worker_threads";
import { Hand } from "./hand.ts";
import type { Answer, Task, WorkerSetting } from "./thread.ts";

const { contentDir, share } = workerData as WorkerSetting;
const hand = new Hand(contentDir, share);

parentPort!.on("message", async ({ number, name, given }: Task) => {
  try {
    const value: unknown = await (hand[name] as (...given: unknown[]) => unknown).apply(hand, given);
    parentPort!.postMessage({ number, value } satisfies Answer);
  } catch (cause) {
    parentPort!.postMessage({ number, fault: cause } satisfies Answer);
  }
});
