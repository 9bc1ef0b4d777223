/** The list of what a mentor has withdrawn, signed anew by a key that lives in the browser. */

import { addMonths, dayOf, endOfDay } from "../../engine/competency/calendar.ts";
import { statusListId } from "../../engine/competency/credential.ts";
import { writeInstant } from "../../engine/competency/instant.ts";
import type { Json } from "../../engine/competency/json.ts";
import { portable } from "../../engine/competency/libraries.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import { statementsIn } from "../../engine/competency/signed-file.ts";
import { readStatement } from "../../engine/competency/statements.ts";
import {
  bitsOf,
  makeStatusList,
  placesIn,
  readStatusList,
  type StatusList,
} from "../../engine/competency/status-list.ts";
import { readJson } from "../../engine/competency/strict-json.ts";
import { t } from "../../engine/words.ts";
import { gunzip } from "../record/gunzip.ts";
import type { MentorKey } from "./mentor-key.ts";

export type ReadPlaces =
  | { readonly ok: true; readonly places: readonly number[]; readonly what: readonly string[] }
  | { readonly ok: false; readonly message: string };

/** The places of what this key has signed in a file: a statement, or a list of them. */
export function placesToWithdraw(text: string, key: MentorKey, rules: RecordRules): ReadPlaces {
  const json = readJson(text);
  if (!json.ok) return { ok: false, message: json.problem.message };
  const places: number[] = [];
  const what: string[] = [];
  for (const { json: each } of statementsIn(json.value)) {
    const read = readStatement(each, rules, portable);
    if (!read.ok) return { ok: false, message: read.problem.message };
    const { statement } = read.signed;
    if (statement.issuer !== key.did)
      return {
        ok: false,
        message: t`This was signed by another key (${statement.issuer}); only that mentor can withdraw it.`,
      };
    places.push(statement.statusIndex);
    what.push(t`${statement.kind} for ${statement.subjectName}, ${read.signed.day}`);
  }
  return { ok: true, places, what };
}

/** The key's own list as it stands on a file or with the site; undefined of another's, and of what can't be relied on. */
export async function ownList(
  json: Json,
  key: MentorKey,
  { identifier }: RecordRules,
): Promise<StatusList | undefined> {
  const read = await readStatusList(json, { primitives: portable, gunzip });
  return read.ok && read.list.issuer === key.did && read.list.id === statusListId(identifier, key.did)
    ? read.list
    : undefined;
}

/** So long a list is good; common practice for lists that are renewed by hand, as `record withdraw` makes them. */
const months = 12;

/** The text of the mentor's list: what was withdrawn on `lists` stays so, `places` are added. */
export async function renewedList({
  lists,
  places,
  key,
  rules,
  now,
}: {
  readonly lists: readonly StatusList[];
  readonly places: readonly number[];
  readonly key: MentorKey;
  readonly rules: RecordRules;
  readonly now: number;
}): Promise<{ readonly text: string; readonly count: number; readonly until: string }> {
  const all = new Set([...lists.flatMap(({ bits }) => placesIn(bits)), ...places]);
  const until = addMonths(dayOf(now, rules.timeZone), months);
  const created = writeInstant(Math.floor(now / 1000) * 1000);
  const list = await makeStatusList({
    ...{ issuer: key.did, id: statusListId(rules.identifier, key.did), bits: bitsOf(all), gzip },
    ...{ validFrom: created, validUntil: writeInstant(endOfDay(until, rules.timeZone)), created },
    ...{ sign: key.sign, primitives: portable },
  });
  return { text: `${JSON.stringify(list, undefined, 2)}\n`, count: all.size, until };
}

async function gzip(bytes: Uint8Array): Promise<Uint8Array> {
  const stream = new Blob([new Uint8Array(bytes)]).stream().pipeThrough(new CompressionStream("gzip"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}
