/** Takes over from the edition before, whose open pages go on with what they began with. */
import { cacheName, keptVersions, readNote, writeNote } from "../offline/shelf.ts";
import type { WorkerScope } from "./scope.ts";

export async function activate(scope: WorkerScope, version: string): Promise<void> {
  const { caches, registration } = scope;
  const root = registration.scope;
  const before = await readNote(caches, root, "current");
  const begun = await stillOpen(scope, before === version ? undefined : before);
  await writeNote(caches, root, "begun", begun);
  await writeNote(caches, root, "current", version);
  const standing = await readNote(caches, root, "standing");
  if (standing?.trouble?.kind !== "full") await writeNote(caches, root, "standing", undefined);
  const needed = new Set([version, ...Object.values(begun)]);
  for (const other of await keptVersions(caches, root))
    if (!needed.has(other)) await caches.delete(cacheName(root, other));
  // The page of a first visit came a moment ago from the same site; what it loads later is to come offline too.
  if (before === undefined) await scope.clients.claim();
}

/** By the ids of open pages, the edition that each began with, where that is not the one now taking over. */
async function stillOpen(
  { caches, registration, clients }: WorkerScope,
  before: string | undefined,
): Promise<Record<string, string>> {
  const known = (await readNote(caches, registration.scope, "begun")) ?? {};
  const open = await clients.matchAll();
  return Object.fromEntries(
    open.flatMap(({ id }) => {
      const began = known[id] ?? before;
      return began === undefined ? [] : [[id, began]];
    }),
  );
}
