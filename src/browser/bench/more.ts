/** Below each card: handing over, screen and sound, keys. */
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { Awake, awakeWords } from "./awake.ts";
import type { Device } from "./device.ts";
import { keysPart } from "./keys/teaching.ts";
import type { Sound } from "./waits/sound.ts";

export interface More {
  readonly device: Device;
  readonly sound: Sound;
  readonly handOver: () => void;
  /** Told whether the screen stays awake. */
  readonly tellAwake: (words: string) => void;
}

export function morePart({ device, sound, handOver, tellAwake }: More): HTMLElement {
  return element(
    "section",
    { class: "bench-more", "aria-label": t`Hand over and settings` },
    button(t`Hand over to another device`, handOver),
    element(
      "details",
      {},
      element("summary", {}, t`Screen and sound`),
      awakePart(device, tellAwake),
      soundPart(device, sound),
    ),
    keysPart(device),
  );
}

function awakePart(device: Device, tell: More["tellAwake"]): HTMLElement {
  const state = element("p", { role: "status", class: "bench-awake" });
  const box = element("input", { type: "checkbox" });
  const awake = new Awake((its) => {
    state.textContent = awakeWords[its];
    tell(awakeWords[its]);
    box.disabled = its === "none";
    if (its === "none") box.checked = false;
  });
  box.checked = device.settings.isKeptAwake;
  box.addEventListener("change", () => {
    device.change({ isKeptAwake: box.checked });
    void awake.want(box.checked);
  });
  void awake.want(box.checked);
  return element("div", {}, switchOf(box, t`Keep the screen awake`), state);
}

function soundPart(device: Device, sound: Sound): HTMLElement {
  const told = element("p", { role: "status" });
  const box = element("input", { type: "checkbox" });
  const tryIt = button(t`Let me hear it`, () => {
    told.textContent = sound.play() ? "" : t`This browser makes no sound.`;
  });
  const set = (isOn: boolean): void => {
    box.checked = isOn;
    tryIt.hidden = !isOn;
    sound.set(isOn);
  };
  box.addEventListener("change", () => {
    device.change({ hasSound: box.checked });
    set(box.checked);
  });
  set(device.settings.hasSound);
  return element("div", {}, switchOf(box, t`A sound when a wait is over`), tryIt, told);
}

const switchOf = (box: HTMLInputElement, words: string): HTMLElement =>
  element("label", { class: "bench-switch" }, box, element("span", {}, words));
