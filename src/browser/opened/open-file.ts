/** What a file that someone hands over comes to: a record, what mentors have signed, or nothing that can be read. */
import { dayOf } from "../../engine/competency/calendar.ts";
import { checkRecord } from "../../engine/competency/check-record.ts";
import { problemsWith } from "../../engine/competency/checks/index.ts";
import { textAt } from "../../engine/competency/fields.ts";
import type { Json } from "../../engine/competency/json.ts";
import { portable } from "../../engine/competency/libraries.ts";
import { placed } from "../../engine/competency/problem.ts";
import type { RecordProblem } from "../../engine/competency/problems.ts";
import type { CompetencyRecord } from "../../engine/competency/record.ts";
import { readRecordJson } from "../../engine/competency/record-file.ts";
import { Releases } from "../../engine/competency/releases.ts";
import { type GivenStatement, givenStatements } from "../../engine/competency/signed-file.ts";
import { situationOf } from "../../engine/competency/situation.ts";
import { readStatement, type SignedStatement } from "../../engine/competency/statements.ts";
import { readJson } from "../../engine/competency/strict-json.ts";
import type { ModuleData, ProgrammeData } from "../../model/record-data.ts";
import { modulesToLoad, type Overview, overviewOf } from "../record/overview.ts";
import type { SiteData } from "../record/site-data.ts";
import { statusLists } from "../record/status-lists.ts";

export interface OpenedRecord {
  readonly kind: "record";
  readonly overview: Overview;
  /** RFC 3339 in UTC. */
  readonly written: string | undefined;
  /** Everything that is wrong with it. */
  readonly problems: readonly RecordProblem[];
}

export interface OpenedStatement {
  readonly kind: "statement";
  readonly signed: SignedStatement;
  /** YYYY-MM-DD: the date for which it was looked at. */
  readonly on: string;
  readonly problems: readonly RecordProblem[];
}

/** Several statements of one file, each judged by itself. */
export interface OpenedList {
  readonly kind: "statements";
  /** In the order of the file; "nothing" of what is no statement, or not signed as it should be. */
  readonly statements: readonly (OpenedStatement | OpenedNothing)[];
  /** All that is wrong with them, with the place of each. */
  readonly problems: readonly RecordProblem[];
}

export interface OpenedNothing {
  readonly kind: "nothing";
  readonly problems: readonly RecordProblem[];
}

export type Opened = OpenedRecord | OpenedStatement | OpenedList | OpenedNothing;

export interface OpenOptions {
  readonly site: Pick<SiteData, "module">;
  readonly programme: ProgrammeData;
  /** ms since 1970. */
  readonly now: () => number;
}

/** Judges a text as of now; nothing is stored. O(size of the file and of the modules that it names). */
export async function openFile(text: string, options: OpenOptions): Promise<Opened> {
  const json = readJson(text);
  if (!json.ok) return { kind: "nothing", problems: [json.problem] };
  const given = givenStatements(json.value);
  if (given !== undefined) return openStatements(given, options);
  const { record, written, problems } = readRecordJson(json.value, portable);
  if (record === undefined) return { kind: "nothing", problems };
  const overview = await overviewNow(record, options);
  const { rules, releases, on } = overview.situation;
  const statuses = [...overview.situation.lists.values()].flat();
  const found = checkRecord(record, { rules, releases, statuses, on, primitives: portable });
  return { kind: "record", overview, written, problems: [...problems, ...found] };
}

/** What a record comes to now, with whatever it rests on marked again. */
export async function overviewNow(record: CompetencyRecord, options: OpenOptions): Promise<Overview> {
  const { programme, now } = options;
  const ids = new Set([
    ...modulesToLoad(record, programme.modules),
    ...record.events.flatMap((event) => ("credential" in event ? moduleIn(event.credential) : [])),
  ]);
  const modules = await loadModules([...ids], options);
  return overviewOf({
    record,
    programme,
    modules,
    statuses: await statusLists(programme, record),
    now: now(),
  });
}

async function openStatements(given: readonly GivenStatement[], options: OpenOptions): Promise<Opened> {
  const statements = await Promise.all(given.map(({ json }) => openStatement(json, options)));
  const [only, second] = statements;
  if (only !== undefined && second === undefined) return only;
  const problems = statements.flatMap((each, place) =>
    each.problems.map((found) => placed(found, given[place]!.at!)),
  );
  return { kind: "statements", statements, problems };
}

async function openStatement(json: Json, options: OpenOptions): Promise<OpenedStatement | OpenedNothing> {
  const { programme, now } = options;
  const { rules, modules: cards } = programme;
  const read = readStatement(json, rules, portable);
  if (!read.ok) return { kind: "nothing", problems: [read.problem] };
  const on = dayOf(now(), rules.timeZone);
  const kept = (await loadModules(moduleIn(json), options)).flatMap(({ release, earlier }) => [
    release,
    ...earlier,
  ]);
  const statuses = await statusLists(programme, { events: [] });
  const situation = situationOf({ rules, releases: new Releases(cards, kept), statuses, on });
  const problems = problemsWith(read.signed, situation, undefined);
  return { kind: "statement", signed: read.signed, on, problems };
}

/** The module that a credential names; what it says is not judged yet. */
function moduleIn(credential: Json): string[] {
  const id = textAt(credential, "credentialSubject", "achievement", "id") ?? "";
  const module = /\/modules\/([a-z0-9-]{1,100})\/revisions\//.exec(id)?.[1];
  return module === undefined ? [] : [module];
}

/** Those that the programme has. */
async function loadModules(ids: readonly string[], { site, programme }: OpenOptions): Promise<ModuleData[]> {
  const known = new Set(programme.modules.map(({ module }) => module));
  const loaded = await Promise.all(ids.filter((id) => known.has(id)).map((id) => site.module(id)));
  return loaded.filter((data) => data !== undefined);
}
