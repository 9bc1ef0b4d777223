/** One trainee on the desk: what their file is worth, how they stand with a module, and what to sign for them. */

import { noFacts, revisionKey } from "../../engine/competency/facts.ts";
import { type Signing, whyNotSign } from "../../engine/competency/may-sign.ts";
import { standingName } from "../../engine/competency/names.ts";
import type { Occasion } from "../../engine/competency/new-statement.ts";
import { newKeyStatement, newObservation, newSignOff } from "../../engine/competency/new-statement.ts";
import type { ReleaseCard } from "../../engine/competency/release.ts";
import type { Statement } from "../../engine/competency/sign-off.ts";
import { t } from "../../engine/words.ts";
import { evidenceView } from "../opened/evidence-view.ts";
import { problemList } from "../opened/problem-list.ts";
import { judgedIn, statementsView } from "../opened/statements-view.ts";
import { facts } from "../opened/table.ts";
import { button, element, goTo } from "../page/element.ts";
import { saveFile } from "../page/save-file.ts";
import { counted, sentence } from "../page/words.ts";
import { slug } from "../record/file-name.ts";
import { type Naming, nextWords, standingSentence } from "../record/next-words.ts";
import { type Desk, openFor, type Trainee } from "./desk.ts";
import { newKeyForm } from "./new-key-form.ts";
import { observationForm } from "./observation-form.ts";
import { refusalView, remarksView } from "./refusal-view.ts";
import { signOffForm } from "./sign-off-form.ts";
import { supervisedNote } from "./supervised-note.ts";

export interface TraineeViewOptions {
  readonly desk: Desk;
  readonly owner: string;
  readonly naming: Naming;
  readonly changed: () => void;
}

export class TraineeView {
  readonly element = element("section", { class: "group desk-trainee", "aria-labelledby": "s_trainee" });
  readonly #options: TraineeViewOptions;
  readonly #said = element("div", { class: "file-said", role: "status" });
  readonly #body = element("div");
  #module: string;

  constructor(options: TraineeViewOptions) {
    this.#options = options;
    this.#module = this.#firstModule();
    this.draw();
  }

  get #trainee(): Trainee {
    return this.#options.desk.trainee(this.#options.owner)!;
  }

  get #card(): ReleaseCard {
    return this.#options.naming.cards.get(this.#module)!;
  }

  /** The first that waits for a mentor, otherwise the first that was begun. */
  #firstModule(): string {
    const states = [...this.#trainee.overview.states.values()];
    const waiting = states.find(({ standing }) => standing.startsWith("ready"));
    return (waiting ?? states.find(({ standing }) => standing !== "not begun") ?? states[0]!).module;
  }

  draw(): void {
    const { record } = this.#trainee.overview;
    this.element.replaceChildren(
      element("h2", { id: "s_trainee", tabindex: "-1" }, record.name),
      this.#file(),
      this.#chooser(),
      this.#body,
      this.#said,
      ...this.#handBack(),
      newKeyForm({ say: (words) => this.#say(words), sign: (oldKey) => void this.#signNewKey(oldKey) }),
    );
    this.#drawModule();
  }

  #file(): HTMLElement {
    const { overview, problems } = this.#trainee;
    const { day } = this.#options.naming;
    return element(
      "div",
      {},
      facts([
        [t`Key`, overview.record.owner],
        [t`Looked at`, day(overview.situation.on)],
        [t`Holds`, counted(overview.record.events.length, "entry", "entries")],
      ]),
      problems.length === 0
        ? element("p", {}, t`All of the file adds up.`)
        : element(
            "div",
            {},
            element("p", { class: "warning" }, t`Not all of the file adds up:`),
            problemList(problems),
          ),
    );
  }

  #chooser(): HTMLElement {
    const { naming } = this.#options;
    const { states } = this.#trainee.overview;
    const options = [...naming.cards.values()].map(({ module, title }) =>
      element(
        "option",
        { value: module, selected: module === this.#module },
        `${title}: ${standingName(states.get(module)?.standing ?? "")}`,
      ),
    );
    const select = element("select", { id: "desk-module" }, ...options);
    select.addEventListener("change", () => {
      this.#module = select.value;
      this.#said.replaceChildren();
      this.#drawModule();
    });
    return element("p", { class: "field" }, element("label", { for: "desk-module" }, t`Module`), select);
  }

  #drawModule(): void {
    const { naming } = this.#options;
    const { overview } = this.#trainee;
    const card = this.#card;
    const state = overview.states.get(card.module)!;
    const missing = state.missing.map((each) => element("li", {}, nextWords(each, card, naming).text));
    const here = judgedIn(overview).filter(
      ({ signed: { statement } }) => "module" in statement && statement.module === card.module,
    );
    this.#body.replaceChildren(
      element("h3", {}, t`${card.title}, revision ${card.revision}`),
      element("p", { class: "standing" }, standingSentence(state, card, naming.day)),
      ...(missing.length === 0
        ? []
        : [element("p", {}, t`Still missing before they may work alone:`), element("ul", {}, ...missing)]),
      element("h4", {}, t`Evidence, marked again`),
      evidenceView(overview, naming, card.module) ?? element("p", {}, t`None on this module.`),
      ...supervisedNote(overview, card),
      element("h4", {}, t`Signed so far`),
      statementsView(here, naming, overview.situation.rules.timeZone) ??
        element("p", {}, t`Nothing on this module.`),
      ...this.#forms(card),
    );
  }

  /** What this mentor may sign of the module; in place of what they may not, why. */
  #forms(card: ReleaseCard): HTMLElement[] {
    const { desk } = this.#options;
    const { key } = desk;
    if (key === undefined)
      return [element("p", { class: "warning" }, t`To sign, make or load a key first, above.`)];
    const { overview } = this.#trainee;
    const { mentors, on } = overview.situation;
    const rows = mentors.get(key.did) ?? [];
    if (rows.length === 0) return [element("p", { class: "warning" }, unlisted)];
    const { module } = card;
    const whyNot = (signing: Signing): string | undefined => {
      const reason = whyNotSign(rows, signing, on);
      return reason === undefined ? undefined : sentence(reason);
    };
    const never = whyNot({ kind: "observation", module });
    if (never !== undefined) return [element("p", { class: "warning" }, never)];
    const { passed } = overview.assessed.gathered.of.get(revisionKey(card)) ?? noFacts;
    const say = (words: string): void => this.#say(words);
    return [
      element("h4", {}, t`Observation`),
      observationForm({
        ...{ card, say },
        sign: (seen) => void this.#sign((when) => newObservation(when, overview, card, seen)),
      }),
      element("h4", {}, t`Sign-off`),
      signOffForm({
        ...{ card, say, asksScore: card.quiz?.supervised === true && passed === undefined },
        whyNot: (level) => whyNot({ kind: "sign-off", module, level }),
        sign: (granted) => void this.#sign((when) => newSignOff(when, overview, card, granted)),
      }),
    ];
  }

  async #signNewKey(oldKey: string): Promise<void> {
    if (this.#options.desk.key === undefined) return this.#say(t`To sign, make or load a key first, above.`);
    await this.#sign((when) => newKeyStatement(when, this.#trainee.overview, oldKey));
  }

  async #sign(make: (when: Occasion) => Statement): Promise<void> {
    const { desk, naming, changed } = this.#options;
    const statement = make(await desk.occasion());
    const before = desk.before(statement, this.#trainee);
    const refusal = refusalView(
      before,
      naming,
      "module" in statement ? naming.cards.get(statement.module) : undefined,
    );
    if (refusal !== undefined) return this.#show(refusal);
    try {
      await desk.sign(statement, this.#trainee);
    } catch (error) {
      return this.#say(
        t`Nothing was signed: ${error instanceof Error ? error.message : t`the browser refused`}.`,
      );
    }
    this.draw();
    changed();
    this.#show(
      remarksView(before) ?? element("p", {}, t`Signed. Hand the file back, below, when you are done.`),
    );
  }

  #handBack(): HTMLElement[] {
    const open = openFor(this.#trainee);
    if (open.length === 0) return [];
    const handed = open.every(({ isHanded }) => isHanded) ? t` It was saved before.` : "";
    return [
      element("h3", {}, t`To hand back`),
      element(
        "p",
        {},
        t`${counted(open.length, "statement")} signed here that the file does not have.${handed} The trainee adds it on My record, by “Add a file to it”.`,
      ),
      element(
        "div",
        { class: "actions" },
        button(t`Save what was signed`, () => void this.#save(), { class: "is-main" }),
      ),
    ];
  }

  async #save(): Promise<void> {
    const { desk, owner } = this.#options;
    const { name } = this.#trainee.overview.record;
    const file = signedFileName(name, desk.options.now());
    saveFile(file, await desk.handBack(owner));
    this.draw();
    this.#say(t`Saved as ${file}. Hand it to ${name}.`);
  }

  #say(words: string): void {
    this.#show(element("p", {}, words));
  }

  #show(what: HTMLElement): void {
    this.#said.replaceChildren(what);
    goTo(this.#said);
  }
}

const unlisted = t`Nothing can be signed yet: the programme does not list your key, above, as a mentor’s.`;

/** "jo-2026-05-12.signed.json"; `now` is ms since 1970. */
export const signedFileName = (name: string, now: number): string =>
  `${[slug(name), new Date(now).toISOString().slice(0, 10)].filter((part) => part !== "").join("-")}.signed.json`;
