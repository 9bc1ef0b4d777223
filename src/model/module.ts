import type { SignOffRules } from "../engine/competency/rules.ts";
import type { NeverLeft } from "../engine/procedure/leaving.ts";
import type { FastenerSet, Part, Procedure, Step } from "../engine/procedure/procedure.ts";
import type { ChosenPractice } from "./practice.ts";
import type { Substance, SubstanceUse } from "./sheet.ts";
import type { Section } from "./source.ts";

export interface SubstanceUsed {
  readonly use: string;
  readonly amount: string | undefined;
  readonly place: string | undefined;
}

/** A check with its limit, before the work (as found) or after it (as left). */
export interface LimitCheck {
  readonly check: string;
  readonly limit: string | undefined;
}

export interface Figure {
  /** Relative to the content folder. */
  readonly file: string;
  readonly alt: string;
  readonly caption: string | undefined;
  /** By number, lowest first. */
  readonly items: readonly ItemReference[];
}

/** An item reference (ISO 6433): the number of a thing in a figure. */
export interface ItemReference {
  readonly number: number;
  /** Id of a part or fastener set; undefined for what the module does not take apart. */
  readonly of: string | undefined;
  /** What it is called here, where it is not called as in the parts list. */
  readonly name: string | undefined;
  /** Where its leader ends, in percent of the figure's width and height. */
  readonly at: readonly [x: number, y: number];
}

export interface Mistake {
  readonly mistake: string;
  readonly result: string;
}

export interface Remedy {
  readonly sign: string;
  readonly cause: string;
  readonly do: string;
}

/** What protects a person or the place; of a module as of a step. */
export interface Protection {
  readonly wear: readonly string[];
  readonly neverWear: readonly string[];
  readonly waste: readonly string[];
}

export interface ModulePart extends Part {
  /** No oil may stay on it. */
  readonly keepDry: boolean;
  readonly note: string | undefined;
}

export const fastenerKinds = [
  "machine screw",
  "set screw",
  "left-hand",
  "wood screw",
  "taper pin",
  "rivet",
  "nut",
  "makers own",
] as const;
export type FastenerKind = (typeof fastenerKinds)[number];

export interface ModuleFastener extends FastenerSet {
  readonly kind: FastenerKind;
  readonly thread: string | undefined;
  readonly length: string | undefined;
  readonly drive: string | undefined;
  /** Each to its own hole. */
  readonly matched: boolean;
  /** Why no step undoes them; undefined where some step does. */
  readonly stays: string | undefined;
  readonly torque: string | undefined;
  readonly torqueSource: string | undefined;
  /** Property class or material: 8.8, A2-70, CU2. */
  readonly strengthClass: string | undefined;
  readonly into: TappedHole | undefined;
  readonly note: string | undefined;
}

/** What a screw goes into. */
export interface TappedHole {
  readonly material: string;
  /** Length of full thread that holds, as written. */
  readonly engagement: string | undefined;
  /** False where it is cracked, crumbling, repaired or stripped before. */
  readonly isSound: boolean;
}

export interface ModuleStep extends Step, Protection {
  readonly tools: readonly string[];
  readonly substances: readonly string[];
  /** What it takes a substance for, by id, where it says so. */
  readonly purposes: ReadonlyMap<string, SubstanceUse>;
  readonly hazards: readonly string[];
  readonly conditions: readonly string[];
  /** What it works on is dry once it is done, whatever it was cleaned with. */
  readonly dries: boolean;
  /** There is heat, flame or sparks. */
  readonly hotWork: boolean;
  readonly check: string | undefined;
  readonly phase: string | undefined;
  readonly figure: Figure | undefined;
  readonly record: readonly string[];
  /** The refitting step beside which the record is printed again. */
  readonly recordFor: string | undefined;
  readonly feel: string | undefined;
  readonly mistakes: readonly Mistake[];
  readonly ifNot: readonly Remedy[];
  /** What is still to be written here. */
  readonly draft: readonly string[];
  readonly section: Section;
}

/** What a step takes a substance for: what the step says, or all that the sheet says. */
export function usesIn({ purposes }: ModuleStep, { id, uses }: Substance): readonly SubstanceUse[] {
  const purpose = purposes.get(id);
  return purpose === undefined ? uses : [purpose];
}

export interface ModuleProcedure extends Procedure {
  readonly parts: ReadonlyMap<string, ModulePart>;
  readonly fasteners: ReadonlyMap<string, ModuleFastener>;
  readonly steps: readonly ModuleStep[];
  readonly neverLeft: NeverLeft;
}

export interface Module extends Protection {
  readonly id: string;
  readonly path: string;
  readonly title: string;
  readonly summary: string;
  readonly revision: number;
  /** For the title block (ISO 7200): date of issue, who wrote it, who approved it. */
  readonly issued: string | undefined;
  readonly writtenBy: string | undefined;
  readonly approvedBy: string | undefined;
  readonly needs: readonly string[];
  /** The module whose closing tray and states it starts with. */
  readonly beginsFrom: string | undefined;
  readonly tools: readonly string[];
  readonly substances: readonly SubstanceUsed[];
  readonly hazards: readonly string[];
  readonly conditions: readonly string[];
  readonly procedure: ModuleProcedure;
  /** The whole machine, where the module begins. */
  readonly figure: Figure | undefined;
  readonly phases: ReadonlyMap<string, string>;
  /** What the author chose to be put in order; undefined where nothing is chosen and phases decide. */
  readonly practices: readonly ChosenPractice[] | undefined;
  readonly asFound: readonly LimitCheck[];
  readonly asLeft: readonly LimitCheck[];
  readonly ends: Readonly<Partial<Record<"done" | "conserve" | "refer", string>>>;
  readonly sources: readonly string[];
  /** What a sign-off asks for beyond the programme's own rules: only what the author wrote. */
  readonly signOff: Partial<SignOffRules>;
  /** What is still to be written. */
  readonly draft: readonly string[];
  /** The introduction and every heading, those of steps among them, in the written order. */
  readonly sections: readonly Section[];
}
