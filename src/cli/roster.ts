import { writeFileSync } from "node:fs";
import { evening } from "../engine/competency/roster/evening.ts";
import { rosterSummary } from "../engine/competency/roster/summary.ts";
import { type Call, type Command, type ExitCode, jsonOption, printJson, WrongCall } from "./command.ts";
import { dateOf, dayOfCall, onOption } from "./record/dates.ts";
import { programmeOf, programmeOptions } from "./record/programme.ts";
import { recordFiles } from "./record/record-files.ts";
import { rosterHtml } from "./roster/page.ts";
import { presentOf } from "./roster/present.ts";
import { readAll } from "./roster/read-all.ts";
import { type Roster, rosterCsv, rosterJson } from "./roster/report.ts";
import { RowReader } from "./roster/rows.ts";
import { faultWords, rosterText } from "./roster/text.ts";
import { unwrittenOf } from "./roster/unwritten.ts";

export const roster: Command = {
  name: "roster",
  summary: "who may do what on a day, from record files",
  usage: "DIR [--on DATE] [--present A,B] [--html FILE] [--csv FILE] [--site DIR | --content DIR] [--json]",
  words: 1,
  options: {
    on: onOption,
    present: {
      type: "string",
      value: "A,B",
      help: "who is there: names, or ids of mentors, for who may work tonight",
    },
    html: { type: "string", value: "FILE", help: "write a page that prints there" },
    csv: { type: "string", value: "FILE", help: "write a table there, a row a person and a column a module" },
    ...programmeOptions,
    json: jsonOption,
  },
  more: () =>
    "DIR holds files that end in .record.json, in folders of any depth. Files that are not in order are named on standard error and left out, and the command ends with 1.",
  async run(call, output): Promise<ExitCode> {
    const [folder] = call.positionals;
    if (folder === undefined) throw new WrongCall("Say where the records are: benchwright roster DIR");
    const made = await rosterOf(call, folder);
    const [page, table] = [call.text("html"), call.text("csv")];
    if (page !== undefined) writeFileSync(page, rosterHtml(made));
    if (table !== undefined) writeFileSync(table, rosterCsv(made));
    if (call.flag("json")) printJson(output, rosterJson(made));
    else output.out(rosterText(made));
    const faults = faultWords(made);
    if (faults !== "") output.err(faults);
    return made.summary.broken.length > 0 ? 1 : 0;
  },
};

async function rosterOf(call: Call, folder: string): Promise<Roster> {
  const asked = dateOf(call, "on");
  const programme = await programmeOf(call);
  const day = dayOfCall(asked, programme.rules);
  const reader = new RowReader(programme, day);
  const read = await readAll(recordFiles(folder), reader, { source: programme, day });
  const { situation } = reader;
  const summary = rosterSummary({
    rows: await reader.together(read.rows),
    broken: read.broken,
    situation,
    unwritten: new Map(programme.cards.map((card) => [card.module, unwrittenOf(card)])),
  });
  const present = call.text("present");
  return {
    programme: programme.rules.programme,
    summary,
    tonight:
      present === undefined
        ? undefined
        : evening({ ...presentOf(present, summary.people, programme.rules.mentors), situation }),
    doubtful: read.doubtful,
  };
}
