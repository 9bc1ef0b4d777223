/** Reads a quiz by its file, `<content>/modules/<id>/quiz.yaml`, together with the content folder that it stands in. */
import { statSync } from "node:fs";
import { basename, dirname, resolve } from "node:path";
import type { ModuleQuiz } from "../model/content.ts";
import { reportText } from "../report/text.ts";
import { BadInput, WrongCall } from "./command.ts";
import { checkContent, hasErrors } from "./content.ts";

export const quizOption = {
  type: "string",
  value: "FILE",
  help: "the quiz: modules/<id>/quiz.yaml of a content folder",
} as const;

/** A quiz with the revision of its module. */
export interface QuizInHand extends ModuleQuiz {
  readonly revision: number;
}

/** Throws a WrongCall for a file that stands nowhere a quiz stands, a BadInput for content with faults. */
export function readQuizFile(file: string | undefined): QuizInHand {
  if (file === undefined) throw new WrongCall("Say which quiz: --quiz content/modules/<id>/quiz.yaml");
  const { folder, module } = placeOfQuiz(file);
  if (!statSync(file, { throwIfNoEntry: false })?.isFile())
    throw new BadInput(`${file}: there is no such file.`);
  return readQuizOf(folder, module);
}

/** The content folder and the module of a quiz's file. Throws a WrongCall where none can stand. */
export function placeOfQuiz(file: string): { readonly folder: string; readonly module: string } {
  const path = resolve(file);
  const module = dirname(path);
  const modules = dirname(module);
  if (basename(path) !== "quiz.yaml" || basename(modules) !== "modules")
    throw new WrongCall(`${file}: a quiz is the file modules/<id>/quiz.yaml of a content folder.`);
  return { folder: dirname(modules), module: basename(module) };
}

/** The quiz of a module. Throws a BadInput for content with faults, and where there is no such quiz. */
export function readQuizOf(folder: string, module: string): QuizInHand {
  const { content, diagnostics, texts } = checkContent(folder);
  if (hasErrors(diagnostics)) throw new BadInput(reportText(diagnostics, texts));
  const quiz = content.quizzes.get(module);
  if (quiz === undefined) {
    const known = [...content.quizzes.keys()].sort();
    const words = known.length === 0 ? "no quiz at all" : `quizzes of ${known.join(", ")}`;
    throw new BadInput(`${folder}: there is no quiz of a module "${module}"; found ${words}.`);
  }
  return { ...quiz, revision: content.modules.get(module)!.revision };
}
