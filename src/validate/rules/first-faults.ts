/** Which faults of a walk come first: a screw that was forgotten once is missed again and again afterwards. */
import type { Fault } from "../../engine/procedure/fault.ts";
import type { Walk } from "../../engine/procedure/walk.ts";
import type { ModuleProcedure, ModuleStep } from "../../model/module.ts";
import { linksOf } from "./holds.ts";

type Tray = Walk["trays"][number];

/**
 * The faults without those that follow from an earlier one. After a fault the account of what it was about is in doubt:
 * what the author took to be so is not what the walk found. Faults about what is in doubt are consequences, until a step
 * brings the thing into a state in which both accounts agree. `misnamed` things are in doubt throughout. O(faults + acts).
 */
export function firstFaults(
  procedure: ModuleProcedure,
  { faults, trays }: Walk,
  misnamed: ReadonlySet<string>,
): Fault[] {
  const links = linksOf(procedure);
  const doubtful = new Set<string>();
  const first: Fault[] = [];
  const waiting = [...faults].reverse();
  const look = (stepId: string | undefined): void => {
    while (waiting.length > 0 && waiting.at(-1)!.step === stepId) {
      const fault = waiting.pop()!;
      const about = aboutOf(fault);
      if (about.some((id) => doubtful.has(id) || misnamed.has(id))) continue;
      first.push(fault);
      for (const id of inDoubtAfter(fault, about, links)) doubtful.add(id);
    }
  };
  for (const [index, step] of procedure.steps.entries()) {
    look(step.id);
    for (const id of settledBy(step, trays[index]!, procedure)) doubtful.delete(id);
  }
  look(undefined);
  return first;
}

/** What a fault blames: things, or a state. */
function aboutOf(fault: Fault): string[] {
  switch (fault.kind) {
    case "cover-on":
    case "cover-off":
      return [fault.cover];
    case "place-taken":
      return [fault.part, fault.by];
    case "still-held":
    case "in-the-way":
    case "too-many":
    case "ends-out":
      return [fault.set];
    case "wrong-state":
    case "ends-state":
      return [stateKey(fault.state)];
    default:
      return [fault.part];
  }
}

/** States have names of their own: one may be called as a part is. */
export const stateKey = (id: string): string => `state ${id}`;

/** A part that was not taken off, or not put back, has its screws with it; screws have what they hold. */
function inDoubtAfter(fault: Fault, about: readonly string[], links: ReturnType<typeof linksOf>): string[] {
  if (fault.step === undefined) return [];
  if (fault.kind === "still-held" || fault.kind === "in-the-way") return [...about];
  return about.flatMap((id) => [id, ...(links.get(id) ?? [])]);
}

/** A part that was taken off or put back is where the author takes it to be; so is a set that is all out, or all tight. */
function settledBy(step: ModuleStep, tray: Tray, { parts }: ModuleProcedure): string[] {
  const settled = [...step.makes.keys()].map(stateKey);
  for (const { kind, target, count } of step.acts) {
    const isMoved = parts.has(target) && (kind === "remove" || kind === "refit");
    const isAll = count === undefined && (kind === "remove" || kind === "tighten");
    const counts = tray.sets.get(target);
    if (isMoved || (isAll && (kind === "remove" || counts?.out === 0))) settled.push(target);
  }
  return settled;
}
