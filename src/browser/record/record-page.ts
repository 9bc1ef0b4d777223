/** "My record" as a whole: what is kept is read, worked out and shown, again whenever it has changed. */
import type { JudgedSignOff } from "../../engine/competency/support.ts";
import type { ProgrammeData } from "../../model/record-data.ts";
import { element, goTo } from "../page/element.ts";
import { saveFile } from "../page/save-file.ts";
import { type AddedFile, addedFile } from "./added-file.ts";
import { calendarFile, type Lapse } from "./calendar-file.ts";
import { countsOf, factsOf, lapsesOf, nameOf } from "./counts.ts";
import { type DayWords, dayWords } from "./day-words.ts";
import { deviceView } from "./device-view.ts";
import { eraseView } from "./erase-view.ts";
import { fillFacts } from "./facts-view.ts";
import { FileView } from "./file-view.ts";
import { hereWords } from "./here-words.ts";
import { cipherHere, saveKey, takeKey } from "./key-on-device.ts";
import { fillLog } from "./log-view.ts";
import type { Naming } from "./next-words.ts";
import { modulesToLoad, type Overview, overviewOf } from "./overview.ts";
import type { Held, OwnRecord } from "./own-record.ts";
import { signOffsView } from "./sign-offs-view.ts";
import type { SiteData } from "./site-data.ts";
import { statementView } from "./statement-view.ts";
import { statusLists } from "./status-lists.ts";
import { isPromised, stayWords } from "./stay-words.ts";

export interface RecordPageOptions {
  readonly page: HTMLElement;
  readonly own: OwnRecord;
  readonly site: SiteData;
  readonly programme: ProgrammeData;
  /** The way to the root of the site. */
  readonly root: string;
  readonly language: string;
  readonly now: () => number;
  /** Takes away what other pages remember in this browser. */
  readonly forget: () => void;
}

export class RecordPage {
  readonly #options: RecordPageOptions;
  readonly #naming: Naming;
  readonly #file: FileView;
  readonly #signOffs = element("div");
  readonly #statement = element("div");
  #held: Held | undefined;
  #overview: Overview | undefined;
  /** Of several readings under way, only the last is shown. */
  #reading = 0;

  constructor(options: RecordPageOptions) {
    this.#options = options;
    const { page, programme, language } = options;
    const day: DayWords = dayWords(language);
    this.#naming = { day, cards: new Map(programme.modules.map((card) => [card.module, card])) };
    this.#file = new FileView(this.#actions(undefined));
    page.append(this.#statement);
    page.querySelector(".record-tools")!.append(this.#signOffs, this.#file.element, this.#device());
    page.querySelector(".record-end")!.append(this.#erase());
    page.querySelector(".record-here")!.textContent = hereWords({
      protocol: location.protocol,
      isSecure: globalThis.isSecureContext,
      hasCipher: cipherHere() !== undefined,
    });
  }

  /** Reads everything again and shows it. */
  async show(): Promise<void> {
    this.#reading += 1;
    const reading = this.#reading;
    const { own, site, programme, now } = this.#options;
    const held = await own.held();
    const ids = modulesToLoad(held.record, programme.modules);
    const modules = (await Promise.all(ids.map((id) => site.module(id)))).filter(
      (data) => data !== undefined,
    );
    const statuses = await statusLists(programme, held.record);
    const promised = await isPromised();
    if (reading !== this.#reading) return;
    this.#held = held;
    this.#overview = overviewOf({ record: held.record, programme, modules, statuses, now: now() });
    this.#draw(this.#overview, held, promised);
  }

  #draw(overview: Overview, held: Held, promised: boolean | undefined): void {
    const { page, root, own } = this.#options;
    fillFacts(page, factsOf(overview, held, this.#naming.day));
    fillLog(page.querySelector<HTMLElement>(".log")!, overview, this.#naming, root);
    const print = (signOff: JudgedSignOff): void => this.#openStatement(signOff, overview);
    this.#signOffs.replaceChildren(signOffsView({ overview, naming: this.#naming, root, print }));
    this.#file.update(this.#actions(overview));
    const { unsaved, total } = countsOf(held);
    const trouble = own.troubleWords();
    page
      .querySelector(".record-notes")!
      .replaceChildren(
        ...(trouble === undefined ? [] : [element("p", { class: "warning", role: "alert" }, trouble)]),
        element("p", {}, stayWords(promised, unsaved, total)),
      );
  }

  #actions(overview: Overview | undefined): ConstructorParameters<typeof FileView>[0] {
    const { own } = this.#options;
    const lapses = overview === undefined ? [] : lapsesOf(overview, this.#naming);
    return {
      save: async () => {
        const { name, text } = await own.file();
        saveFile(name, text);
        await this.show();
        return name;
      },
      add: (text) => this.#add(text),
      calendar:
        overview === undefined || lapses.length === 0
          ? undefined
          : () => this.#saveCalendar(overview, lapses),
      rename: async (name) => {
        await own.change({ name, named: this.#instant() });
        await this.show();
      },
      name: overview === undefined ? "" : nameOf(overview.record),
    };
  }

  #instant(): string {
    return new Date(this.#options.now()).toISOString();
  }

  async #add(text: string): Promise<AddedFile> {
    const { own } = this.#options;
    await this.show();
    const added = addedFile(text, this.#overview!, this.#instant());
    if (!added.ok) return added;
    await own.keep(added.events);
    await own.change({ name: added.name, named: added.named });
    await this.show();
    return added;
  }

  #saveCalendar({ record, situation }: Overview, lapses: readonly Lapse[]): void {
    const { rules } = situation;
    const { owner } = record;
    const text = calendarFile({
      ...{ programme: rules.programme, soonDays: rules.soonDays, owner, lapses },
      now: this.#instant(),
    });
    saveFile("sign-offs.ics", text, "text/calendar");
  }

  #openStatement(signOff: JudgedSignOff, overview: Overview): void {
    const close = (): void => {
      this.#statement.replaceChildren();
      goTo(this.#signOffs.querySelector("h2")!);
    };
    const view = statementView({ signOff, overview, naming: this.#naming, close });
    this.#statement.replaceChildren(view);
    goTo(view.querySelector("h2")!);
  }

  #device(): HTMLElement {
    const { own } = this.#options;
    const cipher = cipherHere();
    return deviceView({
      hasCipher: cipher !== undefined,
      saveKey: async (passphrase) => saveKey(own, cipher!, passphrase),
      takeKey: async (text, passphrase) => {
        const refusal = await takeKey(own, cipher!, text, passphrase);
        await this.show();
        return refusal;
      },
    });
  }

  #erase(): HTMLElement {
    const { own, forget } = this.#options;
    return eraseView({
      counts: () => countsOf(this.#held),
      erase: async () => {
        await own.erase();
        forget();
        this.#statement.replaceChildren();
        await this.show();
      },
    });
  }
}
