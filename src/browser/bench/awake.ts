/** Keeps the screen awake while the page is looked at. */

const denied = "This browser can’t keep the screen awake: set a longer screen time-out for the work.";

/** Tells in words whether it works. The lock is lost when the page is hidden, and asked for again when it is back. */
export async function keepAwake(tell: (words: string) => void): Promise<void> {
  const lock = async (): Promise<void> => {
    if (document.visibilityState !== "visible") return;
    tell((await isLocked()) ? "The screen stays awake." : denied);
  };
  document.addEventListener("visibilitychange", () => void lock());
  await lock();
}

async function isLocked(): Promise<boolean> {
  try {
    if (!("wakeLock" in navigator)) return false;
    await navigator.wakeLock.request("screen");
    return true;
  } catch {
    return false;
  }
}
