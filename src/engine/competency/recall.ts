/** What withdrawing a revision of a module touches: people, modules that build on it, and what to tell them. */
import { grouped } from "./grouped.ts";
import { holds } from "./needs.ts";
import type { ReleaseCard } from "./release.ts";
import type { RosterRow } from "./roster/row.ts";

export interface Withdrawing {
  readonly module: string;
  readonly revision: number;
  /** YYYY-MM-DD. */
  readonly from: string;
  readonly because: string;
}

export interface Recall extends Withdrawing {
  readonly title: string;
  /** Signed off on this revision and on no other that holds: they may no longer work alone. */
  readonly stopped: readonly RosterRow[];
  /** Signed off on another revision besides. */
  readonly keeping: readonly RosterRow[];
  /** Not signed off, and have learned from it or been watched on it. */
  readonly learning: readonly RosterRow[];
  /** Modules that need this one, directly or by way of others, with those of the stopped who hold them. */
  readonly alsoStopped: readonly {
    readonly module: string;
    readonly title: string;
    readonly people: readonly RosterRow[];
  }[];
  readonly notice: StopWorkNotice;
}

/** To be printed and hung up, or sent: whole sentences, and names. */
export interface StopWorkNotice {
  readonly heading: string;
  readonly because: string;
  readonly people: readonly string[];
  readonly modules: readonly { readonly title: string; readonly people: readonly string[] }[];
  readonly todo: readonly string[];
}

/**
 * `rows` are those of a situation in which the revision is not withdrawn yet: see `beforeWithdrawing`. Undefined where the programme
 * has no such module. O(people · modules + needs).
 */
export function recallOf(
  withdrawing: Withdrawing,
  rows: readonly RosterRow[],
  cards: ReadonlyMap<string, ReleaseCard>,
): Recall | undefined {
  const { module, revision } = withdrawing;
  const card = cards.get(module);
  if (card === undefined) return undefined;
  const isOn = (list: readonly number[] | undefined): boolean => list?.includes(revision) === true;
  const signed = rows.filter(({ signedOn }) => isOn(signedOn.get(module)));
  const stopped = signed.filter(({ signedOn }) => signedOn.get(module)!.length === 1);
  const alsoStopped = usersOf(module, cards)
    .map((user) => ({
      ...{ module: user.module, title: user.title },
      people: stopped.filter(({ states }) => holds(states.get(user.module))),
    }))
    .filter(({ people }) => people.length > 0);
  return {
    ...withdrawing,
    ...{ title: card.title, stopped, alsoStopped },
    keeping: signed.filter((row) => !stopped.includes(row)),
    learning: rows.filter((row) => !signed.includes(row) && isOn(row.workedOn.get(module))),
    notice: noticeOf(withdrawing, card.title, stopped, alsoStopped),
  };
}

/** The cards as they were before this revision was marked as withdrawn. */
export const beforeWithdrawing = (
  cards: Iterable<ReleaseCard>,
  { module, revision }: Pick<Withdrawing, "module" | "revision">,
): ReleaseCard[] =>
  [...cards].map((card) => ({
    ...card,
    revisions: card.revisions.map((row) =>
      card.module === module && row.revision === revision ? { ...row, withdrawn: undefined } : row,
    ),
  }));

/** Those that need a module, then those that need them, each once. */
function usersOf(module: string, cards: ReadonlyMap<string, ReleaseCard>): ReleaseCard[] {
  const needs = [...cards.values()].flatMap((card) => card.needs.map((need) => ({ need, card })));
  const users = grouped(needs, ({ need }) => need);
  const found = new Set(users.get(module)?.map(({ card }) => card));
  // A set hands out what is added to it while it is gone through.
  for (const user of found) for (const { card } of users.get(user.module) ?? []) found.add(card);
  return [...found].filter((card) => card.module !== module);
}

function noticeOf(
  { revision, from, because }: Withdrawing,
  title: string,
  stopped: readonly RosterRow[],
  also: Recall["alsoStopped"],
): StopWorkNotice {
  return {
    heading: `Stop work: ${title}, revision ${revision}, from ${from}`,
    because,
    people: stopped.map(({ name }) => name),
    modules: also.map(({ title: name, people }) => ({ title: name, people: people.map((one) => one.name) })),
    todo: [
      `Do not begin "${title}" by revision ${revision}, and do not go on with it.`,
      "Leave a machine that is in work in a safe state and label it; if you are not sure that it is safe, ask a mentor before touching it.",
      "Tell whoever has a machine back that was worked on by this revision, and have a mentor look at it.",
      "Take printed copies of this revision off the bench.",
      "Before you work alone again: read the new revision, be watched on it and have it signed.",
    ],
  };
}
