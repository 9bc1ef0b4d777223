/** The search form: results while one types, the query in the address. */

import type { SearchPageData } from "../../model/page-data.ts";
import { replaceAddress } from "../page/address.ts";
import type { Hits } from "./hits.ts";
import { listKeys } from "./list-keys.ts";
import { countWords, resultItems } from "./result-list.ts";

/** So long nothing more must be typed before the number of results is said. */
const pause = 500;

export class SearchView {
  readonly #search: (query: string) => Hits;
  readonly #data: SearchPageData;
  readonly #field: HTMLInputElement;
  readonly #list: HTMLElement;
  readonly #status: HTMLElement;
  readonly #index: HTMLElement;
  #waiting: ReturnType<typeof setTimeout> | undefined;

  constructor(page: HTMLElement, search: (query: string) => Hits, data: SearchPageData) {
    const form = page.querySelector<HTMLFormElement>(".search-form")!;
    this.#search = search;
    this.#data = data;
    this.#field = form.querySelector("input")!;
    this.#list = page.querySelector(".search-results")!;
    this.#status = page.querySelector(".search-status")!;
    this.#index = page.querySelector(".search-index")!;
    form.hidden = false;
    this.#field.value = new URL(location.href).searchParams.get("q") ?? "";
    this.#field.addEventListener("input", () => this.#typed());
    form.addEventListener("submit", (event) => this.#submitted(event));
    listKeys(this.#field, this.#list);
    this.#field.focus();
    this.#show();
  }

  #typed(): void {
    this.#show();
    const address = new URL(location.href);
    if (this.#field.value === "") address.searchParams.delete("q");
    else address.searchParams.set("q", this.#field.value);
    replaceAddress(address);
  }

  /** Enter in the field opens the best result. */
  #submitted(event: SubmitEvent): void {
    event.preventDefault();
    this.#list.querySelector("a")?.click();
  }

  #show(): void {
    const query = this.#field.value.trim();
    this.#list.hidden = query === "";
    this.#index.hidden = query !== "";
    clearTimeout(this.#waiting);
    if (query === "") {
      this.#list.replaceChildren();
      this.#status.textContent = "";
      return;
    }
    const hits = this.#search(query);
    this.#list.replaceChildren(...resultItems(hits.shown, this.#data));
    this.#waiting = setTimeout(() => {
      this.#status.textContent = countWords(hits);
    }, pause);
  }
}
