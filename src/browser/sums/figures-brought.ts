/** A substance of the programme brings its own figures into the form, where they are seen and can be mended. */
import type { SumsPageData } from "../../model/sums-data.ts";
import type { FieldView } from "./field-view.ts";

type Figures = ReadonlyMap<string, string>;

const none: Figures = new Map();

export class FiguresBrought {
  readonly #fields: ReadonlyMap<string, FieldView>;
  readonly #known: ReadonlyMap<string, Figures>;
  #last = none;

  constructor(fields: readonly FieldView[], figures: SumsPageData["figures"]) {
    this.#fields = new Map(fields.map((field) => [field.name, field]));
    this.#known = new Map(
      Object.entries(figures).map(([name, figures]) => [name, new Map(Object.entries(figures))]),
    );
  }

  /** The figures of the substance before go where nobody has changed them, and those of the one chosen now come. */
  follow(): void {
    const now = this.#chosen();
    if (now === this.#last) return;
    for (const [name, text] of this.#last) if (this.#fields.get(name)?.value === text) this.#write(name, "");
    for (const [name, text] of now) this.#write(name, text);
    this.#last = now;
  }

  /** After a link has filled the form: what it says of figures stands; where it says nothing, they come. */
  join(): void {
    const chosen = this.#chosen();
    const isSaid = [...chosen.keys()].some((name) => (this.#fields.get(name)?.value ?? "") !== "");
    this.#last = isSaid ? chosen : none;
    this.follow();
  }

  #chosen(): Figures {
    return this.#known.get(this.#fields.get("substance")?.value ?? "") ?? none;
  }

  #write(name: string, text: string): void {
    const field = this.#fields.get(name);
    if (field === undefined) return;
    field.value = text;
    field.unfold();
  }
}
