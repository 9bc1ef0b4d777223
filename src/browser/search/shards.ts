/** Loads shards as classic scripts, which works from disk too, where nothing can be fetched. */
import { type ProseGlobal, proseFolder } from "../../model/search-data.ts";

export class Shards {
  readonly #root: string;
  readonly #came: () => void;
  readonly #asked = new Set<string>();
  #isTelling = false;

  /** `came` is called when some have come, once for all that come between two pictures of the page. */
  constructor(root: string, came: () => void) {
    this.#root = root;
    this.#came = came;
  }

  readonly loaded = (name: string): unknown => {
    const all = (globalThis as ProseGlobal).benchwrightProse;
    return all !== undefined && Object.hasOwn(all, name) ? all[name] : undefined;
  };

  /** Asks for those that are not here yet. One that could not be had is asked for again by the next key. */
  want(names: Iterable<string | undefined>): void {
    for (const name of names) {
      if (name === undefined || name === "" || this.#asked.has(name)) continue;
      this.#asked.add(name);
      const script = document.createElement("script");
      script.src = `${this.#root}${proseFolder}${name}.js`;
      script.addEventListener("load", () => this.#tell());
      script.addEventListener("error", () => this.#asked.delete(name));
      document.head.append(script);
    }
  }

  /** Shards of one query come nearly together, and what is found is worked out anew each time. */
  #tell(): void {
    if (this.#isTelling) return;
    this.#isTelling = true;
    requestAnimationFrame(() => {
      this.#isTelling = false;
      this.#came();
    });
  }
}
