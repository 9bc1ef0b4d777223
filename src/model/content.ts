import type { Beginning } from "../engine/procedure/procedure.ts";
import type { Quiz } from "../engine/quiz/quiz.ts";
import type { Module } from "./module.ts";
import type { Programme } from "./programme.ts";
import type { KeptRelease, Revisions, Withdrawals } from "./released.ts";
import type { Hazard, Sheet, Substance, Tool } from "./sheet.ts";
import type { Source } from "./source.ts";

/** A module's quiz. */
export interface ModuleQuiz {
  readonly module: string;
  readonly path: string;
  readonly quiz: Quiz;
}

/** How a module hangs together with the one before it and the one after it. */
export interface Handover {
  /** The module that it begins from. */
  readonly beginsFrom: string | undefined;
  /** What it leaves off and slack. */
  readonly leaves: Beginning;
  /** Parts and fastener sets that it hands on, with the module that goes on with them. */
  readonly onward: readonly (readonly [string, string])[];
  /** Its states at the end. */
  readonly states: readonly (readonly [string, string])[];
}

/** What other files may name of a content file. */
export interface Outline {
  readonly path: string;
  /** The ids that a link may name after `#`. */
  readonly places: readonly string[];
  /** False where a part of the file could not be read, so that it may have more places. */
  readonly hasAllPlaces: boolean;
  /** Paths of the pictures that it shows. */
  readonly pictures: readonly string[];
  /** Ids of the modules that a module needs. */
  readonly needs: readonly string[];
  /** Of a module that could be understood. */
  readonly handover: Handover | undefined;
  /** False where the file could be read but not understood: its own faults are reported, not those of all that name it. */
  readonly isSound: boolean;
}

/** All content that could be read, in types that can't be wrong field by field; rules look at how it hangs together. */
export interface Content {
  readonly programme: Programme;
  readonly modules: ReadonlyMap<string, Module>;
  readonly quizzes: ReadonlyMap<string, ModuleQuiz>;
  readonly tools: ReadonlyMap<string, Tool>;
  readonly substances: ReadonlyMap<string, Substance>;
  readonly hazards: ReadonlyMap<string, Hazard>;
  /** By module. */
  readonly revisions: ReadonlyMap<string, Revisions>;
  /** By module, in the order of their files. */
  readonly released: ReadonlyMap<string, readonly KeptRelease[]>;
  /** By mentor. */
  readonly withdrawals: ReadonlyMap<string, Withdrawals>;
  /** When the content was read: RFC 3339 in UTC. */
  readonly at: string;
  /** Of all files of the content folder by path, those of other shares too. */
  readonly outlines: ReadonlyMap<string, Outline>;
  /** By path. */
  readonly sources: ReadonlyMap<string, Source>;
  /** By path, with what changes whenever the file does. */
  readonly pictures: ReadonlyMap<string, string>;
}

/** The sheets of all three kinds, in the order tools, substances, hazards. */
export function sheetsOf(content: Content): Sheet[] {
  return [...content.tools.values(), ...content.substances.values(), ...content.hazards.values()];
}
