/** The sound at the end of a wait, made on the spot; only for those who switched it on. */

/** Hertz, and seconds from the beginning: three rising notes, twice. */
const notes = [0, 1.2].flatMap((start) => [
  { pitch: 660, at: start },
  { pitch: 880, at: start + 0.25 },
  { pitch: 990, at: start + 0.5 },
]);
const length = 0.2;
const loudness = 0.25;

export class Sound {
  #context: AudioContext | undefined;
  #isOn = false;

  constructor() {
    // A browser plays nothing before the page was touched.
    for (const event of ["pointerdown", "keydown"]) addEventListener(event, () => this.#wake());
  }

  set(isOn: boolean): void {
    this.#isOn = isOn;
    this.#wake();
  }

  /** Plays where it is switched on. False where the browser has no sound. */
  play(): boolean {
    if (!this.#isOn) return false;
    this.#wake();
    const context = this.#context;
    if (context === undefined) return false;
    for (const { pitch, at } of notes) note(context, pitch, context.currentTime + at);
    return true;
  }

  #wake(): void {
    if (!this.#isOn || typeof AudioContext === "undefined") return;
    this.#context ??= new AudioContext();
    if (this.#context.state === "suspended") void this.#context.resume().catch(() => {});
  }
}

/** It swells and dies away, so that it does not click. */
function note(context: AudioContext, pitch: number, at: number): void {
  const tone = new OscillatorNode(context, { frequency: pitch });
  const swell = new GainNode(context, { gain: 0 });
  swell.gain.setValueAtTime(0, at);
  swell.gain.linearRampToValueAtTime(loudness, at + 0.02);
  swell.gain.linearRampToValueAtTime(0, at + length);
  tone.connect(swell).connect(context.destination);
  tone.start(at);
  tone.stop(at + length);
}
