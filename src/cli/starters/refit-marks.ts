/** What the author of a reassembly has to write at each step: cleaning, oil, adjustment, and what was recorded. */
import type { RefitStep } from "../../engine/procedure/reassembly.ts";
import type { Module, ModuleStep } from "../../model/module.ts";

export function marksOf(
  { refit, tighten }: RefitStep,
  { procedure: { parts, fasteners } }: Module,
  undone: ModuleStep,
): string[] {
  const moved = refit.flatMap(({ target }) => parts.get(target)?.name ?? []);
  const back = new Set(refit.map(({ target }) => target));
  const eased = tighten.filter(({ target }) => !back.has(target));
  const unsaid = tighten.filter(({ target }) => fasteners.get(target)?.torque === undefined);
  const nameOf = ({ target }: { readonly target: string }) => fasteners.get(target)?.name ?? target;
  return [
    ...moved.map((name) => `cleaning: how the ${name} is cleaned, dried and looked at before it goes back`),
    ...moved.map(
      (name) =>
        `lubrication: where the ${name} gets oil or grease, which and how much, and where nothing goes`,
    ),
    ...eased.map(
      (set) => `adjustment: what is set before the ${nameOf(set)} is tightened, how, and to what limit`,
    ),
    ...unsaid.map((set) => `tightening: how tight the ${nameOf(set)} has to be, in words or with its source`),
    ...undone.record.map(
      (text) => `recorded setting: how it is set again as noted in “${undone.title}”: ${text}`,
    ),
  ];
}

export const stateMarks = (
  makes: ReadonlyMap<string, string>,
  { procedure: { states } }: Module,
  undone: ModuleStep,
): string[] =>
  [...makes].map(
    ([state, value]) =>
      `adjustment: how the ${states.get(state)?.name ?? state} is brought to “${value}”, as it was in “${undone.title}”`,
  );
