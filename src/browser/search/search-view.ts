/** The search form: results while one types, the query in the address. */

import type { SearchPageData } from "../../model/page-data.ts";
import { replaceAddress } from "../page/address.ts";
import type { Hits } from "./hits.ts";
import { listKeys } from "./list-keys.ts";
import { countWords, resultItems } from "./result-list.ts";

/** So many milliseconds nothing more must be typed before the number of results is said. */
const pause = 500;

export class SearchView {
  readonly #search: (query: string) => Hits;
  readonly #data: SearchPageData;
  readonly #field: HTMLInputElement;
  readonly #results: HTMLElement;
  readonly #list: HTMLElement;
  readonly #status: HTMLElement;
  readonly #index: HTMLElement;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(page: HTMLElement, search: (query: string) => Hits, data: SearchPageData) {
    const form = page.querySelector<HTMLFormElement>(".search-form")!;
    this.#search = search;
    this.#data = data;
    this.#field = form.querySelector("input")!;
    this.#results = page.querySelector(".search-results")!;
    this.#list = this.#results.querySelector("ol")!;
    this.#status = page.querySelector(".search-status")!;
    this.#index = page.querySelector(".search-index")!;
    form.hidden = false;
    this.#field.value = (new URL(location.href).searchParams.get("q") ?? "").slice(0, this.#field.maxLength);
    this.#field.addEventListener("input", () => this.#show());
    this.#field.addEventListener("blur", () => this.#keep());
    form.addEventListener("submit", (event) => this.#submitted(event));
    listKeys(this.#field, this.#list);
    this.#field.focus();
    this.#show();
  }

  /** Puts the query into the address, so that it is there again when one comes back. */
  #keep(): void {
    const address = new URL(location.href);
    if (this.#field.value === "") address.searchParams.delete("q");
    else address.searchParams.set("q", this.#field.value);
    if (address.href !== location.href) replaceAddress(address);
  }

  /** Enter in the field goes to the best result, where it is read out and Enter opens it. */
  #submitted(event: SubmitEvent): void {
    event.preventDefault();
    this.#list.querySelector("a")?.focus();
  }

  #show(): void {
    const query = this.#field.value.trim();
    const hits = query === "" ? undefined : this.#search(query);
    this.#results.hidden = hits === undefined;
    this.#index.hidden = hits !== undefined;
    this.#list.replaceChildren(...resultItems(hits?.shown ?? [], this.#data));
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => {
      this.#status.textContent = hits === undefined ? "" : countWords(hits);
      this.#keep();
    }, pause);
  }
}
