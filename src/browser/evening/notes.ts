/** The evening's notes: kept as they are written, carried as a file to an address that can sign, and signed together. */

import { mayBeSigned } from "../../engine/competency/before-signing.ts";
import { at, isList, isObject, textAt } from "../../engine/competency/fields.ts";
import type { Json } from "../../engine/competency/json.ts";
import { outcomes } from "../../engine/competency/levels.ts";
import { newObservation } from "../../engine/competency/new-statement.ts";
import { readJson } from "../../engine/competency/strict-json.ts";
import { t } from "../../engine/words.ts";
import type { Desk } from "../desk/desk.ts";
import { type EveningNote, noteKey } from "../desk/desk-shelf.ts";
import { wordsWanted } from "../desk/outcome-words.ts";
import { type EveningTask, phasesOf, taskKey } from "./task.ts";

export const emptyNote = (owner: string, { card, phase }: EveningTask): EveningNote => ({
  ...{ owner, phase, module: card.module, revision: card.revision },
  ...{ ticked: [], outcome: undefined, words: "" },
});

const isEmpty = ({ ticked, outcome, words }: EveningNote): boolean =>
  ticked.length === 0 && outcome === undefined && words === "";

export class Notes {
  readonly #desk: Desk;
  readonly #tasks: ReadonlyMap<string, EveningTask>;
  readonly #notes = new Map<string, EveningNote>();

  constructor(desk: Desk, tasks: readonly EveningTask[]) {
    this.#desk = desk;
    this.#tasks = new Map(tasks.map((task) => [taskKey(task), task]));
  }

  async load(): Promise<void> {
    for (const note of await this.#desk.shelf.all("notes")) this.#notes.set(noteKey(note), note);
  }

  of(owner: string, task: EveningTask): EveningNote {
    const empty = emptyNote(owner, task);
    const kept = this.#notes.get(noteKey(empty));
    return kept?.revision === empty.revision ? kept : empty;
  }

  all(): EveningNote[] {
    return [...this.#notes.values()];
  }

  async write(note: EveningNote): Promise<void> {
    const key = noteKey(note);
    if (isEmpty(note)) return this.#remove(key);
    this.#notes.set(key, note);
    await this.#desk.shelf.put("notes", key, note);
  }

  async #remove(key: string): Promise<void> {
    this.#notes.delete(key);
    await this.#desk.shelf.remove("notes", key);
  }

  /** Signs every note that is complete and whose trainee is on the desk; gives in words what was left, by name. */
  async signAll(): Promise<{ readonly signed: number; readonly left: readonly string[] }> {
    const left: string[] = [];
    let signed = 0;
    for (const note of this.all()) {
      const why = await this.#sign(note);
      if (why === undefined) signed += 1;
      else left.push(why);
    }
    return { signed, left };
  }

  async #sign(note: EveningNote): Promise<string | undefined> {
    const { owner, module, phase, outcome, words, ticked } = note;
    const trainee = this.#desk.trainee(owner);
    if (trainee === undefined) return t`A note on ${module} waits for the file of … ${owner.slice(-8)}.`;
    const { name } = trainee.overview.record;
    const task = this.#tasks.get(`${module} ${phase}`);
    if (task === undefined || task.card.revision !== note.revision)
      return t`${name}: the note is on ${module}, revision ${note.revision}, which the site no longer has. Watch it on the present one.`;
    if (outcome === undefined) return t`${name}: “${task.title}” has no outcome yet.`;
    const wanted = wordsWanted(outcome, words);
    if (wanted !== undefined) return `${name}: ${wanted}`;
    const seen = { outcome, ticked, words: words.trim(), phases: phasesOf(task) };
    const statement = newObservation(await this.#desk.occasion(), trainee.overview, task.card, seen);
    const before = this.#desk.before(statement, trainee);
    if (!mayBeSigned(before))
      return `${name}: ${before.refusals.map(({ code, message }) => `${code}: ${message}`).join(" ")}`;
    await this.#desk.sign(statement, trainee);
    await this.#remove(noteKey(note));
    return undefined;
  }

  /** For an address that can sign. */
  text(): string {
    const { identifier } = this.#desk.options.programme.rules;
    return `${JSON.stringify({ eveningNotes: 1, programme: identifier, notes: this.all() }, null, 1)}\n`;
  }

  /** Takes up notes of a file; gives how many, or in words why none. What is written here already is kept. */
  async takeUp(text: string): Promise<number | string> {
    const json = readJson(text);
    if (!json.ok) return json.problem.message;
    const { identifier } = this.#desk.options.programme.rules;
    const list = at(json.value, "notes");
    if (
      at(json.value, "eveningNotes") !== 1 ||
      textAt(json.value, "programme") !== identifier ||
      !isList(list)
    )
      return t`This is no file of notes from an evening of this programme. Choose the one that “Save the notes” has saved.`;
    const notes = list.map((each) => this.#noteIn(each)).filter((note) => note !== undefined);
    for (const note of notes) if (!this.#notes.has(noteKey(note))) await this.write(note);
    return notes.length;
  }

  #noteIn(json: Json): EveningNote | undefined {
    const [owner, module, phase, words] = ["owner", "module", "phase", "words"].map((name) =>
      textAt(json, name),
    );
    const task = this.#tasks.get(`${module} ${phase}`);
    const [ticked, revision] = [at(json, "ticked"), at(json, "revision")];
    if (
      !isObject(json) ||
      owner === undefined ||
      words === undefined ||
      task === undefined ||
      !isList(ticked)
    )
      return undefined;
    const steps = new Set(task.checks.map(({ step }) => step));
    return {
      ...{ owner, words: words.slice(0, 1000), module: task.card.module, phase: task.phase },
      revision: typeof revision === "number" ? revision : 0,
      ticked: ticked.filter((step): step is string => typeof step === "string" && steps.has(step)),
      outcome: outcomes.find((outcome) => outcome === at(json, "outcome")),
    };
  }
}
