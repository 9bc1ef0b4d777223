/** How someone stands, in few words. */
import type { EndedEntry, Ending } from "../../engine/competency/roster/summary.ts";
import type { Missing, ModuleState } from "../../engine/competency/state.ts";
import { markWords } from "../../engine/quiz/score-words.ts";

type Words = { readonly [Kind in Missing["kind"]]: (missing: Extract<Missing, { kind: Kind }>) => string };

const times = (count: number): string => (count === 1 ? "once" : `${count} times`);

const words: Words = {
  reading: () => "the reading",
  hazard: ({ hazard }) => `the hazard ${hazard}`,
  quiz: ({ pass }) => `the quiz at ${markWords(pass)}`,
  "supervised-quiz": ({ sat }) => (sat ? "the quiz to be marked" : "the supervised quiz"),
  practice: ({ practice }) => `the practice ${practice}`,
  "dry-run": () => "the dry run",
  watched: ({ has, needs }) => `to be watched ${times(needs - has)}`,
  unaided: ({ has, needs }) => `to do it unaided ${times(needs - has)}`,
  occasions: ({ has, needs }) => `${needs - has} more days`,
  mentors: ({ has, needs }) => `${needs - has} more mentors`,
  phase: ({ phase }) => `to be watched at ${phase}`,
  module: ({ module }) => `the module ${module}`,
};

export const missingWords = (missing: Missing): string =>
  (words[missing.kind] as (one: Missing) => string)(missing);

/** "signed off until 2028-11-27", "under way". */
export function standingWords({ standing, level, until, stopped }: ModuleState): string {
  const day = until === undefined ? "" : standing === "lapsed" ? ` since ${until}` : ` until ${until}`;
  const how = level === undefined || level === "alone" ? "" : `, ${level}`;
  const stop = stopped === undefined ? "" : `, stopped for safety ${stopped}`;
  const dated = standing === "signed off" || standing === "lapses soon" || standing === "lapsed";
  return `${standing}${dated ? day : ""}${dated ? how : ""}${stop}`;
}

/** Why a sign-off does not count; `titles` are those of modules by id, `on` is the day looked at. */
export function endWords(entry: EndedEntry, titles: ReadonlyMap<string, string>, on: string): string {
  const { until, missing, mentors } = entry.state;
  const needed = missing.flatMap((each) => (each.kind === "module" ? (titles.get(each.module) ?? []) : []));
  const why: { readonly [Because in Ending]: string } = {
    lapsed: `lapsed after ${until}`,
    withdrawn: "withdrawn",
    "earlier revision": `signed on revision ${entry.revision}, which does not carry over to the present one`,
    suspended: `suspended: no sign-off that counts on ${needed.join(", ")}`,
    unconfirmed: `can't be confirmed: of ${mentors.join(", ")} not every list of withdrawals reaches the end of ${on}`,
    unsupported: `signed on revision ${entry.revision}, and not all that it rests on counts; record check tells what`,
  };
  return why[entry.because];
}
