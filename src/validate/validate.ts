/** Sources to content: every file through its schema, then every rule over the whole. All faults at once. */
import type { z } from "zod";
import type { Content, ModuleQuiz } from "../model/content.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { Module } from "../model/module.ts";
import type { Programme } from "../model/programme.ts";
import type { Reading, Source, SourceKind } from "../model/source.ts";
import { makeModule } from "./make/module.ts";
import { defaultProgramme, makeProgramme } from "./make/programme.ts";
import { makeQuiz } from "./make/quiz.ts";
import { makeHazard, makeSubstance, makeTool } from "./make/sheets.ts";
import { parseWith } from "./parse.ts";
import { Reporter } from "./reporter.ts";
import { rules } from "./rules/index.ts";
import { schemas } from "./schema/index.ts";
import { parseSteps } from "./steps.ts";

/**
 * Content that is well formed field by field, and every fault found. What is faulty in itself is left out of the content;
 * whatever refers to it is not blamed for that.
 */
export function validate(reading: Reading): { content: Content; diagnostics: Diagnostic[] } {
  const reporter = new Reporter();
  const parsing = new Parsing(reading, reporter);
  const modules = parsing.all("module", (source) => parseModule(source, reporter));
  const programme = parsing.programme();
  const content: Content = {
    programme,
    modules,
    quizzes: parsing.all("quiz", (source) => parseQuiz(source, modules, programme.pass, reading, reporter)),
    tools: parsing.all("tool", parsing.through(schemas.tool, makeTool)),
    substances: parsing.all("substance", parsing.through(schemas.substance, makeSubstance)),
    hazards: parsing.all("hazard", parsing.through(schemas.hazard, makeHazard)),
    sources: new Map(reading.sources.map((source) => [source.path, source])),
    pictures: reading.pictures,
  };
  for (const rule of rules) rule.check(content, reporter);
  return { content, diagnostics: reporter.diagnostics };
}

class Parsing {
  constructor(
    private readonly reading: Reading,
    private readonly reporter: Reporter,
  ) {}

  all<Item>(kind: SourceKind, parse: (source: Source) => Item | undefined): Map<string, Item> {
    const items = new Map<string, Item>();
    for (const source of this.reading.sources) {
      const item = source.kind === kind ? parse(source) : undefined;
      if (item !== undefined) items.set(source.id, item);
    }
    return items;
  }

  through<Schema extends z.ZodType, Item>(
    schema: Schema,
    make: (source: Source, data: z.output<Schema>) => Item,
  ) {
    return (source: Source): Item | undefined => {
      const data = parseWith(schema, source, source.data, this.reporter);
      return data === undefined ? undefined : make(source, data);
    };
  }

  programme(): Programme {
    const source = this.reading.sources.find(({ kind }) => kind === "programme");
    if (source === undefined) return this.missingProgramme();
    const data = parseWith(schemas.programme, source, source.data, this.reporter);
    return data === undefined ? defaultProgramme : makeProgramme(data);
  }

  private missingProgramme(): Programme {
    const empty = { value: null, offset: 0, locate: () => 0 };
    const source: Source = {
      path: "programme.yaml",
      kind: "programme",
      id: "programme",
      text: "",
      data: empty,
      sections: [],
      links: [],
      pictures: [],
    };
    if (!this.reading.texts.has(source.path))
      this.reporter.report(
        "missing-field",
        { source, offset: 0 },
        "there is no programme.yaml with the programme's name",
      );
    return defaultProgramme;
  }
}

function parseModule(source: Source, reporter: Reporter): Module | undefined {
  const data = parseWith(schemas.module, source, source.data, reporter);
  const steps = parseSteps(source, reporter);
  return data === undefined || steps === undefined ? undefined : makeModule(source, data, steps);
}

/** A quiz stands on its module: where that is faulty, only the quiz's own fields are looked at. */
function parseQuiz(
  source: Source,
  modules: ReadonlyMap<string, Module>,
  pass: number,
  reading: Reading,
  reporter: Reporter,
): ModuleQuiz | undefined {
  const data = parseWith(schemas.quiz, source, source.data, reporter);
  const module = modules.get(source.id);
  if (!reading.texts.has(`modules/${source.id}/module.md`)) {
    reporter.report("quiz-without-module", { source, offset: 0 }, `there is no module.md beside this quiz`);
  }
  return data === undefined || module === undefined
    ? undefined
    : makeQuiz(source, data, module, pass, reporter);
}
