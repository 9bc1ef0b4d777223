/** What a walk needs of a procedure, as plain JSON: maps are lists of their entries. */
import type { Act, Beginning, Hold, Part, StateVariable, Work } from "./procedure.ts";
import type { MatchedMachine } from "./tray-account.ts";

type Entries<Value> = readonly (readonly [string, Value])[];

type PackedPart = Pick<Part, "id" | "name" | "covers"> & {
  readonly heldBy: Entries<Hold>;
  readonly onlyWhile: Entries<string>;
  /** 1 where nothing is said. */
  readonly count?: number | undefined;
  readonly in?: string | undefined;
  readonly replaces?: string | undefined;
  readonly keep?: string | undefined;
};

interface PackedFasteners {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly matched: boolean;
  readonly keep?: string | undefined;
}

type PackedAct = Pick<Act, "kind" | "target"> & { readonly count?: number | undefined };

interface PackedStep {
  readonly id: string;
  readonly acts: readonly PackedAct[];
  readonly makes: Entries<string>;
  readonly through: readonly string[];
  readonly while: Entries<string>;
}

export interface PackedProcedure {
  readonly parts: readonly PackedPart[];
  readonly fasteners: readonly PackedFasteners[];
  readonly states: readonly StateVariable[];
  readonly steps: readonly PackedStep[];
  readonly begins?: Beginning | undefined;
}

/** A procedure as it is walked: the machine, and the work of each step in the written order. */
export interface Walkable extends MatchedMachine {
  readonly steps: readonly Work[];
}

/** O(size of the procedure). */
export function packProcedure({ parts, fasteners, states, steps, begins }: Walkable): PackedProcedure {
  return {
    begins,
    parts: [...parts.values()].map(packPart),
    fasteners: [...fasteners.values()].map(({ id, name, count, matched, keep }) => ({
      ...{ id, name, count, matched, keep },
    })),
    states: [...states.values()].map(({ id, name, values, starts, ends }) => ({
      ...{ id, name, values, starts, ends },
    })),
    steps: steps.map((step) => ({
      id: step.id,
      acts: step.acts.map(({ kind, target, count }) => ({ kind, target, count })),
      makes: [...step.makes],
      through: step.through,
      while: [...step.while],
    })),
  };
}

const packPart = ({ id, name, count, covers, replaces, keep, ...part }: Part): PackedPart => ({
  ...{ id, name, covers, replaces, keep },
  count: count === 1 ? undefined : count,
  in: part.in,
  heldBy: [...part.heldBy],
  onlyWhile: [...part.onlyWhile],
});

/** The other way round. What was packed is trusted: the page that bears it was made by the build. */
export function unpackProcedure({ parts, fasteners, states, steps, begins }: PackedProcedure): Walkable {
  return {
    begins,
    parts: byId(parts.map(unpackPart)),
    fasteners: byId(fasteners.map((set) => ({ ...set, keep: set.keep }))),
    states: byId(states),
    steps: steps.map((step) => ({
      ...step,
      acts: step.acts.map((act) => ({ ...act, count: act.count })),
      makes: new Map(step.makes),
      while: new Map(step.while),
    })),
  };
}

const unpackPart = (part: PackedPart): Part => ({
  ...part,
  count: part.count ?? 1,
  in: part.in,
  replaces: part.replaces,
  keep: part.keep,
  heldBy: new Map(part.heldBy),
  onlyWhile: new Map(part.onlyWhile),
});

const byId = <Item extends { readonly id: string }>(items: readonly Item[]): Map<string, Item> =>
  new Map(items.map((item) => [item.id, item]));
