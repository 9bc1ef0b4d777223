import type { Fault } from "./fault.ts";
import type { Machine, Work } from "./procedure.ts";
import { startWalk } from "./walk.ts";

/**
 * What stands in the way of a step at the machine, once the steps of `done` are done in this order: what the walk finds
 * wrong with it. Nothing where it could be done by hand, whatever order it should be in.
 */
export function hindrances(machine: Machine, done: readonly Work[], step: Work): Fault[] {
  const walker = startWalk(machine);
  for (const each of done) walker.do(each);
  const before = walker.faults.length;
  walker.do(step);
  return walker.faults.slice(before);
}
