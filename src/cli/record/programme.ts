/** What records are judged by, from a content folder or from a site that was built. */
import { join, resolve } from "node:path";
import { releaseCard } from "../../derive/release.ts";
import type { Json } from "../../engine/competency/json.ts";
import type { Release, ReleaseCard } from "../../engine/competency/release.ts";
import { Releases } from "../../engine/competency/releases.ts";
import type { RecordRules } from "../../engine/competency/rules.ts";
import { readStatusList, type StatusList } from "../../engine/competency/status-list.ts";
import type { Content } from "../../model/content.ts";
import { recordRulesOf } from "../../model/programme.ts";
import {
  type ModuleData,
  moduleDataFile,
  type ProgrammeData,
  programmeDataFile,
} from "../../model/record-data.ts";
import { withdrawalsPath } from "../../model/released.ts";
import { BadInput, type Call, contentOption, WrongCall } from "../command.ts";
import { soundContent } from "../content.ts";
import { gunzip } from "../gzip.ts";
import { nodePrimitives } from "../primitives.ts";
import { readJsonFile, readText } from "./read-text.ts";
import { presentReleases } from "./releases.ts";

/** Plain data, which can be sent to a thread. */
export interface RecordSource {
  readonly rules: RecordRules;
  readonly cards: readonly ReleaseCard[];
  /** Of any age, the present ones last. */
  readonly kept: readonly Release[];
  /** Lists of withdrawals as they were found. */
  readonly lists: readonly Json[];
}

export interface RecordProgramme extends RecordSource {
  readonly releases: Releases;
  /** Lists of withdrawals that can be relied on, in date or not. */
  readonly statuses: readonly StatusList[];
}

export const programmeFrom = async (source: RecordSource): Promise<RecordProgramme> => ({
  ...source,
  releases: new Releases(source.cards, source.kept),
  statuses: await soundLists(source.lists),
});

export const programmeOptions = {
  content: contentOption,
  site: {
    type: "string",
    value: "DIR",
    help: "go by a site that was built, in place of the content folder",
  },
} as const;

/** Throws a BadInput where there is no programme that keeps records. */
export async function programmeOf(call: Call): Promise<RecordProgramme> {
  const site = call.text("site");
  if (site === undefined) return programmeFrom(fromContent(soundContent(call)));
  if (call.text("content") !== undefined) throw new WrongCall("Give --site or --content, not both.");
  return programmeFrom(fromSite(resolve(site)));
}

/** The content folder holds the keys of supervised quizzes, so that sittings of theirs are marked too. */
function fromContent(content: Content): RecordSource {
  const rules = recordRulesOf(content.programme);
  if (rules === undefined)
    throw new BadInput(
      "This programme keeps no records: programme.yaml has no identifier:. Add one, or give the right folder with --content.",
    );
  const present = presentReleases(content);
  const cards = present.map((release) => releaseCard(release, content.revisions.get(release.module)));
  const kept = [...content.released.values()].flatMap((all) => all.map(({ release }) => release));
  const lists = [...content.withdrawals.values()].map(({ list }) => list);
  return { rules, cards, kept: [...kept, ...present], lists };
}

function fromSite(site: string): RecordSource {
  const { rules, modules: cards } = readData<ProgrammeData>(join(site, programmeDataFile));
  const kept = cards.flatMap(({ module }) => {
    const { release, earlier } = readData<ModuleData>(join(site, moduleDataFile(module)));
    return [...earlier, release];
  });
  const lists = rules.mentors.flatMap(({ id }) => {
    const json = readJsonFile(join(site, withdrawalsPath(id)));
    return json.ok ? [json.value] : [];
  });
  return { rules, cards, kept, lists };
}

/** What stands in the one call of a data script. */
function readData<Data>(file: string): Data {
  const read = readText(file);
  const json = read.ok ? /^benchwrightData\("[^"]*", (.*)\);\s*$/s.exec(read.text)?.[1] : undefined;
  if (json === undefined)
    throw new BadInput(
      `${file}: there are no data of records here. Give the folder of a site that was built from a programme with an identifier.`,
    );
  try {
    return JSON.parse(json) as Data;
  } catch {
    throw new BadInput(`${file}: the data are not whole. Build the site again.`);
  }
}

/** Those whose shape and signature are right. */
export async function soundLists(lists: readonly Json[]): Promise<StatusList[]> {
  const read = await Promise.all(
    lists.map((list) => readStatusList(list, { primitives: nodePrimitives, gunzip })),
  );
  return read.flatMap((each) => (each.ok ? [each.list] : []));
}
