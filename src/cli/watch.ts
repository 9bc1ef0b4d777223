/** Watches a folder of content while someone writes it. */
import { watch } from "node:fs";

/** Editors save in bursts: what follows a change waits until it has been quiet for this long, in milliseconds. */
const quiet = 80;

/** Calls `change` after each burst of changes, one call at a time. What it throws is told to `failed`. Returns how to end it. */
export function watchContent(
  folder: string,
  change: () => Promise<void> | void,
  failed: (message: string) => void,
): () => void {
  let timer: NodeJS.Timeout | undefined;
  let running: Promise<void> = Promise.resolve();
  const watcher = watch(folder, { recursive: true }, () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      running = running
        .then(change)
        .catch((cause: unknown) => failed(`${cause instanceof Error ? cause.message : String(cause)}\n`));
    }, quiet);
  });
  watcher.on("error", (cause) => failed(`${cause.message}\n`));
  return () => {
    clearTimeout(timer);
    watcher.close();
  };
}

/** Waits until the program is asked to end: Ctrl+C, or a plain kill. */
export function untilAsked(): Promise<void> {
  return new Promise((stop) => {
    process.once("SIGINT", () => stop());
    process.once("SIGTERM", () => stop());
  });
}
