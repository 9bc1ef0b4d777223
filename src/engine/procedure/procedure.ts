/** The nouns of a procedure: parts, fastener sets, states, steps and what steps do to them. */

/** What an act does; within one step the acts are taken in this order, and `makes` comes last. */
export const actKinds = ["slacken", "remove", "work", "refit", "tighten"] as const;
export type ActKind = (typeof actKinds)[number];

/** One deed on one part or fastener set. `count` undefined means all to which the act applies. */
export interface Act {
  readonly kind: ActKind;
  readonly target: string;
  readonly count: number | undefined;
}

/** How many of a fastener set must be out, and how many more at least slack, before the part comes free. */
export interface Hold {
  readonly out: number;
  readonly slack: number;
}

export interface Part {
  readonly id: string;
  readonly name: string;
  /** How many pieces it is, which come off and go back together. */
  readonly count: number;
  readonly heldBy: ReadonlyMap<string, Hold>;
  /** Parts, each with what lies in it and holds it, and single fastener sets. */
  readonly covers: readonly string[];
  /** The assembly that the part lies in. */
  readonly in: string | undefined;
  /** The part whose place this one takes: it starts off the machine, the other one ends off it. */
  readonly replaces: string | undefined;
  /** States in which the part may be removed or refitted. */
  readonly onlyWhile: ReadonlyMap<string, string>;
  /** Where it is put when it is off. */
  readonly keep: string | undefined;
}

export interface FastenerSet {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly keep: string | undefined;
}

/** Something of the machine that is not a part: power in a spring, a cover oiled or dry. */
export interface StateVariable {
  readonly id: string;
  readonly name: string;
  readonly values: readonly string[];
  readonly starts: string;
  readonly ends: string;
}

/** The reason of an explicit precedence; `critical` where getting it wrong ruins or hurts. */
export interface After {
  readonly because: string;
  readonly critical: boolean;
}

export interface Step {
  readonly id: string;
  readonly title: string;
  readonly acts: readonly Act[];
  /** States that the step brings about, after its acts. */
  readonly makes: ReadonlyMap<string, string>;
  /** Covers that must be on while the step is done: it works through them. */
  readonly through: readonly string[];
  /** States that the step needs. */
  readonly while: ReadonlyMap<string, string>;
  /** Explicit precedence: earlier step id to the reason. */
  readonly after: ReadonlyMap<string, After>;
  /** Steps with which this one may change places although a rule binds them: step id to the reason. */
  readonly maySwap: ReadonlyMap<string, string>;
  readonly critical: boolean;
  /** Hands-on minutes. */
  readonly time: number;
  /** Minutes to wait after the step before anything that depends on it. */
  readonly wait: number;
  /** A safe place to leave off once the step is done. */
  readonly stop: boolean;
}

/** What of a step the walk looks at. */
export type Work = Pick<Step, "id" | "acts" | "makes" | "through" | "while">;

/** What the module says is left so at the end: a part off, some of a set out or slack. */
export interface Left {
  readonly out: number;
  readonly slack: number;
  readonly fate: "left" | "discarded" | "onward";
  /** The module that it goes on to. */
  readonly to: string | undefined;
}

/** What is off or slack before the first step, because another procedure has left it so. Plain data, to be sent and packed. */
export interface Beginning {
  /** Ids of parts that are off. */
  readonly parts: readonly string[];
  /** Of fastener sets, how many are out and how many slack. */
  readonly sets: readonly (readonly [string, { readonly out: number; readonly slack: number }])[];
}

/** What the steps work on. */
export interface Machine {
  readonly parts: ReadonlyMap<string, Part>;
  readonly fasteners: ReadonlyMap<string, FastenerSet>;
  readonly states: ReadonlyMap<string, StateVariable>;
  /** Undefined where the machine is whole at first. */
  readonly begins?: Beginning | undefined;
}

/** A whole procedure. Steps stand in the written order, which is one right order. */
export interface Procedure extends Machine {
  readonly steps: readonly Step[];
  /** What may be off or slack at the end; a part that stays off has `out: 1`. */
  readonly leaves: ReadonlyMap<string, Left>;
}
