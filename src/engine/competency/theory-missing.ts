/** What is missing before a trainee may be watched, from what they have done by themselves. */
import type { Facts, Gathered } from "./facts.ts";
import type { ReleaseCard } from "./release.ts";
import type { Missing } from "./state.ts";

type Row = (card: ReleaseCard, facts: Facts, hazards: Gathered["hazards"]) => readonly Missing[];

const reading: Row = (_card, { read }) => (read ? [] : [{ kind: "reading" }]);

const hazardSheets: Row = (card, _facts, known) =>
  card.hazards.filter(({ id }) => !known.has(id)).map(({ id }) => ({ kind: "hazard", hazard: id }));

/** A supervised sitting may have been marked by who has the whole quiz; one that fails counts for one that is not there. */
const quiz: Row = ({ quiz: asked, rules }, { passed, best, handedIn }) => {
  if (asked === undefined || (passed !== undefined && passed >= rules.pass)) return [];
  if (asked.supervised && (handedIn || best === undefined))
    return [{ kind: "supervised-quiz", sat: handedIn }];
  return [{ kind: "quiz", best, pass: rules.pass }];
};

const practice: Row = ({ practices, rules }, facts) =>
  rules.practice
    ? practices
        .filter(({ id }) => !facts.practices.has(id))
        .map(({ id }) => ({ kind: "practice", practice: id }))
    : [];

const dryRun: Row = ({ rules, run }, facts) =>
  rules.dryRun && run !== undefined && !facts.run ? [{ kind: "dry-run" }] : [];

/** In the order of work. */
const rows: readonly Row[] = [reading, hazardSheets, quiz, practice, dryRun];

export const theoryMissing = (card: ReleaseCard, facts: Facts, hazards: Gathered["hazards"]): Missing[] =>
  rows.flatMap((row) => row(card, facts, hazards));
