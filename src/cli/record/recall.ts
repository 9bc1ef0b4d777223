import { writeFileSync } from "node:fs";
import {
  beforeWithdrawing,
  type Recall,
  recallOf,
  type Withdrawing,
} from "../../engine/competency/recall.ts";
import type { AcceptedRevision } from "../../engine/competency/release.ts";
import type { RosterRow } from "../../engine/competency/roster/row.ts";
import { revisionsPath } from "../../model/released.ts";
import type { Action } from "../actions.ts";
import { type Call, type ExitCode, jsonOption, printJson, WrongCall } from "../command.ts";
import { contentFolder } from "../content.ts";
import { noSuchModule } from "../no-such-module.ts";
import { readAll } from "../roster/read-all.ts";
import { type Read, RowReader } from "../roster/rows.ts";
import { fileFaultWords } from "../roster/text.ts";
import { dateOf, dayOfRecall } from "./dates.ts";
import { noticeHtml, recallText } from "./notice.ts";
import { programmeFrom, programmeOf, programmeOptions, type RecordProgramme } from "./programme.ts";
import { recordFiles } from "./record-files.ts";
import { writeRevisions } from "./revisions-file.ts";

export const recall: Action = {
  name: "recall",
  summary: "whom it touches to take a revision of a module back, and the notice to stop work",
  usage:
    "MODULE --revision N --records DIR --because TEXT [--from DATE] [--mark] [--html FILE] [--site DIR | --content DIR] [--json]",
  options: {
    revision: { type: "string", value: "N", help: "the revision that is taken back" },
    records: { type: "string", value: "DIR", help: "the record files of all people" },
    because: { type: "string", value: "TEXT", help: "why, as the notice says it" },
    from: { type: "string", value: "DATE", help: "the day from which it no longer counts (default: today)" },
    mark: { type: "boolean", help: "take it back: write this into the module's revisions.yaml" },
    html: { type: "string", value: "FILE", help: "write the notice there, as a page to be printed" },
    ...programmeOptions,
    json: jsonOption,
  },
  words: 1,
  async run(call, [module], output): Promise<ExitCode> {
    const asked = askedIn(call, module);
    const { made, read, row } = await recallIn(call, asked);
    const page = call.text("html");
    if (page !== undefined) writeFileSync(page, noticeHtml(made));
    const marked = call.flag("mark") ? mark(call, made, row) : undefined;
    if (call.flag("json")) printJson(output, { ...recallJson(made, read), marked: marked ?? null });
    else output.out(recallText(made, marked));
    const faults = fileFaultWords(read.broken, read.doubtful);
    if (faults !== "") output.err(faults);
    return read.broken.length > 0 ? 1 : 0;
  },
};

type Asked = Omit<Withdrawing, "from"> & { readonly from: string | undefined; readonly records: string };

function askedIn(call: Call, module: string | undefined): Asked {
  const [revision, records, because] = [call.text("revision"), call.text("records"), call.text("because")];
  if (module === undefined || revision === undefined || records === undefined || because === undefined)
    throw new WrongCall(
      'Say what, why and where the records are: benchwright record recall MODULE --revision N --records DIR --because "TEXT"',
    );
  if (!/^[1-9]\d{0,8}$/.test(revision))
    throw new WrongCall(`--revision "${revision.slice(0, 60)}" is no revision; write a whole number from 1.`);
  if (call.flag("mark") && call.text("site") !== undefined)
    throw new WrongCall("--mark writes into the content folder: give --content, not --site.");
  return { module, revision: Number(revision), because, records, from: dateOf(call, "from") };
}

/** Goes by how things stood before, also where the revision is marked already. */
async function recallIn(call: Call, { records, from, ...asked }: Asked) {
  const programme = await programmeOf(call);
  const row = rowOf(programme, asked);
  const before = await programmeFrom({ ...programme, cards: beforeWithdrawing(programme.cards, asked) });
  const day = dayOfRecall(from, programme.rules);
  const reader = new RowReader(before, day);
  const read = await readAll(recordFiles(records), reader, { source: before, day });
  const people = await reader.together(read.rows);
  return { made: recallOf({ ...asked, from: day.on }, people, before.releases.cards)!, read, row };
}

function rowOf({ cards }: RecordProgramme, { module, revision }: Pick<Withdrawing, "module" | "revision">) {
  const card = cards.find((each) => each.module === module);
  if (card === undefined)
    throw noSuchModule(
      module,
      cards.map((each) => each.module),
    );
  const row = card.revisions.find((each) => each.revision === revision);
  if (row !== undefined) return { row, all: card.revisions };
  const known = card.revisions.map((each) => each.revision).join(", ");
  throw new WrongCall(`There is no revision ${revision} of "${module}"; there are ${known}.`);
}

/** Writes that the revision no longer counts; gives the file. */
function mark(
  call: Call,
  { module, from, because }: Recall,
  { row, all }: { readonly row: AcceptedRevision; readonly all: readonly AcceptedRevision[] },
): string {
  const rows = all.map((each) => (each === row ? { ...each, withdrawn: { from, because } } : each));
  writeRevisions(contentFolder(call), module, rows);
  return revisionsPath(module);
}

const nameOf = ({ name, owner }: RosterRow) => ({ name, key: owner });

function recallJson({ stopped, keeping, learning, alsoStopped, ...recalled }: Recall, read: Read) {
  return {
    ...recalled,
    stopped: stopped.map(nameOf),
    keeping: keeping.map(nameOf),
    learning: learning.map(nameOf),
    alsoStopped: alsoStopped.map(({ people, ...module }) => ({ ...module, people: people.map(nameOf) })),
    ...{ broken: read.broken, doubtful: read.doubtful },
  };
}
