/** What pages of the competency record load of the programme and of each module. */
import type { Release, ReleaseCard } from "../engine/competency/release.ts";
import type { Content } from "../model/content.ts";
import { recordRulesOf } from "../model/programme.ts";
import type { ModuleData, ProgrammeData } from "../model/record-data.ts";
import type { KeptRelease } from "../model/released.ts";

/** Undefined where the programme keeps no records. `order` gives the ids of all modules. */
export function programmeData(
  { programme, withdrawals }: Content,
  releases: readonly ReleaseCard[],
  order: readonly string[],
): ProgrammeData | undefined {
  const rules = recordRulesOf(programme);
  if (rules === undefined) return undefined;
  const byModule = new Map(releases.map((release) => [release.module, release]));
  const lists = [...withdrawals.values()].map(({ mentor, list }) => [mentor, list] as const);
  return {
    rules,
    modules: order.flatMap((id) => byModule.get(id) ?? []),
    withdrawals: lists.sort(([a], [b]) => (a < b ? -1 : 1)),
  };
}

/** The release as it stands, and those kept that an answer could have been given to and that one could not. */
export function moduleData(release: Release, kept: readonly KeptRelease[]): ModuleData {
  const earlier = kept.map((each) => each.release).filter((each) => !marksAlike(each, release));
  const isSupervised = release.quiz?.supervised === true;
  return { release, earlier: earlier.map((each) => forSite(each, isSupervised)) };
}

/** What is kept in the content folder has the key of a supervised quiz. Once the present quiz is supervised, no earlier one gives it away. */
function forSite(release: Release, isSupervised: boolean): Release {
  const { quiz } = release;
  if (quiz === undefined || !(quiz.supervised || isSupervised)) return release;
  return { ...release, quiz: { digest: quiz.digest, quiz: undefined, supervised: quiz.supervised } };
}

/** True where evidence given to the one is evidence given to the other. */
export const marksAlike = (a: Release, b: Release): boolean =>
  a.revision === b.revision && digestsOf(a).join() === digestsOf(b).join();

const digestsOf = ({ content, quiz, practices, run }: Release): string[] => [
  content,
  quiz?.digest ?? "",
  ...practices.map(({ id, digest }) => `${id} ${digest}`),
  run?.digest ?? "",
];
