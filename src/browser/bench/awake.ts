/** Keeps the screen awake while the page is looked at. */
import { t } from "../../engine/words.ts";

export type AwakeState = "off" | "awake" | "none" | "refused";

export const awakeWords: Readonly<Record<AwakeState, string>> = {
  off: t`The screen goes dark when this device wants it to.`,
  awake: t`The screen stays awake.`,
  none: t`This browser can’t keep the screen awake: set a longer screen time-out for the work.`,
  refused: t`This device does not let the screen stay awake just now: set a longer screen time-out for the work.`,
};

/** The lock is lost when the page is hidden, and asked for again when it is back. */
export class Awake {
  readonly #tell: (state: AwakeState) => void;
  #isWanted = false;
  #lock: WakeLockSentinel | undefined;

  constructor(tell: (state: AwakeState) => void) {
    this.#tell = tell;
    document.addEventListener("visibilitychange", () => void this.#settle());
  }

  async want(isWanted: boolean): Promise<void> {
    this.#isWanted = isWanted;
    await this.#settle();
  }

  async #settle(): Promise<void> {
    if (!("wakeLock" in navigator)) return this.#tell("none");
    if (!this.#isWanted) {
      await this.#lock?.release();
      this.#lock = undefined;
      return this.#tell("off");
    }
    if (document.visibilityState === "visible") await this.#ask();
  }

  async #ask(): Promise<void> {
    if (this.#lock?.released === false) return this.#tell("awake");
    try {
      const lock = await navigator.wakeLock.request("screen");
      this.#lock = lock;
      lock.addEventListener("release", () => {
        // With a low battery a device takes it back.
        if (this.#isWanted && document.visibilityState === "visible") this.#tell("refused");
      });
      this.#tell("awake");
      if (!this.#isWanted) await this.#settle();
    } catch {
      this.#tell("refused");
    }
  }
}
