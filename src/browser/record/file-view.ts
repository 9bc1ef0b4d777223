/** The record as a file: saved, added to, printed; what lapses as a calendar; the name that it bears. */

import type { RecordProblem } from "../../engine/competency/problems.ts";
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { counted, sentence } from "../page/words.ts";
import type { AddedFile } from "./added-file.ts";

export interface FileActions {
  readonly save: () => Promise<string>;
  readonly add: (text: string) => Promise<AddedFile>;
  /** Undefined where nothing lapses. */
  readonly calendar: (() => void) | undefined;
  readonly rename: (name: string) => Promise<void>;
  /** "" where none is chosen. */
  readonly name: string;
}

/** As `record-frame.ts` takes it. */
const longestName = 200;
/** `readJson` says more of what is too large; this keeps it from being read at all. */
const largestFile = 16 * 1024 * 1024 + 1;

export class FileView {
  readonly element: HTMLElement;
  readonly #said = element("div", { class: "file-said", role: "status" });
  #actions: FileActions;
  readonly #calendar: HTMLButtonElement;
  readonly #name: HTMLInputElement;

  constructor(actions: FileActions) {
    this.#actions = actions;
    this.#calendar = button(t`What lapses, for a calendar`, () => this.#actions.calendar?.());
    this.#name = nameField();
    this.element = element(
      "section",
      { class: "group record-file", "aria-labelledby": "s_file" },
      element("h2", { id: "s_file" }, t`Your name and your file`),
      this.#nameForm(),
      element(
        "div",
        { class: "actions" },
        button(t`Save my record as a file`, () => void this.#save(), { class: "is-main" }),
        this.#chooser(),
        button(t`Print this page`, () => window.print()),
        this.#calendar,
      ),
      element("p", { class: "small" }, hint),
      this.#said,
    );
    this.update(actions);
  }

  update(actions: FileActions): void {
    this.#actions = actions;
    this.#calendar.hidden = actions.calendar === undefined;
    if (document.activeElement !== this.#name) this.#name.value = actions.name;
  }

  #nameForm(): HTMLElement {
    const form = element(
      "form",
      { class: "name-form" },
      element("label", { for: "record-name" }, t`Name, as your mentor knows you`),
      element(
        "p",
        { class: "search-field" },
        this.#name,
        element("button", { type: "submit" }, t`Keep this name`),
      ),
    );
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      void this.#rename(this.#name.value.replaceAll(/\p{Cc}/gu, " ").trim());
    });
    return form;
  }

  async #rename(name: string): Promise<void> {
    if (name === "") return this.#say(t`Write a name first; a first name will do.`);
    await this.#actions.rename(name);
    this.#say(t`Kept. Your file will say ${sentence(name)}`);
  }

  /** A label that looks like a button: the field itself can't be dressed. */
  #chooser(): HTMLElement {
    const input = element("input", { type: "file", id: "record-add", accept: ".json,application/json" });
    input.addEventListener("change", () => {
      const [file] = input.files ?? [];
      if (file !== undefined) void this.#add(file).then(() => (input.value = ""));
    });
    return element(
      "span",
      { class: "file-chooser" },
      input,
      element("label", { for: "record-add" }, t`Add a file to it`),
    );
  }

  async #save(): Promise<void> {
    const name = await this.#actions.save();
    this.#say(t`Saved as ${name}, where this browser puts downloads. Keep it, or hand it to your mentor.`);
  }

  async #add(file: File): Promise<void> {
    try {
      const added = await this.#actions.add(await file.slice(0, largestFile).text());
      this.#tell(file.name, added);
    } catch {
      this.#say(t`${file.name} could not be read. Nothing was changed. Choose it again, or another one.`);
    }
  }

  #tell(file: string, added: AddedFile): void {
    if (!added.ok) {
      const [title, list] = [t`${file} was not added: nothing of your record was changed.`, added.problems];
      this.#said.replaceChildren(element("p", { class: "warning" }, title), problemList(list));
      return;
    }
    const count = added.events.length;
    const words =
      count === 0
        ? t`Your record had everything that is in ${file}.`
        : t`Added ${counted(count, "entry", "entries")} from ${file}.`;
    this.#said.replaceChildren(
      element("p", {}, words),
      ...(added.remarks.length === 0 ? [] : [problemList(added.remarks)]),
    );
  }

  #say(text: string): void {
    this.#said.replaceChildren(element("p", {}, text));
  }
}

const nameField = (): HTMLInputElement =>
  element("input", {
    type: "text",
    id: "record-name",
    autocomplete: "nickname",
    maxlength: String(longestName),
  });

const hint = t`A file to add may be another copy of your record, from another device, or what a mentor has signed for you. Adding loses nothing: what is in both is kept once.`;

/** With its code, so that a mentor can look it up. */
function problemList(problems: readonly RecordProblem[]): HTMLElement {
  const shown = problems
    .slice(0, most)
    .map(({ code, message, at }) =>
      element("li", {}, element("code", {}, code), at === undefined ? " " : t` at ${at}: `, message),
    );
  const more = problems.length > most ? [element("li", {}, t`and ${problems.length - most} more`)] : [];
  return element("ul", { class: "problems" }, ...shown, ...more);
}

const most = 20;
