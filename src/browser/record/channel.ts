/** Windows of one site tell each other that the record has changed; each then reads it again. */

const nameOf = (programme: string): string => `benchwright-record:${programme}`;

/** Does nothing where the browser has no such thing: a window reads again when it is looked at. */
export function tellOtherWindows(programme: string): void {
  if (typeof BroadcastChannel === "undefined") return;
  const channel = new BroadcastChannel(nameOf(programme));
  channel.postMessage("changed");
  channel.close();
}

/** Calls when another window has changed the record, and when this one is looked at again. */
export function whenChanged(programme: string, call: () => void): void {
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") call();
  });
  if (typeof BroadcastChannel === "undefined") return;
  new BroadcastChannel(nameOf(programme)).addEventListener("message", call);
}
