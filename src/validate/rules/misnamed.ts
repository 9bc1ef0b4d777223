/** Which things of a module are likely to be meant by names that it does not know. */
import type { Module } from "../../model/module.ts";
import { nearest } from "../nearest.ts";
import { stateKey } from "./first-faults.ts";

/** The nearest things and states to the unknown names in acts and states of steps: their account is in doubt. */
export function misnamedIn({ procedure: { parts, fasteners, states, steps } }: Module): Set<string> {
  const things = [...parts.keys(), ...fasteners.keys()];
  const meant = new Set<string>();
  for (const step of steps) {
    for (const { target } of step.acts) {
      const near = parts.has(target) || fasteners.has(target) ? undefined : nearest(target, things);
      if (near !== undefined) meant.add(near);
    }
    for (const id of [...step.makes.keys(), ...step.while.keys()]) {
      const near = states.has(id) ? undefined : nearest(id, states.keys());
      if (near !== undefined) meant.add(stateKey(near));
    }
  }
  return meant;
}
