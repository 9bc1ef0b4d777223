/** Modules that others build on. */
import { grouped } from "./grouped.ts";
import type { ReleaseCard } from "./release.ts";
import type { RecordRules } from "./rules.ts";
import type { Missing, ModuleState, Standing } from "./state.ts";

type Cards = ReadonlyMap<string, ReleaseCard>;

/**
 * Each module after those that it needs, as far as they do not go round in a circle; of a circle the modules come last, so that their needs
 * are not met. O(modules + needs), without recursion.
 */
export function inOrderOfNeed(cards: Cards): ReleaseCard[] {
  const needs = [...cards.values()].flatMap((card) =>
    [...new Set(card.needs)].filter((need) => cards.has(need)).map((need) => ({ need, card })),
  );
  const users = grouped(needs, ({ need }) => need);
  const open = new Map([...cards.keys()].map((module) => [module, 0]));
  for (const { card } of needs) open.set(card.module, open.get(card.module)! + 1);
  const order = new Set([...cards.values()].filter(({ module }) => open.get(module) === 0));
  // A set hands out what is added to it while it is gone through.
  for (const { module } of order)
    for (const { card } of users.get(module) ?? []) {
      const left = open.get(card.module)! - 1;
      open.set(card.module, left);
      if (left === 0) order.add(card);
    }
  return [...order, ...[...cards.values()].filter((card) => !order.has(card))];
}

const holding: ReadonlySet<Standing> = new Set(["signed off", "lapses soon"] as const);

/** Someone may work alone. */
export const holds = (state: ModuleState | undefined): boolean =>
  state !== undefined && holding.has(state.standing);

/** The needed modules on which someone is not signed off. */
export const needsMissing = (card: ReleaseCard, states: ReadonlyMap<string, ModuleState>): Missing[] =>
  card.needs.filter((need) => !holds(states.get(need))).map((module) => ({ kind: "module", module }));

/** What "keep" forgives: a needed sign-off that has run out. One that was withdrawn, or never made, suspends all the same. */
const ranOut: ReadonlySet<Standing> = new Set(["lapsed", "earlier revision"] as const);

/** The needed modules for which a sign-off that is there is suspended. */
export const needsSuspending = (
  card: ReleaseCard,
  states: ReadonlyMap<string, ModuleState>,
  { lapsedNeeds }: Pick<RecordRules, "lapsedNeeds">,
): Missing[] =>
  needsMissing(card, states).filter((each) => {
    const state = each.kind === "module" ? states.get(each.module) : undefined;
    return lapsedNeeds === "suspend" || state === undefined || !ranOut.has(state.standing);
  });
