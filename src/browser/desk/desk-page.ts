/** "Mentor's desk" as a whole. */
import { t } from "../../engine/words.ts";
import { askTwice } from "../page/ask-twice.ts";
import { button, element, goTo } from "../page/element.ts";
import { counted } from "../page/words.ts";
import { shortKey } from "../record/facts-view.ts";
import { cipherHere } from "../record/key-on-device.ts";
import type { Naming } from "../record/next-words.ts";
import { type Desk, openFor, type Trainee } from "./desk.ts";
import { KeyView } from "./key-view.ts";
import { filesBox, takeFiles } from "./take-files.ts";
import { TraineeView } from "./trainee-view.ts";
import { withdrawalsView } from "./withdrawals-view.ts";

export class DeskPage {
  readonly #desk: Desk;
  readonly #naming: Naming;
  readonly #key: KeyView;
  readonly #list = element("div");
  readonly #said = element("div", { class: "file-said", role: "status" });
  readonly #trainee = element("div");
  readonly #withdrawals = element("div");
  #view: TraineeView | undefined;

  constructor(place: HTMLElement, desk: Desk, naming: Naming) {
    this.#desk = desk;
    this.#naming = naming;
    this.#key = new KeyView({ desk, cipher: cipherHere(), changed: () => this.#changed() });
    place.append(this.#key.element, this.#files(), this.#trainee, this.#withdrawals);
    this.#changed();
    this.#openNamed();
    addEventListener("hashchange", () => this.#openNamed());
  }

  #files(): HTMLElement {
    return element(
      "section",
      { class: "group", "aria-labelledby": "s_files" },
      element("h2", { id: "s_files" }, t`Trainees`),
      filesBox("desk-file", (files) => void this.#take(files)),
      this.#said,
      this.#list,
    );
  }

  async #take(files: readonly File[]): Promise<void> {
    const { told, last } = await takeFiles(this.#desk, files);
    this.#said.replaceChildren(...told);
    this.#changed();
    if (last !== undefined && files.length === 1) this.#open(last);
  }

  /** What a QR code of the evening sheet leads to. */
  #openNamed(): void {
    const owner = location.hash.slice(1);
    if (!owner.startsWith("did:key:")) return;
    if (this.#desk.trainee(owner) === undefined) this.#sayMissing(owner);
    else this.#open(owner);
  }

  #sayMissing(owner: string): void {
    const words = t`The file of the key ${shortKey(owner)} is not on this desk. Open it first.`;
    this.#said.replaceChildren(element("p", {}, words));
    goTo(this.#said);
  }

  #open(owner: string): void {
    this.#view = new TraineeView({
      ...{ desk: this.#desk, owner, naming: this.#naming },
      changed: () => this.#drawList(),
    });
    this.#trainee.replaceChildren(this.#view.element);
    goTo(this.#view.element.querySelector("h2")!);
  }

  #changed(): void {
    this.#drawList();
    this.#view?.draw();
    this.#withdrawals.replaceChildren(withdrawalsView(this.#desk, this.#naming) ?? "");
  }

  #drawList(): void {
    const trainees = this.#desk.trainees();
    if (trainees.length === 0) {
      this.#list.replaceChildren(element("p", {}, t`No file is on the desk.`));
      return;
    }
    this.#list.replaceChildren(
      element("ul", { class: "desk-list" }, ...trainees.map((each) => this.#item(each))),
      askTwice({
        text: t`Clear the desk`,
        loss: () => this.#loss(),
        yes: t`Clear it`,
        no: t`Leave it`,
        act: () => void this.#clear(),
      }),
    );
  }

  #item(trainee: Trainee): HTMLElement {
    const { owner, name } = trainee.overview.record;
    const open = openFor(trainee).filter(({ isHanded }) => !isHanded).length;
    return element(
      "li",
      {},
      button(name, () => this.#open(owner)),
      element("span", { class: "small" }, t`key ${shortKey(owner)}`),
      trainee.problems.length === 0
        ? undefined
        : element("span", { class: "warning" }, t`does not all add up`),
      open === 0 ? undefined : element("span", {}, t`${counted(open, "statement")} to hand back`),
    );
  }

  #loss(): string {
    const open = this.#desk
      .trainees()
      .flatMap(openFor)
      .filter(({ isHanded }) => !isHanded).length;
    const lost =
      open === 0
        ? ""
        : t` ${counted(open, "statement")} that you have signed and not handed back would be lost.`;
    return t`The trainees’ files are taken off this device; they have their own.${lost} Your key stays.`;
  }

  async #clear(): Promise<void> {
    await this.#desk.clear();
    this.#view = undefined;
    this.#trainee.replaceChildren();
    this.#changed();
  }
}
