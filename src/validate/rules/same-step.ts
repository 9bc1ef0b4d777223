/** Faults that a step brings on itself: its acts have a fixed order, in which the sheets print them, and states change after them. */
import type { Fault } from "../../engine/procedure/fault.ts";
import type { ActKind } from "../../engine/procedure/procedure.ts";
import type { ModuleStep } from "../../model/module.ts";

type CoverOn = Extract<Fault, { kind: "cover-on" }>;

interface Row {
  /** What the step does to the cover. */
  readonly cover: ActKind;
  /** What it does to what lies under it. */
  readonly under: ActKind;
  mend(cover: string, target: string): string;
}

const rows: readonly Row[] = [
  {
    cover: "refit",
    under: "tighten",
    mend: (cover, target) =>
      `Within one step all is refitted before anything is tightened: tighten ${target} in a step of its own, and refit ${cover} in the next`,
  },
  {
    cover: "remove",
    under: "slacken",
    mend: (cover, target) =>
      `Within one step all is slackened before anything is removed: remove ${cover} in a step of its own, and slacken ${target} in the next`,
  },
  {
    cover: "refit",
    under: "refit",
    mend: (cover, target) => inOrder("refitted", target, cover),
  },
  {
    cover: "remove",
    under: "remove",
    mend: (cover, target) => inOrder("removed", cover, target),
  },
];

function inOrder(done: string, first: string, then: string): string {
  return `What stands first is ${done} first: name ${first} before ${then}`;
}

/** What to do about a fault where it is the order within the step that makes it; undefined where it is not. */
export function mendWithin(step: ModuleStep, fault: Fault): string | undefined {
  if (fault.kind === "cover-on") return mendCover(step, fault);
  if (fault.kind === "still-held" && does(step, "remove", fault.set))
    return `${inOrder("removed", `"${fault.set}"`, `"${fault.part}"`)}.`;
  if (fault.kind === "in-the-way" && does(step, "refit", fault.set))
    return `${inOrder("refitted", `"${fault.part}"`, `"${fault.set}"`)}.`;
  if (fault.kind !== "wrong-state" || step.makes.get(fault.state) !== fault.needed) return undefined;
  return `A step brings its states about once its acts are done: bring "${fault.needed}" about in a step before this one.`;
}

const does = ({ acts }: ModuleStep, kind: ActKind, target: string): boolean =>
  acts.some((act) => act.kind === kind && act.target === target);

function mendCover(step: ModuleStep, { act, cover, target }: CoverOn): string | undefined {
  const row = rows.find((one) => one.under === act && does(step, one.cover, cover));
  return row && `${row.mend(`"${cover}"`, `"${target}"`)}.`;
}
