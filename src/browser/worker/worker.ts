/** The worker: answers for the site on a device, with the network and without (W3C, Service Workers). */
import { type HowFar, howFar, take } from "../offline/messages.ts";
import { addressIn } from "../offline/shelf.ts";
import { activate } from "./activate.ts";
import { answer } from "./answer.ts";
import { Editions } from "./editions.ts";
import { install } from "./install.ts";
import type { WorkerScope } from "./scope.ts";

const scope = globalThis as unknown as WorkerScope;
const root = scope.registration.scope;
const version = scope.benchwrightEdition ?? "";
const editions = new Editions(scope.caches, root);

scope.addEventListener("install", (event) => event.waitUntil(install(scope, editions, version)));
scope.addEventListener("activate", (event) => event.waitUntil(activate(scope, version)));
scope.addEventListener("fetch", (event) => {
  if (event.request.method !== "GET" || !event.request.url.startsWith(root)) return;
  event.respondWith(answer(event, { scope, editions, version }));
});
scope.addEventListener("message", (event) => {
  if (event.data === take) event.waitUntil(scope.skipWaiting());
  if (event.data === howFar) event.waitUntil(counted().then((counts) => event.ports[0]?.postMessage(counts)));
});

async function counted(): Promise<HowFar> {
  const open = await editions.at(version);
  const files = [...(open?.files.values() ?? [])];
  const there = new Set((await open?.cache.keys())?.map(({ url }) => url));
  const kept = files.filter(([path]) => there.has(addressIn(root, path))).length;
  return { version, kept, of: files.length, bytes: files.reduce((sum, [, , size]) => sum + size, 0) };
}
