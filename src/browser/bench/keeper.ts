/** Holds the place, keeps it, and lets what shows it know. */
import type { SharedStore } from "../page/store.ts";
import { keepPlace, type Place, readPlace } from "./place.ts";

export class Keeper {
  readonly #store: SharedStore;
  readonly #views: ((place: Place) => void)[] = [];
  #place: Place;

  /** `first` is the card on which one begins. */
  constructor(store: SharedStore, first: string) {
    this.#store = store;
    this.#place = readPlace(store.load(), first);
    // Of two windows each stands at its own step; what is ticked or runs in one must not be lost by a tick in the other.
    store.follow(() => {
      this.#place = { ...readPlace(store.load(), first), card: this.#place.card };
      this.#show();
    });
  }

  get place(): Place {
    return this.#place;
  }

  /** Calls a view now and after each change. */
  watch(view: (place: Place) => void): void {
    this.#views.push(view);
    view(this.#place);
  }

  change(change: Partial<Place>): void {
    this.#place = { ...this.#place, ...change };
    this.#store.save(keepPlace(this.#place));
    this.#show();
  }

  #show(): void {
    for (const view of this.#views) view(this.#place);
  }
}
