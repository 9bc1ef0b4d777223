/** "I have read this sheet": a button that writes it into the record, or when that was done. The recorder comes only when it is pressed. */
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { loadScript } from "../page/load-script.ts";
import { openIfThere } from "./database.ts";
import { dateLanguage } from "./day-words.ts";
import type { Happened } from "./own-record.ts";
import { recorderHere } from "./recorder-global.ts";

/** What the page says, as attributes of the place for the button. */
interface Note {
  readonly kind: "read" | "hazard";
  readonly programme: string;
  readonly of: string;
  readonly revision: number;
  readonly recorder: string;
  readonly record: string;
}

const words = {
  read: { button: t`I have read this sheet`, noted: t`Read` },
  hazard: { button: t`I have read and understood this`, noted: t`Acknowledged` },
} as const;

export class NoteView {
  readonly #place: HTMLElement;
  readonly #note: Note;

  constructor(place: HTMLElement) {
    this.#place = place;
    const { note, programme = "", of = "", revision = "0", recorder = "", record = "" } = place.dataset;
    const kind = note === "hazard" ? "hazard" : "read";
    this.#note = { kind, programme, of, revision: Number(revision), recorder, record };
    void this.#begin();
  }

  async #begin(): Promise<void> {
    const at = await this.#notedAt();
    if (at === undefined) this.#ask();
    else this.#tell(at, undefined);
  }

  #happened(): Happened {
    const { kind, of, revision } = this.#note;
    return kind === "hazard" ? { kind, hazard: of } : { kind, module: of, revision };
  }

  /** When it was noted last; undefined where it was not, or not of this revision. */
  async #notedAt(): Promise<string | undefined> {
    const database = await openIfThere(this.#note.programme);
    if (database === undefined) return undefined;
    const wanted = Object.entries(this.#happened());
    const events = await database.getAll("events").catch(() => []);
    database.close();
    const same = events.filter((event) =>
      wanted.every(([field, value]) => Reflect.get(event, field) === value),
    );
    return same
      .map(({ at }) => at)
      .sort()
      .at(-1);
  }

  #ask(): void {
    const press = button(words[this.#note.kind].button, () => void this.#add(press));
    this.#place.replaceChildren(press, element("small", {}, t`Writes it into your record, on this device.`));
  }

  async #add(press: HTMLButtonElement): Promise<void> {
    press.disabled = true;
    try {
      if (recorderHere() === undefined) await loadScript(this.#note.recorder);
      const record = await recorderHere()!(this.#note.programme);
      this.#tell(await record.add(this.#happened()), record.troubleWords());
    } catch {
      press.disabled = false;
      this.#say(t`It could not be written down just now. Try again when the page has loaded anew.`);
    }
  }

  #tell(at: string, trouble: string | undefined): void {
    const day = new Date(at).toLocaleDateString(dateLanguage(document.documentElement.lang), {
      day: "numeric",
      month: "long",
      year: "numeric",
    });
    const line = element(
      "p",
      { tabindex: "-1" },
      t`${words[this.#note.kind].noted} on ${day}, in `,
      element("a", { href: this.#note.record }, t`your record`),
      ".",
    );
    const hadFocus = this.#place.contains(document.activeElement);
    this.#place.replaceChildren(line);
    if (trouble !== undefined) this.#say(trouble);
    if (hadFocus) line.focus();
  }

  #say(text: string): void {
    this.#place.querySelector(".warning")?.remove();
    this.#place.append(element("p", { class: "warning", role: "alert" }, text));
  }
}
