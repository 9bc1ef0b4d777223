/** The form of one sum, its answer, and what is wrong with its fields. */
import { t } from "../../engine/words.ts";
import { Fields, type Trouble } from "../../engine/workshop/asked/fields.ts";
import type { SumsPageData } from "../../model/sums-data.ts";
import { button, element } from "../page/element.ts";
import { counted } from "../page/words.ts";
import type { UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";
import { answerParts, groundParts } from "./answer-view.ts";
import { FieldView } from "./field-view.ts";
import { FiguresBrought } from "./figures-brought.ts";
import { queryOf, type Values } from "./link.ts";

/** What all sums of the page share. */
export interface Around {
  readonly units: () => UnitSystem;
  readonly figures: SumsPageData["figures"];
  /** An answer has come or gone. */
  readonly changed: () => void;
}

/** An answer stands only as long as the fields are as they were when it was reckoned. */
export class SumView {
  readonly #sum: Sum;
  readonly #around: Around;
  readonly #section: HTMLElement;
  readonly #fields: readonly FieldView[];
  readonly #brought: FiguresBrought;
  readonly #answer: HTMLElement;
  readonly #grounds: HTMLElement;
  #hasBeenAsked = false;

  constructor(section: HTMLElement, sum: Sum, around: Around) {
    this.#sum = sum;
    this.#around = around;
    this.#section = section;
    const form = section.querySelector("form")!;
    const controls = form.querySelectorAll<HTMLInputElement | HTMLSelectElement>("input, select");
    this.#fields = [...controls].map((control) => new FieldView(control));
    this.#brought = new FiguresBrought(this.#fields, around.figures);
    this.#answer = section.querySelector(".sum-answer")!;
    this.#grounds = section.querySelector(".sum-grounds")!;
    form.querySelector(".actions")!.append(button(t`Clear`, () => this.#clear()));
    form.addEventListener("input", () => this.#takeBack());
    form.addEventListener("change", () => {
      this.#brought.follow();
      if (this.#hasBeenAsked) this.#reckon();
    });
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#reckon();
      this.#goToFault();
    });
    form.hidden = false;
  }

  get id(): string {
    return this.#sum.id;
  }

  /** What is filled in, if an answer stands on it. */
  get answered(): Values | undefined {
    return this.#section.classList.contains("is-answered") ? this.#values() : undefined;
  }

  /** Fills the fields from a link and reckons, as soon as there is enough to reckon with. */
  fill(values: Values): void {
    for (const field of this.#fields) field.value = values.get(field.name) ?? "";
    for (const field of this.#fields) field.unfold();
    this.#brought.join();
    const { answer, troubles } = this.#read();
    if (answer !== undefined || troubles.some(({ found }) => found !== undefined)) this.#reckon();
  }

  /** Reckons again what stands there, in other units. */
  refresh(): void {
    if (this.answered !== undefined) this.#reckon();
  }

  #values(): Values {
    return new Map(this.#fields.map(({ name, value }) => [name, value]));
  }

  #reckon(): void {
    this.#hasBeenAsked = true;
    const { answer, troubles } = this.#read();
    for (const field of this.#fields)
      field.tell(troubles.find((trouble) => trouble.field === field.name)?.text);
    if (answer === undefined) this.#showTroubles(troubles);
    else this.#show(answer);
    this.#around.changed();
  }

  #read(): { answer: Answer | undefined; troubles: readonly Trouble[] } {
    const fields = new Fields(this.#values());
    const answer = this.#sum.reckon(fields, this.#around.units());
    return { answer, troubles: fields.troubles };
  }

  #show(answer: Answer): void {
    this.#section.classList.add("is-answered");
    const own = queryOf(new Map([[this.id, this.#values()]]));
    const link = element("a", { href: `${own}#${this.id}` }, t`Link to this sum`);
    this.#answer.replaceChildren(...answerParts(answer, linkToThread));
    this.#grounds.replaceChildren(
      ...groundParts(answer),
      element("p", { class: "sum-link on-screen" }, link),
    );
  }

  #showTroubles(troubles: readonly Trouble[]): void {
    this.#takeBack();
    const known = new Set(this.#fields.map(({ name }) => name));
    const others = troubles.filter(({ field }) => !known.has(field)).map(({ text }) => text);
    const count = t`${counted(troubles.length, "field")} to mend before this can be reckoned.`;
    this.#answer.append(
      element(
        "p",
        { class: "warning" },
        [others.length < troubles.length ? count : "", ...others].join(" ").trim(),
      ),
    );
  }

  #takeBack(): void {
    this.#answer.replaceChildren();
    this.#grounds.replaceChildren();
    if (!this.#section.classList.contains("is-answered")) return;
    this.#section.classList.remove("is-answered");
    this.#around.changed();
  }

  #goToFault(): void {
    const first = this.#section.querySelector<HTMLElement>("[aria-invalid]");
    if (first !== null) first.focus();
  }

  #clear(): void {
    for (const field of this.#fields) {
      field.value = "";
      field.tell(undefined);
    }
    this.#brought.follow();
    this.#hasBeenAsked = false;
    this.#takeBack();
    this.#fields[0]!.focus();
  }
}

const linkToThread = (thread: string): string =>
  `${queryOf(new Map([["thread", new Map([["thread", thread]])]]))}#thread`;
