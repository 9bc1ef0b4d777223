/** A mentor's desk without its page: the key, the trainees whose files lie on it, and what is signed for them. */

import { type BeforeSigning, beforeSigning, mayBeSigned } from "../../engine/competency/before-signing.ts";
import { signStatement, statusListId } from "../../engine/competency/credential.ts";
import { makeEvent } from "../../engine/competency/events.ts";
import { freshPlace } from "../../engine/competency/fresh-place.ts";
import { portable } from "../../engine/competency/libraries.ts";
import { inOrder } from "../../engine/competency/merge.ts";
import type { Occasion } from "../../engine/competency/new-statement.ts";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import type { Statement } from "../../engine/competency/sign-off.ts";
import { placesIn } from "../../engine/competency/status-bits.ts";
import { t } from "../../engine/words.ts";
import { type OpenOptions, openFile, overviewNow } from "../opened/open-file.ts";
import { judgedIn } from "../opened/statements-view.ts";
import type { Overview } from "../record/overview.ts";
import { statusLists } from "../record/status-lists.ts";
import type { DeskShelf, KeptFile, KeptSigned } from "./desk-shelf.ts";
import { type MentorKey, signerOf } from "./mentor-key.ts";

/** A trainee's file with what was signed on this desk since. */
export interface Trainee {
  readonly overview: Overview;
  readonly file: KeptFile;
  /** What is wrong with the file as it was handed in. */
  readonly problems: readonly RecordProblem[];
  readonly signed: readonly KeptSigned[];
}

export type TakenIn =
  | { readonly ok: true; readonly owner: string; readonly name: string }
  | { readonly ok: false; readonly problems: readonly RecordProblem[] };

export class Desk {
  readonly options: OpenOptions;
  readonly shelf: DeskShelf;
  key: MentorKey | undefined;
  readonly #trainees = new Map<string, Trainee>();

  constructor(options: OpenOptions, shelf: DeskShelf) {
    this.options = options;
    this.shelf = shelf;
  }

  /** Takes up what the browser has kept. */
  async load(): Promise<void> {
    const kept = await this.shelf.key().catch(() => undefined);
    if (kept !== undefined) this.key = signerOf(kept);
    for (const file of await this.shelf.all("files")) await this.#lay(file);
  }

  /** By name. */
  trainees(): Trainee[] {
    const names = new Intl.Collator();
    return [...this.#trainees.values()].sort((a, b) =>
      names.compare(a.overview.record.name, b.overview.record.name),
    );
  }

  trainee(owner: string): Trainee | undefined {
    return this.#trainees.get(owner);
  }

  /** Lays a trainee's file on the desk, in the place of an earlier one of the same person. */
  async takeIn(text: string): Promise<TakenIn> {
    const opened = await openFile(text, this.options);
    if (opened.kind === "nothing") return { ok: false, problems: opened.problems };
    if (opened.kind !== "record") return { ok: false, problems: [noRecord] };
    const { record, situation } = opened.overview;
    if (record.programme !== situation.rules.identifier) return { ok: false, problems: opened.problems };
    const file: KeptFile = { owner: record.owner, name: record.name, text };
    await this.shelf.put("files", record.owner, file);
    await this.#lay(file);
    return { ok: true, owner: record.owner, name: record.name };
  }

  /** Takes a trainee's file off the desk; what was signed and not handed back stays. */
  async putAway(owner: string): Promise<void> {
    this.#trainees.delete(owner);
    await this.shelf.remove("files", owner);
  }

  async #lay(file: KeptFile): Promise<void> {
    const opened = await openFile(file.text, this.options);
    if (opened.kind !== "record") return;
    const all = await this.shelf.all("signed");
    const signed = all.filter(({ subject }) => subject === file.owner);
    const overview = await this.#with(opened.overview, signed);
    this.#trainees.set(file.owner, { overview, file, problems: opened.problems, signed });
  }

  /** The record as it is once the trainee has added what was signed. */
  async #with({ record }: Overview, signed: readonly KeptSigned[]): Promise<Overview> {
    const known = new Set(
      record.events.flatMap((event) => ("credential" in event ? [event.credential.id] : [])),
    );
    const added = signed
      .filter(({ id }) => !known.has(id))
      .map(({ kind, credential, at }) => makeEvent({ kind, at, credential }, portable));
    return overviewNow({ ...record, events: inOrder([...record.events, ...added]) }, this.options);
  }

  /** An occasion to sign, with a place on the mentor's list that was not used before. */
  async occasion(): Promise<Occasion> {
    const issuer = this.key?.did ?? "";
    const draw = (): number => crypto.getRandomValues(new Uint32Array(1))[0]!;
    return {
      issuer,
      now: new Date(this.options.now()).toISOString(),
      id: `urn:uuid:${newUuid()}`,
      statusIndex: freshPlace(await this.#usedPlaces(issuer), draw),
    };
  }

  /** Those that were given away here, stand in files on the desk, or are withdrawn on the list that the site has. */
  async #usedPlaces(issuer: string): Promise<ReadonlySet<number>> {
    const { programme } = this.options;
    const given = await this.shelf.all("places");
    const lists = await statusLists(programme, { events: [] });
    const statements = this.trainees().flatMap(({ overview }) =>
      judgedIn(overview).map(({ signed }) => signed.statement),
    );
    return new Set([
      ...given.filter(({ did }) => did === issuer).map(({ place }) => place),
      ...statements.filter((each) => each.issuer === issuer).map(({ statusIndex }) => statusIndex),
      ...lists
        .filter(({ id }) => id === statusListId(programme.rules.identifier, issuer))
        .flatMap(({ bits }) => placesIn(bits)),
    ]);
  }

  /** What speaks against signing this. */
  before(statement: Statement, { overview, problems }: Trainee): BeforeSigning {
    const before = beforeSigning(statement, overview);
    const altered = problems.filter(({ code }) => code === "owner-signature" || code === "event-id");
    return { ...before, refusals: [...altered, ...before.refusals] };
  }

  /** Signs and keeps it until it is handed back. Throws a RangeError where the engine refuses. */
  async sign(statement: Statement, trainee: Trainee): Promise<void> {
    if (this.key === undefined || !mayBeSigned(this.before(statement, trainee)))
      throw new RangeError("this may not be signed");
    const { identifier, programme } = this.options.programme.rules;
    const { sign, did } = this.key;
    const credential = await signStatement(statement, {
      ...{ identifier, programme, sign, primitives: portable, created: statement.validFrom },
    });
    const place = statement.statusIndex;
    await this.shelf.put("places", `${did} ${place}`, { did, place });
    const { id, kind, subject, validFrom: at } = statement;
    await this.shelf.put("signed", id, { id, kind, subject, at, credential, isHanded: false });
    await this.#lay(trainee.file);
  }

  /** All that was signed for a trainee here and is not in the file that they handed in, as a file for them. */
  async handBack(owner: string): Promise<string> {
    const trainee = this.#trainees.get(owner);
    const open = trainee === undefined ? [] : openFor(trainee);
    for (const each of open) await this.shelf.put("signed", each.id, { ...each, isHanded: true });
    if (trainee !== undefined) await this.#lay(trainee.file);
    return `${JSON.stringify(
      open.map(({ credential }) => credential),
      null,
      1,
    )}\n`;
  }

  /** Takes everything away but the key. */
  async clear(): Promise<void> {
    for (const { owner } of await this.shelf.all("files")) await this.putAway(owner);
    for (const { id } of await this.shelf.all("signed")) await this.shelf.remove("signed", id);
  }
}

/** What was signed here and is not in the file that was handed in. */
export function openFor({ file, signed }: Trainee): KeptSigned[] {
  return signed.filter(({ id }) => !file.text.includes(id));
}

/** RFC 9562, version 4; `crypto.randomUUID` is missing on plain http. */
function newUuid(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6]! & 0x0f) | 0x40;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, "$1-$2-$3-$4-");
}

const noRecord: RecordProblem = {
  code: "schema",
  message: t`This is what a mentor has signed, not a record; expected the trainee’s file, which ends in .record.json. To see whether it holds, use Check a sign-off.`,
};
