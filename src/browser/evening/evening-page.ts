/** The evening sheet as a whole: whom, what, notes, signing together, handing back. */
import { t } from "../../engine/words.ts";
import type { Desk, Trainee } from "../desk/desk.ts";
import { openFor } from "../desk/desk.ts";
import { filesBox, takeFiles } from "../desk/take-files.ts";
import { signedFileName } from "../desk/trainee-view.ts";
import { fileField } from "../opened/file-field.ts";
import { textOf } from "../opened/given-file.ts";
import { button, element, goTo } from "../page/element.ts";
import { saveFile } from "../page/save-file.ts";
import { counted } from "../page/words.ts";
import type { Naming } from "../record/next-words.ts";
import { eveningCard } from "./card.ts";
import { Notes } from "./notes.ts";
import { paperRows } from "./paper.ts";
import { type EveningTask, taskKey, tasksOf } from "./task.ts";

export class EveningPage {
  readonly #desk: Desk;
  readonly #root: string;
  readonly #tasks: readonly EveningTask[];
  readonly #notes: Notes;
  readonly #paper: HTMLElement;
  readonly #said = element("div", { class: "file-said", role: "status" });
  readonly #cards = element("div");
  #task: EveningTask;

  constructor(page: HTMLElement, desk: Desk, naming: Naming, root: string) {
    this.#desk = desk;
    this.#root = root;
    this.#tasks = tasksOf(naming.cards.values());
    this.#notes = new Notes(desk, this.#tasks);
    this.#paper = page.querySelector<HTMLElement>(".evening-paper ol")!;
    this.#task = this.#tasks[0]!;
  }

  async show(place: HTMLElement): Promise<void> {
    await this.#notes.load();
    const [first] = this.#notes.all();
    const key = first && `${first.module} ${first.phase}`;
    this.#task = this.#tasks.find((task) => taskKey(task) === key) ?? this.#task;
    place.append(this.#who(), this.#what(), this.#said, this.#cards, this.#together());
    this.#draw();
  }

  #who(): HTMLElement {
    return element(
      "section",
      { class: "group", "aria-labelledby": "s_who" },
      element("h2", { id: "s_who" }, t`Who is here`),
      filesBox("evening-file", (files) => void this.#take(files)),
    );
  }

  #what(): HTMLElement {
    const options = this.#tasks.map((task) =>
      element(
        "option",
        { value: taskKey(task), selected: task === this.#task },
        `${task.title}${task.phase === "" ? t`, whole` : ""}`,
      ),
    );
    const select = element("select", { id: "evening-task" }, ...options);
    select.addEventListener("change", () => {
      this.#task = this.#tasks.find((task) => taskKey(task) === select.value)!;
      this.#draw();
    });
    return element(
      "p",
      { class: "field" },
      element("label", { for: "evening-task" }, t`What is watched`),
      select,
    );
  }

  #together(): HTMLElement {
    const notes = fileField({
      id: "evening-notes",
      label: t`Take up notes from a file`,
      take: (files) => void this.#takeNotes(files),
    });
    return element(
      "section",
      { class: "group", "aria-labelledby": "s_together" },
      element("h2", { id: "s_together" }, t`At the end of the evening`),
      element(
        "p",
        {},
        this.#desk.key === undefined
          ? t`No key is kept in this browser, so that nothing can be signed here just now. Make or keep one on the Mentor’s desk; or save the notes as a file, and take them up where your key is.`
          : t`With one press you sign all that has an outcome. Then hand each trainee their file.`,
      ),
      element(
        "div",
        { class: "actions" },
        ...(this.#desk.key === undefined
          ? []
          : [button(t`Sign all of it`, () => void this.#signAll(), { class: "is-main" })]),
        button(t`Save all files, one per trainee`, () => void this.#saveAll()),
        button(t`Print the sheet`, () => window.print()),
        button(t`Save the notes as a file`, () => saveFile("evening.notes.json", this.#notes.text())),
        notes,
      ),
    );
  }

  #draw(): void {
    const trainees = this.#desk.trainees();
    this.#cards.replaceChildren(
      ...(trainees.length === 0
        ? [
            element(
              "p",
              {},
              t`Nobody yet: open the files that trainees hand you. Printed now, the sheet has lines for twelve names.`,
            ),
          ]
        : trainees.map((trainee, place) => this.#card(trainee, place))),
    );
    if (trainees.length > 0)
      this.#paper.replaceChildren(...paperRows(trainees, this.#task, (owner) => this.#deskAt(owner)));
  }

  #deskAt(owner: string): string {
    return new URL(`${this.#root}desk/index.html#${owner}`, location.href).href;
  }

  #card(trainee: Trainee, place: number): HTMLElement {
    const { name, owner } = trainee.overview.record;
    const open = openFor(trainee);
    const link = element("a", { href: `${this.#root}desk/index.html#${owner}` }, t`${name} on the desk`);
    return eveningCard({
      ...{ place, name, task: this.#task, note: this.#notes.of(owner, this.#task) },
      more: [
        element("p", { class: "small" }, link),
        open.length === 0
          ? undefined
          : element("p", {}, t`${counted(open.length, "statement")} signed, to hand back.`),
      ],
      write: (note) => this.#notes.write(note),
      isKept: this.#desk.shelf.isKept,
    });
  }

  async #take(files: readonly File[]): Promise<void> {
    const { told } = await takeFiles(this.#desk, files);
    this.#draw();
    this.#tell(
      ...told,
      element("p", {}, t`${counted(this.#desk.trainees().length, "trainee")} on the list.`),
    );
  }

  async #takeNotes([file]: readonly File[]): Promise<void> {
    const text = await textOf(file!);
    const taken = text.ok ? await this.#notes.takeUp(text.text) : text.problem.message;
    this.#draw();
    this.#tell(element("p", {}, typeof taken === "string" ? taken : t`${counted(taken, "note")} taken up.`));
  }

  async #signAll(): Promise<void> {
    const { signed, left } = await this.#notes.signAll();
    this.#draw();
    this.#tell(
      element("p", {}, t`${counted(signed, "observation")} signed.`),
      ...(left.length === 0
        ? []
        : [element("ul", { class: "problems" }, ...left.map((words) => element("li", {}, words)))]),
    );
  }

  async #saveAll(): Promise<void> {
    const open = this.#desk.trainees().filter((trainee) => openFor(trainee).length > 0);
    for (const { overview } of open) {
      const { name, owner } = overview.record;
      saveFile(signedFileName(name, this.#desk.options.now()), await this.#desk.handBack(owner));
    }
    const words =
      open.length === 0
        ? t`There is nothing to hand back: sign first.`
        : t`${counted(open.length, "file")} saved where this browser puts downloads. If it asks whether the page may save several, say yes. Each trainee adds theirs on My record.`;
    this.#tell(element("p", {}, words));
  }

  #tell(...what: readonly HTMLElement[]): void {
    this.#said.replaceChildren(...what);
    goTo(this.#said);
  }
}
