/** A served site is being written, so no browser is to answer for it from what it has kept of an earlier one. */

/** Stands in the place of the worker of a built site that was seen at this address before: it goes, with all that was kept. */
export const leavingWorker = `self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(leave()));
async function leave() {
  const prefix = "benchwright " + new URL(self.registration.scope).pathname + " ";
  for (const name of await caches.keys()) if (name.startsWith(prefix)) await caches.delete(name);
  await self.registration.unregister();
  for (const page of await self.clients.matchAll()) await page.navigate(page.url);
}
`;
