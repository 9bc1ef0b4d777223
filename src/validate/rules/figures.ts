/** Pictures must exist and say in words what they show. */
import type { Content } from "../../model/content.ts";
import { resolvePath } from "../../model/path.ts";
import { blankSource, type Source } from "../../model/source.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { inFile, inStep, type Rule } from "./rule.ts";

export const figures: Rule = {
  name: "figures",
  check(content, reporter) {
    const check = (source: Source, src: string, alt: string, spot: Spot): void =>
      checkPicture(resolvePath(source.path, src), src, alt, spot, content, reporter);
    for (const source of content.sources.values()) {
      for (const { src, alt, offset } of source.pictures) check(source, src, alt, { source, offset });
    }
    for (const module of content.modules.values()) {
      const source = content.sources.get(module.path)!;
      if (module.figure !== undefined)
        check(source, writtenFile(source.data.value), module.figure.alt, inFile(content, module, ["figure"]));
      for (const step of module.procedure.steps) {
        const written = writtenFile(step.section.steps[0]!.value);
        if (step.figure !== undefined)
          check(source, written, step.figure.alt, inStep(content, module, step, ["figure"]));
      }
    }
    for (const quiz of content.quizzes.values()) {
      for (const [index, question] of quiz.quiz.questions.entries()) {
        if (question.kind !== "point") continue;
        const spot = inFile(content, quiz, ["questions", index, "figure", "file"]);
        const { file, alt } = question.figure;
        checkPicture(resolvePath("", file), file, alt, spot, content, reporter);
      }
    }
    reportUnused(content, reporter);
  },
};

const writtenFile = (fields: unknown): string =>
  (fields as { figure?: { file?: string } }).figure?.file ?? "";

function checkPicture(
  path: string | undefined,
  src: string,
  alt: string,
  spot: Spot,
  content: Content,
  reporter: Reporter,
): void {
  if (path === undefined) reporter.report("leaves-content", spot, `"${src}" leads out of the content folder`);
  else if (!content.pictures.has(path))
    reporter.report("figure-missing", spot, `there is no picture "${path}"`);
  if (alt.trim() === "") reporter.report("figure-alt", spot, `the picture "${src}" has no alt text`);
}

function reportUnused(content: Content, reporter: Reporter): void {
  const used = new Set([...content.outlines.values()].flatMap(({ pictures }) => pictures));
  for (const path of content.pictures.keys()) {
    if (used.has(path) || mayBeShown(path, content)) continue;
    reporter.report(
      "figure-unused",
      { source: blankSource(path, "module", path), offset: 0 },
      `no page shows "${path}"`,
    );
  }
}

/** What a module shows that could not be understood, or is not there, nobody knows. */
function mayBeShown(path: string, { outlines }: Content): boolean {
  const folder = /^modules\/[^/]+\//.exec(path)?.[0];
  if (folder === undefined) return false;
  const [module, quiz] = [outlines.get(`${folder}module.md`), outlines.get(`${folder}quiz.yaml`)];
  return module?.isSound !== true || quiz?.isSound === false;
}
