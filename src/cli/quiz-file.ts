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

/** Throws a WrongCall for a file that stands nowhere a quiz stands, a BadInput for content with faults. */
export function readQuizFile(file: string | undefined): ModuleQuiz {
  if (file === undefined) throw new WrongCall("Say which quiz: --quiz content/modules/<id>/quiz.yaml");
  const path = resolve(file);
  const module = dirname(path);
  const modules = dirname(module);
  if (basename(path) !== "quiz.yaml" || basename(modules) !== "modules")
    throw new WrongCall(`${file}: a quiz is the file modules/<id>/quiz.yaml of a content folder.`);
  if (!statSync(path, { throwIfNoEntry: false })?.isFile())
    throw new BadInput(`${file}: there is no such file.`);
  const { content, diagnostics, texts } = checkContent(dirname(modules));
  if (hasErrors(diagnostics)) throw new BadInput(reportText(diagnostics, texts));
  return content.quizzes.get(basename(module))!;
}
