/** Holds the place, keeps it, and lets what shows it know. */
import type { Store } from "../page/store.ts";
import { keepPlace, type Place, readPlace } from "./place.ts";

export class Keeper {
  readonly #store: Store;
  readonly #views: ((place: Place) => void)[] = [];
  #place: Place;

  /** `first` is the card on which one begins. */
  constructor(store: Store, first: string) {
    this.#store = store;
    this.#place = readPlace(store.load(), first);
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
    for (const view of this.#views) view(this.#place);
  }
}
