/** The list for the next workshop evening, over all modules: questions and steps that went wrong, wherever they did. */
import { byGravity, type Fault, faultsIn, type Go } from "./faults.ts";

/** A quiz, a practice or the dry run of a module, and how it went. */
export interface Tried {
  readonly module: string;
  /** Tells it from others of the module: "quiz", "dry-run", "practice:strip". */
  readonly where: string;
  /** What its goes are about. */
  readonly about: "question" | "step";
  readonly goes: readonly Go[];
}

export interface ToGoOver {
  readonly about: "question" | "step";
  readonly id: string;
  readonly critical: boolean;
  /** In all places together. */
  readonly missed: number;
  /** Each place where it is still open. */
  readonly in: readonly (Fault & { readonly where: string })[];
}

export interface ModuleToGoOver {
  readonly module: string;
  readonly faults: readonly ToGoOver[];
}

/**
 * Each place by the rule of `faultsIn`: what went wrong in a place must be right there. A step that went wrong in several
 * stands once, with all of them. Within a module critical ones stand first, then those missed most often; modules with a
 * critical fault stand before those without. Otherwise everything stays in the order given. O(answers + faults · log).
 */
export function listToGoOver(tried: readonly Tried[]): ModuleToGoOver[] {
  const modules = new Map<string, Map<string, ToGoOver>>();
  for (const { module, where, about, goes } of tried) {
    const faults = modules.get(module) ?? new Map<string, ToGoOver>();
    for (const fault of faultsIn(goes)) {
      const key = `${about} ${fault.id}`;
      const was = faults.get(key) ?? { about, id: fault.id, critical: false, missed: 0, in: [] };
      faults.set(key, {
        ...was,
        critical: was.critical || fault.critical,
        missed: was.missed + fault.missed,
        in: [...was.in, { ...fault, where }],
      });
    }
    modules.set(module, faults);
  }
  return [...modules]
    .filter(([, faults]) => faults.size > 0)
    .map(([module, faults]) => ({ module, faults: [...faults.values()].sort(byGravity) }))
    .sort((a, b) => Number(isGrave(b)) - Number(isGrave(a)));
}

const isGrave = ({ faults }: ModuleToGoOver): boolean => faults.some(({ critical }) => critical);
