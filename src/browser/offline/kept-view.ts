/** How much of the site is kept on this device, and the button that keeps the rest. */
import { t } from "../../engine/words.ts";
import { scriptIsHere } from "../page/data.ts";
import { button, element } from "../page/element.ts";
import { NotKept } from "./fetch-file.ts";
import { keepFiles } from "./keep-files.ts";
import { goingOnWords, notYetWords, partWords, troubleWords, wholeWords, whyNot } from "./kept-words.ts";
import { type HowFar, howFar, type Standing } from "./messages.ts";
import { keptEdition, readNote, writeNote } from "./shelf.ts";

export class KeptView {
  readonly #root: string;
  readonly #words = element("p", { class: "kept-words", role: "status" });
  readonly #more = element("p", { class: "kept-more" });

  constructor(place: HTMLElement, root: string) {
    this.#root = root;
    place.append(this.#words, this.#more);
    scriptIsHere();
    const reason = whyNot();
    if (reason !== undefined) this.#words.textContent = reason;
    else this.#watch();
  }

  #watch(): void {
    navigator.serviceWorker.addEventListener("message", ({ data }) => {
      const standing = data as Standing;
      if (standing.trouble !== undefined || standing.kept < standing.of) this.#tell(standing);
      else void this.#look();
    });
    navigator.serviceWorker.startMessages();
    void navigator.serviceWorker.ready.then(() => this.#look());
    void this.#look();
  }

  #tell(standing: Standing): void {
    const { trouble } = standing;
    this.#words.textContent =
      trouble === undefined ? goingOnWords(standing) : troubleWords(trouble, standing);
  }

  async #look(): Promise<void> {
    const registration = await navigator.serviceWorker.getRegistration(this.#root);
    const far = registration?.active && (await ask(registration.active));
    const standing = await readNote(caches, this.#root, "standing");
    if (far) this.#show(far);
    else if (standing?.trouble === undefined) this.#words.textContent = notYetWords();
    if (standing?.trouble !== undefined) this.#tell(standing);
  }

  #show(far: HowFar): void {
    const whole = far.kept === far.of;
    this.#words.textContent = whole ? wholeWords(far) : partWords(far);
    const keep = button(t`Keep everything on this device`, () => void this.#keepAll(far, keep));
    this.#more.replaceChildren(...(whole ? [] : [keep]));
  }

  /** Goes on from what is there, and can be left and begun again. */
  async #keepAll({ version }: HowFar, keep: HTMLButtonElement): Promise<void> {
    keep.disabled = true;
    let last: Standing = { kept: 0, of: 0 };
    const told = (kept: number, of: number): void => {
      last = { kept, of };
      this.#tell(last);
    };
    try {
      await navigator.storage?.persist?.().catch(() => false);
      const files = (await keptEdition(caches, this.#root, version))?.files ?? [];
      await keepFiles(files, { caches, root: this.#root, version, told });
      await writeNote(caches, this.#root, "standing", undefined);
      await this.#look();
    } catch (cause) {
      if (!(cause instanceof NotKept)) throw cause;
      this.#tell({ ...last, trouble: cause.trouble });
      keep.disabled = false;
      keep.focus();
    }
  }
}

function ask(worker: ServiceWorker): Promise<HowFar> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.addEventListener("message", ({ data }) => resolve(data as HowFar));
    port1.start();
    worker.postMessage(howFar, [port2]);
  });
}
