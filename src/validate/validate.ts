/** Sources to content: every file through its schema, then every rule over the whole. All faults at once. */
import type { z } from "zod";
import type { Content, ModuleQuiz, Outline } from "../model/content.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { modulePath } from "../model/link.ts";
import type { Module } from "../model/module.ts";
import type { Programme } from "../model/programme.ts";
import type { KeptRelease } from "../model/released.ts";
import { remembered } from "../model/remembered.ts";
import { blankSource, type Reading, ruledKinds, type Source, type SourceKind } from "../model/source.ts";
import { changedModules, type Grounds, groundsOf, inOthers, only } from "./changed-modules.ts";
import { begun } from "./handover.ts";
import { makeModule } from "./make/module.ts";
import { defaultProgramme, makeProgramme } from "./make/programme.ts";
import { makeQuiz } from "./make/quiz.ts";
import { makeRevisions } from "./make/revisions.ts";
import { makeHazard, makeSubstance, makeTool } from "./make/sheets.ts";
import { outlinesOf } from "./outlines.ts";
import { parseWith } from "./parse.ts";
import { parseKeptRelease, parseWithdrawals } from "./released.ts";
import { Reporter } from "./reporter.ts";
import { rules } from "./rules/index.ts";
import { schemas } from "./schema/index.ts";
import { parseSteps } from "./steps.ts";

/** Content before the rules have looked at how it hangs together. */
export type Parsed = Omit<Content, "outlines">;

export interface Checked {
  readonly content: Content;
  readonly diagnostics: readonly Diagnostic[];
  readonly grounds: Grounds;
}

/** Parses a whole content folder and checks it. */
export function validate(
  reading: Reading,
): Omit<Checked, "grounds"> & { readonly diagnostics: Diagnostic[] } {
  const { parsed, diagnostics } = parse(reading);
  const checked = check(parsed, outlinesOf(parsed));
  return { content: checked.content, diagnostics: [...diagnostics, ...checked.diagnostics] };
}

/**
 * Content that is well formed field by field, and the faults of each file in itself. What is faulty in itself is left out
 * of the content; whatever refers to it is not blamed for that.
 */
export function parse(reading: Reading): { parsed: Parsed; diagnostics: Diagnostic[] } {
  const diagnostics: Diagnostic[] = [];
  const all = <Item>(kind: SourceKind, parseOne: (source: Source) => Outcome<Item>): Map<string, Item> => {
    const items = new Map<string, Item>();
    for (const source of reading.sources) {
      if (source.kind !== kind) continue;
      const { item, diagnostics: found } = parseOne(source);
      diagnostics.push(...found);
      if (item !== undefined) items.set(source.id, item);
    }
    return items;
  };
  const programme = all("programme", parseProgramme).get("programme") ?? defaultProgramme;
  const modules = all("module", parseModule);
  const parsed = {
    programme,
    modules,
    quizzes: all("quiz", (source) => parseQuiz(source, modules.get(source.id), programme.pass)),
    tools: all("tool", parseTool),
    substances: all("substance", parseSubstance),
    hazards: all("hazard", parseHazard),
    revisions: all("revisions", parseRevisions),
    released: kept(reading.sources, diagnostics),
    withdrawals: all("withdrawals", parseLists),
    at: reading.at,
    sources: new Map(reading.sources.map((source) => [source.path, source])),
    pictures: reading.pictures,
  };
  return { parsed, diagnostics: [...diagnostics, ...missing(reading)] };
}

/**
 * Looks at how content hangs together, by every rule. `outlines` are those of the whole content folder, in the order of their
 * paths. After an earlier check of the same folder only modules that have changed are looked at again, where nothing
 * that others go by has.
 */
export function check(parsed: Parsed, outlines: readonly Outline[], before?: Checked): Checked {
  const content = begin(parsed, new Map(outlines.map((outline) => [outline.path, outline])));
  const grounds = groundsOf(content, outlines);
  const modules = before && changedModules(before.grounds, grounds);
  const diagnostics =
    modules === undefined
      ? found(content)
      : [...inOthers(modules, before!.diagnostics), ...found(only(modules, content))];
  return { content, diagnostics, grounds };
}

function found(content: Content): Diagnostic[] {
  const reporter = new Reporter();
  for (const rule of rules) rule.check(content, reporter);
  return reporter.diagnostics;
}

/** Gives modules that begin from another one their beginning, and their quizzes the order of work that follows from it. */
function begin(parsed: Parsed, outlines: Content["outlines"]): Content {
  const modules = new Map([...parsed.modules].map(([id, module]) => [id, begun(module, outlines)]));
  const quizzes = new Map(
    [...parsed.quizzes].map(([id, quiz]) => {
      const module = modules.get(id)!;
      if (module === parsed.modules.get(id)) return [id, quiz];
      const { item } = parseQuiz(parsed.sources.get(quiz.path)!, module, parsed.programme.pass);
      return [id, item ?? quiz];
    }),
  );
  return { ...parsed, modules, quizzes, outlines };
}

interface Outcome<Item> {
  readonly item: Item | undefined;
  readonly diagnostics: readonly Diagnostic[];
}

/** A parser of one source, which is not asked twice for the same. */
function parser<Item, With extends readonly unknown[]>(
  parseOne: (source: Source, reporter: Reporter, ...others: With) => Item | undefined,
) {
  return remembered((source: Source, ...others: With): Outcome<Item> => {
    const reporter = new Reporter();
    const item = parseOne(source, reporter, ...others);
    const holdsUp = item === undefined && ruledKinds.has(source.kind);
    return { item, diagnostics: reporter.diagnostics.map((one) => ({ ...one, holdsUp })) };
  });
}

function through<Schema extends z.ZodType, Item>(
  schema: Schema,
  make: (source: Source, data: z.output<Schema>) => Item,
) {
  return parser((source, reporter) => {
    const data = parseWith(schema, source, source.data, reporter);
    return data === undefined ? undefined : make(source, data);
  });
}

const parseProgramme = through(schemas.programme, (_, data): Programme => makeProgramme(data));
const parseTool = through(schemas.tool, makeTool);
const parseSubstance = through(schemas.substance, makeSubstance);
const parseHazard = through(schemas.hazard, makeHazard);

const parseRevisions = through(schemas.revisions, makeRevisions);
const parseRelease = parser(parseKeptRelease);
const parseLists = parser(parseWithdrawals);

/** What is kept of each module, which may be several files. */
function kept(sources: readonly Source[], diagnostics: Diagnostic[]): Map<string, KeptRelease[]> {
  const released = new Map<string, KeptRelease[]>();
  for (const source of sources) {
    if (source.kind !== "release") continue;
    const { item, diagnostics: found } = parseRelease(source);
    diagnostics.push(...found);
    if (item !== undefined) released.set(source.id, [...(released.get(source.id) ?? []), item]);
  }
  return released;
}

const parseModule = parser((source, reporter): Module | undefined => {
  const data = parseWith(schemas.module, source, source.data, reporter);
  const steps = parseSteps(source, reporter);
  return data === undefined || steps === undefined ? undefined : makeModule(source, data, steps);
});

/** A quiz stands on its module: where that is faulty, only the quiz's own fields are looked at. */
const parseQuiz = parser(
  (source, reporter, module: Module | undefined, pass: number): ModuleQuiz | undefined => {
    const data = parseWith(schemas.quiz, source, source.data, reporter);
    return data === undefined || module === undefined
      ? undefined
      : makeQuiz(source, data, module, pass, reporter);
  },
);

/** Files that should be there. */
function missing({ isFolder, sources }: Reading): Diagnostic[] {
  const reporter = new Reporter();
  const paths = new Set(sources.map(({ path }) => path));
  if (isFolder && !paths.has("programme.yaml")) {
    const source = blankSource("programme.yaml", "programme", "programme");
    reporter.report(
      "no-programme",
      { source, offset: 0 },
      "there is no programme.yaml in the content folder",
    );
  }
  for (const source of sources) {
    if (source.kind === "quiz" && !paths.has(modulePath(source.id)))
      reporter.report("quiz-without-module", { source, offset: 0 }, "there is no module.md beside this quiz");
  }
  return reporter.diagnostics;
}
