import { existsSync } from "node:fs";
import { join } from "node:path";
import { addMonths, endOfDay } from "../../engine/competency/calendar.ts";
import { statusListId } from "../../engine/competency/credential.ts";
import { writeInstant } from "../../engine/competency/instant.ts";
import type { Mentor, RecordRules } from "../../engine/competency/rules.ts";
import { bitsOf, makeStatusList, placesIn, readStatusList } from "../../engine/competency/status-list.ts";
import { recordRulesOf } from "../../model/programme.ts";
import { withdrawalsPath } from "../../model/released.ts";
import { counted } from "../../report/text.ts";
import type { Action } from "../actions.ts";
import {
  BadInput,
  type Call,
  contentOption,
  type ExitCode,
  jsonOption,
  printJson,
  WrongCall,
} from "../command.ts";
import { checkContent, contentFolder } from "../content.ts";
import { gunzip, gzip } from "../gzip.ts";
import { openKey } from "../key/key-file.ts";
import { passphraseWords } from "../key/passphrase.ts";
import { nodePrimitives } from "../primitives.ts";
import { writeWhole } from "../write-whole.ts";
import { dateOf, today } from "./dates.ts";
import { findStatements } from "./find-statement.ts";
import { readJsonFile } from "./read-text.ts";

/** So long a list is good where nothing is said; common practice for lists that are renewed by hand. */
const usualMonths = 12;

export const withdraw: Action = {
  name: "withdraw",
  summary: "withdraws what a mentor has signed; named nothing, it renews the mentor's list of withdrawals",
  note: `Of a FILE that the Mentor's desk saved all that is signed in it is withdrawn. An ID is looked up in --records; record check FILE lists those of a file. PLACE is the statusListIndex of what was signed. ${passphraseWords}`,
  usage: "[ID|FILE|PLACE…] --key FILE [--records DIR] [--until DATE] [--content DIR] [--json]",
  options: {
    key: { type: "string", value: "FILE", help: "the mentor's key file" },
    records: {
      type: "string",
      value: "DIR",
      help: "a folder of files, or one file, in which an ID is looked up",
    },
    until: { type: "string", value: "DATE", help: "how long the list is good (default: a year)" },
    content: contentOption,
    json: jsonOption,
  },
  words: 10_000,
  async run(call, words, output): Promise<ExitCode> {
    const keyFile = call.text("key");
    if (keyFile === undefined) throw new WrongCall("Say with which key: --key FILE");
    const folder = contentFolder(call);
    const rules = rulesIn(folder);
    const until = untilOf(call, rules);
    const { key, sign } = await openKey(keyFile);
    const mentor = mentorOf(key, rules);
    const file = join(folder, withdrawalsPath(mentor.id));
    const found = findStatements(words, { rules, key, records: call.text("records") });
    const before = await withdrawnIn(file, mentor, rules);
    const places = new Set([...before, ...found.map(({ place }) => place)]);
    const now = writeInstant(Math.floor(Date.now() / 1000) * 1000);
    const list = await makeStatusList({
      ...{ issuer: key, id: statusListId(rules.identifier, key), bits: placesOnList(places) },
      ...{ validFrom: now, validUntil: until, created: now },
      ...{ sign, gzip, primitives: nodePrimitives },
    });
    writeWhole(folder, withdrawalsPath(mentor.id), `${JSON.stringify(list, undefined, 2)}\n`);
    if (call.flag("json"))
      printJson(output, {
        file,
        mentor: mentor.id,
        until,
        withdrawn: places.size,
        added: places.size - before.length,
        named: found,
      });
    else
      output.out(
        `${found.map(({ what }) => `Withdrawn: ${what}\n`).join("")}${file}: ${counted(places.size, "withdrawal")}, good until ${until}. Commit it and build the site, so that others learn of it.\n`,
      );
    return 0;
  },
};

/** Of content that may have faults elsewhere: a withdrawal does not wait. */
function rulesIn(folder: string): RecordRules {
  const { content, diagnostics } = checkContent(folder);
  const rules = recordRulesOf(content.programme);
  const fault = diagnostics.find(({ file, severity }) => severity === "error" && file === "programme.yaml");
  if (fault !== undefined) throw new BadInput(`${fault.file}:${fault.line}: ${fault.message}`);
  if (rules === undefined)
    throw new BadInput(`${folder}: this programme keeps no records: it has no identifier:.`);
  return rules;
}

function mentorOf(key: string, { mentors }: RecordRules): Mentor {
  const mentor = mentors.find((each) => each.key === key);
  if (mentor !== undefined) return mentor;
  throw new BadInput(`The key is that of no mentor whom programme.yaml lists: ${key}.`);
}

/** An instant: the end of the day. */
function untilOf(call: Call, { timeZone }: RecordRules): string {
  const day = today(timeZone);
  const until = dateOf(call, "until") ?? addMonths(day, usualMonths);
  if (until < day) throw new WrongCall(`--until ${until} is over already.`);
  return writeInstant(endOfDay(until, timeZone));
}

/** What was withdrawn stays so. Throws a BadInput where the list that is there can't be relied on. */
async function withdrawnIn(
  file: string,
  { key }: Mentor,
  { identifier }: RecordRules,
): Promise<readonly number[]> {
  if (!existsSync(file)) return [];
  const json = readJsonFile(file);
  const read = json.ok ? await readStatusList(json.value, { primitives: nodePrimitives, gunzip }) : json;
  if (!read.ok)
    throw new BadInput(
      `${file}: ${read.problem.message} Nothing is written, for what it withdraws would be lost. Bring it back as it was.`,
    );
  if (read.list.issuer !== key || read.list.id !== statusListId(identifier, key))
    throw new BadInput(`${file}: this is the list ${read.list.id}, not that of the key. Move it away first.`);
  return placesIn(read.list.bits);
}

function placesOnList(places: Iterable<number>): Uint8Array {
  try {
    return bitsOf(places);
  } catch (cause) {
    throw cause instanceof RangeError ? new WrongCall(cause.message) : cause;
  }
}
