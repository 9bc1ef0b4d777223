/** Puts the bench view together. */
import { t } from "../../engine/words.ts";
import type { BenchData } from "../../model/page-data.ts";
import { element } from "../page/element.ts";
import { keepsAnything, type SharedStore, storeAt } from "../page/store.ts";
import { Bar } from "./bar.ts";
import { type Card, cardsOf } from "./cards.ts";
import { tickableChecks } from "./checks.ts";
import { Deck } from "./deck.ts";
import { Device } from "./device.ts";
import { handOver } from "./handover/hand-over.ts";
import { watchForLinks } from "./handover/take-over.ts";
import { Keeper } from "./keeper.ts";
import { listenToKeys } from "./keys/press.ts";
import { leftOpen } from "./left-open.ts";
import { morePart } from "./more.ts";
import { stepsOf } from "./progress.ts";
import { Said } from "./said.ts";
import { startOver } from "./start-over.ts";
import { foldTrays } from "./tray-strip.ts";
import { Sound } from "./waits/sound.ts";
import { waitControl } from "./waits/wait-control.ts";
import { Waits } from "./waits/waits.ts";
import { WaitsStrip } from "./waits/waits-strip.ts";

const clock = (): number => Date.now();

export function benchPage(page: HTMLElement, data: BenchData, store: SharedStore): void {
  const cards = cardsOf(page);
  const keeper = new Keeper(store, cards[0]!.id);
  const device = new Device(storeAt("bench"));
  const said = new Said();
  const sound = new Sound();
  const checks = tickableChecks(cards, keeper);
  const over = element("p", { role: "status", class: "announcer" });
  const onEnd = (words: string): void => {
    over.textContent = words;
    sound.play();
  };
  const waits = new Waits({ cards, waits: data.waits, keeper, said, clock, onEnd });
  for (const wait of data.waits) waitPlace(cards, wait.step)?.append(waitControl(wait, waits));
  const deck = new Deck(page, cards, keeper);
  deck.onTurn = () => said.clear();
  const sheet = { ...data, steps: stepsOf(cards).map(({ id }) => id), cards: cards.map(({ id }) => id) };
  const bar = new Bar(deck, keeper, said);
  const strip = new WaitsStrip(waits);
  const trays = foldTrays(page);
  const first = cards[0]!.main;
  const last = cards.at(-1)!.main;
  const awake = element("p", { class: "small bench-awake" });
  first.prepend(awake);
  last.prepend(leftOpen(cards, checks, keeper));
  for (const main of [first, last]) main.append(startOver(deck, keeper, said));
  page.append(
    morePart({
      device,
      sound,
      tellAwake: (words) => {
        awake.textContent = words;
      },
      handOver: () => handOver({ cards, sheet, place: () => keeper.place, clock }),
    }),
    element(
      "div",
      { class: "bench-foot" },
      over,
      element("div", { class: "bench-lines" }, said.element, strip.element),
      bar.element,
    ),
  );
  document.body.classList.add("has-bench-foot");
  listenToKeys({ deck, bar, device, fold: () => [trays.fold(), strip.fold()].includes(true) });
  watchForLinks({ deck, keeper, said, sheet, clock });
  if (!keepsAnything()) page.prepend(nothingKept());
  waits.look();
}

/** Behind the words that tell of the wait. */
const waitPlace = (cards: readonly Card[], step: string): HTMLElement | undefined =>
  cards.find(({ id }) => id === step)?.main.querySelector<HTMLElement>(".step-body") ?? undefined;

const nothingKept = (): HTMLElement =>
  element(
    "p",
    { class: "bench-note" },
    t`This browser keeps nothing from one visit to the next: the place is lost when this page is left. Handing over gives a link that brings it back.`,
  );
