import type { Tally } from "./observed.ts";
import type { SignOffRules } from "./rules.ts";
import type { Missing } from "./state.ts";

type Counted = "watched" | "unaided" | "occasions" | "mentors";

/** What is asked, and what there is of it. Unaided is more than watched: what is over of it counts for that. */
const counts: readonly { readonly kind: Counted; has(tally: Tally, rules: SignOffRules): number }[] = [
  {
    kind: "watched",
    has: ({ watched, unaided }, rules) => watched + Math.max(0, unaided - rules.unaided),
  },
  { kind: "unaided", has: ({ unaided }) => unaided },
  { kind: "occasions", has: ({ days }) => days.size },
  { kind: "mentors", has: ({ mentors }) => mentors.size },
];

/**
 * What is not watched yet: of each count the least that any phase has, and the phases that lag behind others. Where nothing has to
 * be watched, occasions and mentors are not asked for. O(phases).
 */
export function observationsMissing(tallies: readonly Tally[], rules: SignOffRules): Missing[] {
  if (rules.watched + rules.unaided === 0) return [];
  const short = counts.flatMap(({ kind, has }): Missing[] => {
    const least = Math.min(...tallies.map((tally) => has(tally, rules)));
    return least < rules[kind] ? [{ kind, has: least, needs: rules[kind] }] : [];
  });
  return [...short, ...phasesMissing(tallies, rules)];
}

function phasesMissing(tallies: readonly Tally[], rules: SignOffRules): Missing[] {
  if (tallies.length < 2 || tallies.every(({ days }) => days.size === 0)) return [];
  const isShort = (tally: Tally) => counts.some(({ kind, has }) => has(tally, rules) < rules[kind]);
  return tallies.filter(isShort).map(({ phase }) => ({ kind: "phase", phase }));
}
