/** Several hands that share the modules of a content folder out among them. */
import { existsSync, readdirSync } from "node:fs";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { KeptSearch } from "../bundle/search.ts";
import type { Standing } from "../bundle/swap.ts";
import { owns, type Share } from "./share.ts";
import { type Helper, here, onThread } from "./thread.ts";

export interface Crew {
  /** What is kept for the next build besides what each hand keeps. */
  readonly search: KeptSearch;
  /** The site that this crew made last, so that the next one may be made by changing it. */
  readonly standing: Standing;
  readonly hands: readonly Helper[];
  /** Asks all hands at once and gives their answers, in the order of the shares. Rejects when all have ended, if one failed. */
  all<Answer>(ask: (hand: Helper) => Promise<Answer>): Promise<Answer[]>;
  /** The hand whose share a file of the content is in. */
  handFor(path: string): Helper;
  end(): Promise<void>;
}

/** A second thread has to load the tool first, which a small programme does not repay. */
const modulesAHand = 50;
/** Each hand keeps all sheets in memory, and they all write to one disk. */
const mostHands = 4;

/** Beside this file once the tool is compiled; there is none while it is not. */
const script = new URL("./worker.js", import.meta.url);

/** A hand on this thread, and others on threads of their own where there are modules enough. */
export function gather(contentDir: string): Crew {
  const count = existsSync(fileURLToPath(script)) ? handsFor(contentDir) : 1;
  return crewOf(count, (share) =>
    share.which === 0 ? here({ contentDir, share }) : onThread(script, { contentDir, share }),
  );
}

/** A crew of `count` hands. */
export function crewOf(count: number, make: (share: Share) => Helper): Crew {
  const shares = Array.from({ length: count }, (_, which): Share => ({ which, of: count }));
  const hands = shares.map(make);
  return {
    search: {},
    standing: {},
    hands,
    async all(ask) {
      const work = hands.map(ask);
      await Promise.allSettled(work);
      return Promise.all(work);
    },
    handFor: (path) => hands[shares.findIndex((share) => owns(share, path))]!,
    async end() {
      await Promise.all(hands.map((hand) => hand.end()));
    },
  };
}

function handsFor(contentDir: string): number {
  const modules = join(contentDir, "modules");
  const count = existsSync(modules) ? readdirSync(modules).length : 0;
  return Math.max(1, Math.min(availableParallelism(), mostHands, Math.floor(count / modulesAHand)));
}
