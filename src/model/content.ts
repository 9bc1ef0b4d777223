import type { Quiz } from "../engine/quiz/quiz.ts";
import type { Module } from "./module.ts";
import type { Programme } from "./programme.ts";
import type { Hazard, Sheet, Substance, Tool } from "./sheet.ts";
import type { Source } from "./source.ts";

/** A module's quiz. */
export interface ModuleQuiz {
  readonly module: string;
  readonly path: string;
  readonly quiz: Quiz;
}

/** All content that could be read, in types that can't be wrong field by field; rules look at how it hangs together. */
export interface Content {
  readonly programme: Programme;
  readonly modules: ReadonlyMap<string, Module>;
  readonly quizzes: ReadonlyMap<string, ModuleQuiz>;
  readonly tools: ReadonlyMap<string, Tool>;
  readonly substances: ReadonlyMap<string, Substance>;
  readonly hazards: ReadonlyMap<string, Hazard>;
  /** By path. */
  readonly sources: ReadonlyMap<string, Source>;
  readonly pictures: ReadonlySet<string>;
}

/** The sheets of all three kinds, in the order tools, substances, hazards. */
export function sheetsOf(content: Content): Sheet[] {
  return [...content.tools.values(), ...content.substances.values(), ...content.hazards.values()];
}
