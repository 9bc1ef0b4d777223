/** The search form: results while one types, the query in the address. */

import { shardsFor } from "../../engine/search/prose.ts";
import type { SearchPageData } from "../../model/page-data.ts";
import type { SearchData } from "../../model/search-data.ts";
import { replaceAddress } from "../page/address.ts";
import { type Hits, type Search, searcher } from "./hits.ts";
import { listKeys } from "./list-keys.ts";
import { type ProseView, proseView } from "./prose-view.ts";
import { askedWords, countWords, resultGroups } from "./result-list.ts";
import { Shards } from "./shards.ts";

/** So many milliseconds nothing more must be typed before the number of results is said. */
const pause = 500;

/** Whether a key changes what stands in the field. */
const isWriting = (key: string): boolean => key.length === 1 || key === "Backspace" || key === "Delete";

export class SearchView {
  readonly #search: Search;
  readonly #found: SearchData;
  readonly #shards: Shards;
  readonly #prose: ProseView;
  readonly #data: SearchPageData;
  readonly #field: HTMLInputElement;
  readonly #results: HTMLElement;
  readonly #list: HTMLElement;
  readonly #status: HTMLElement;
  readonly #index: HTMLElement;
  /** More has come than the list shows. */
  #isStale = false;
  #waiting: ReturnType<typeof setTimeout> | undefined;
  /** Letters have been typed for which nothing has been looked up yet. */
  #isBehind = false;

  constructor(page: HTMLElement, found: SearchData, data: SearchPageData) {
    const form = page.querySelector<HTMLFormElement>(".search-form")!;
    this.#search = searcher(found, data.words);
    this.#found = found;
    this.#shards = new Shards(data.root, () => this.#came());
    this.#prose = proseView(found, this.#shards.loaded);
    this.#data = data;
    this.#field = form.querySelector("input")!;
    this.#results = page.querySelector(".search-results")!;
    this.#list = this.#results.querySelector(".found-groups")!;
    this.#status = page.querySelector(".search-status")!;
    this.#index = page.querySelector(".search-index")!;
    form.hidden = false;
    this.#field.value = (new URL(location.href).searchParams.get("q") ?? "").slice(0, this.#field.maxLength);
    this.#field.addEventListener("input", () => this.#typed());
    // Before anything else hears it, so that an arrow goes into the results of what stands in the field.
    const catchUp = ({ key }: KeyboardEvent): void => {
      if (!isWriting(key)) this.#catchUp();
    };
    page.addEventListener("keydown", catchUp, { capture: true });
    this.#field.addEventListener("focus", () => {
      if (this.#isStale) this.#came();
    });
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
    this.#catchUp();
    this.#list.querySelector("a")?.focus();
  }

  /** A letter is seen at once, its results in the next picture; letters that come faster than those are answered together. */
  #typed(): void {
    if (this.#isBehind) return;
    this.#isBehind = true;
    requestAnimationFrame(() => setTimeout(() => this.#catchUp()));
  }

  #catchUp(): void {
    if (this.#isBehind) this.#show();
  }

  #show(): void {
    this.#isBehind = false;
    const hits = this.#draw();
    clearTimeout(this.#waiting);
    this.#waiting = setTimeout(() => {
      this.#say(hits);
      this.#keep();
      this.#wantTexts(hits);
    }, pause);
  }

  /** Shows what answers now, and asks for the shards that the words need. */
  #draw(): Hits | undefined {
    const query = this.#field.value.trim();
    const hits = query === "" ? undefined : this.#search(query, this.#prose);
    this.#results.hidden = hits === undefined;
    this.#index.hidden = hits !== undefined;
    this.#list.replaceChildren(...(hits === undefined ? [] : resultGroups(hits, this.#data)));
    const typed = hits?.asked.mended.map((each) => [each.typed]) ?? [];
    this.#shards.want(
      shardsFor([...(hits?.asked.ways.flat() ?? []), ...typed]).map((name) => this.#found.prose?.words[name]),
    );
    return hits;
  }

  /** Of the pages shown, when nothing more is typed. */
  #wantTexts(hits: Hits | undefined): void {
    const files = new Set(
      [...(hits?.shown ?? []), ...(hits?.said ?? [])].map(({ href }) => href.split("#")[0]),
    );
    this.#shards.want(
      this.#found.pages.flatMap(([, file], page) =>
        files.has(file) ? [this.#found.prose?.texts[page]] : [],
      ),
    );
  }

  /** Something more is here. While someone goes through the list it stays as it is. */
  #came(): void {
    this.#isStale = this.#list.contains(document.activeElement);
    if (!this.#isStale) this.#show();
  }

  #say(hits: Hits | undefined): void {
    const words = hits === undefined ? "" : [countWords(hits), ...askedWords(hits)].join(" ");
    if (this.#status.textContent !== words) this.#status.textContent = words;
  }
}
