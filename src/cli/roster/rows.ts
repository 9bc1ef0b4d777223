/** Record files to rows of the roster: one file at a time, so that memory does not grow with their size. */
import { grouped } from "../../engine/competency/grouped.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import { type HandedIn, type RosterRow, rosterRow } from "../../engine/competency/roster/row.ts";
import { byPerson, togetherAs } from "../../engine/competency/roster/same-person.ts";
import type { BrokenFile } from "../../engine/competency/roster/summary.ts";
import { type Situation, situationOf } from "../../engine/competency/situation.ts";
import { nodePrimitives } from "../primitives.ts";
import { listsIn } from "../record/check.ts";
import type { Day } from "../record/dates.ts";
import type { RecordProgramme } from "../record/programme.ts";
import { readRecordFile } from "../record/record-files.ts";

export interface Read {
  readonly rows: readonly RosterRow[];
  /** Files that count for nothing. */
  readonly broken: readonly BrokenFile[];
  /** Files of which some events count for nothing. */
  readonly doubtful: readonly BrokenFile[];
}

/** What a thread makes of files, given one after the other. */
export class RowReader {
  readonly situation: Situation;
  readonly #programme: RecordProgramme;

  constructor(programme: RecordProgramme, day: Day) {
    this.#programme = programme;
    this.situation = situationOf({ ...programme, ...day });
  }

  async read(files: readonly string[]): Promise<Read> {
    const rows: RosterRow[] = [];
    const broken: BrokenFile[] = [];
    const doubtful: BrokenFile[] = [];
    for (const file of files) {
      const { handedIn, problems } = this.#open(file);
      if (handedIn === undefined) broken.push({ file, problems });
      else {
        if (problems.length > 0) doubtful.push({ file, problems });
        rows.push(await this.#row(handedIn));
      }
    }
    return { rows, broken, doubtful };
  }

  /** Those who have handed in several files, or go on under another key, as one person each. */
  async together(rows: readonly RosterRow[]): Promise<RosterRow[]> {
    const people: RosterRow[] = [];
    for (const group of byPerson(rows)) {
      const [only, second] = group;
      if (second === undefined) people.push(only!);
      else people.push(await this.#row(this.#merged(group)));
    }
    return people;
  }

  #merged(group: readonly RosterRow[]): HandedIn {
    const files = group.flatMap((row) => row.files);
    return togetherAs(
      group,
      files.flatMap((file) => this.#open(file).handedIn ?? []),
    );
  }

  #open(file: string): { handedIn: HandedIn | undefined; problems: BrokenFile["problems"] } {
    const { record, written, problems } = readRecordFile(file);
    const { identifier, programme } = this.#programme.rules;
    if (
      record === undefined ||
      written === undefined ||
      problems.some(({ code }) => code === "owner-signature")
    )
      return { handedIn: undefined, problems };
    if (record.programme === identifier) return { handedIn: { record, written, files: [file] }, problems };
    const message = `This is a record of the programme ${record.programme}; expected one of ${identifier} (${programme}). Take it to the coordinator of that programme.`;
    return { handedIn: undefined, problems: [{ code: "schema", message, at: "programme" }] };
  }

  async #row(handedIn: HandedIn): Promise<RosterRow> {
    return rosterRow(handedIn, await this.#situationWith(handedIn.record), nodePrimitives);
  }

  /** What the record itself has kept of withdrawals counts too. */
  async #situationWith(record: CompetencyRecord): Promise<Situation> {
    if (!record.events.some(({ kind }) => kind === "withdrawal")) return this.situation;
    const statuses = [...this.#programme.statuses, ...(await listsIn(record))];
    return { ...this.situation, lists: grouped(statuses, ({ issuer }) => issuer) };
  }
}
