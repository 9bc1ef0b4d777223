/** What holds for the bench on this device, whatever the module: screen, sound, keys. */
import { fieldsOf, type Store } from "../page/store.ts";
import type { Taught } from "./keys/deeds.ts";
import { readTaught } from "./keys/taught.ts";

export interface Settings {
  readonly isKeptAwake: boolean;
  readonly hasSound: boolean;
  readonly keys: Taught;
}

export class Device {
  readonly #store: Store;
  #settings: Settings;

  constructor(store: Store) {
    this.#store = store;
    const { isKeptAwake, hasSound, keys } = fieldsOf(store.load());
    // Sound is only for those who switched it on.
    this.#settings = {
      isKeptAwake: isKeptAwake !== false,
      hasSound: hasSound === true,
      keys: readTaught(keys),
    };
  }

  get settings(): Settings {
    return this.#settings;
  }

  change(change: Partial<Settings>): void {
    this.#settings = { ...this.#settings, ...change };
    this.#store.save(this.#settings);
  }
}
