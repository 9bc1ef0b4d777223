/** What can be searched for: every page, heading and fastener, with the names of things that belong to it. */
import { threadsIn } from "../engine/workshop/threads-in-text.ts";
import { type Address, rowOf } from "../model/address.ts";
import { type Content, sheetsOf } from "../model/content.ts";
import { anchorOf } from "../model/link.ts";
import type { Module, ModuleFastener, ModuleStep } from "../model/module.ts";
import type { Sheet } from "../model/sheet.ts";
import type { SearchDocument } from "../model/site.ts";
import type { Section } from "../model/source.ts";
import { cellsOf, textsOf } from "./prose-text.ts";

/** Of the sheets alone, which every share of the content has. */
export const sheetDocuments = (content: Content): SearchDocument[] =>
  sheetsOf(content).flatMap(documentsOfSheet);

export function moduleDocuments(module: Module, content: Content): SearchDocument[] {
  const address: Address = { kind: "module", id: module.id };
  const { title, procedure, sections } = module;
  const stepOf = new Map(procedure.steps.map((step) => [step.section, step]));
  return [
    pageDocument(address, module, [
      ...sheetNames(module, content),
      ...[...procedure.parts.values()].map(({ name }) => name),
      ...module.sources.flatMap(threadsIn),
    ]),
    ...[...procedure.fasteners.values()].map((set) => rowDocument(address, title, set)),
    ...headed(sections).map((section) => {
      const step = stepOf.get(section);
      const document = sectionDocument(
        address,
        title,
        section,
        step === undefined ? [] : stepTerms(step, module, content),
      );
      if (step === undefined) return document;
      return { ...document, isStep: true as const, says: [...document.says!, ...told(step)] };
    }),
  ];
}

function documentsOfSheet(sheet: Sheet): SearchDocument[] {
  const address: Address = { kind: sheet.kind, id: sheet.id };
  return [
    pageDocument(address, sheet, factsOf(sheet).flatMap(threadsIn), saidBy(sheet)),
    ...headed(sheet.sections).map((section) => sectionDocument(address, sheet.title, section, [])),
  ];
}

/** Of what a sheet says outside its prose, the texts in which a thread may be named. */
const factsOf = (sheet: Sheet): string[] => (sheet.kind === "tool" ? [...sheet.uses, sheet.care ?? ""] : []);

/** What a sheet says in whole sentences outside its prose. */
function saidBy(sheet: Sheet): string[] {
  if (sheet.kind === "hazard") return [sheet.hazard, sheet.consequence, ...sheet.avoid];
  if (sheet.kind === "substance") return sheet.instead === undefined ? [] : [sheet.instead];
  return factsOf(sheet);
}

const headed = (sections: readonly Section[]): Section[] => sections.filter(({ level }) => level > 0);

function pageDocument(
  address: Address,
  page: Module | Sheet,
  names: readonly string[],
  facts: readonly string[] = [],
): SearchDocument {
  const said = page.sections.filter(({ level }) => level === 0).flatMap(proseTerms);
  return {
    address,
    title: page.title,
    heading: "",
    terms: [...new Set([...names, ...said, page.summary])],
    says: [
      ...page.sections.filter(({ level }) => level === 0).flatMap(({ prose }) => textsOf(prose)),
      ...facts,
    ].filter((text) => text !== ""),
  };
}

function rowDocument(page: Address, title: string, { id, name, thread }: ModuleFastener): SearchDocument {
  const terms = thread === undefined ? [name] : [name, thread];
  return { address: { ...page, at: rowOf(id) }, title, heading: "", terms, isRow: true };
}

function sectionDocument(
  page: Address,
  title: string,
  section: Section,
  names: readonly string[],
): SearchDocument {
  const terms = [...new Set([...names, ...proseTerms(section)])];
  return {
    address: { ...page, at: anchorOf(section) },
    title,
    heading: section.title,
    terms,
    says: textsOf(section.prose),
  };
}

/** A longer cell is a sentence rather than a name. */
const longestCell = 40;

/** The threads that a text names, and what the cells of its tables say in few words. */
function proseTerms({ prose }: Section): string[] {
  const cells = cellsOf(prose).filter((cell) => cell.length <= longestCell && /\p{L}/u.test(cell));
  return [...cells, ...textsOf(prose).flatMap(threadsIn)];
}

/** What a step says beside its prose. */
function told({ check = "", feel = "", record, mistakes, ifNot }: ModuleStep): string[] {
  return [
    ...[check, feel, ...record],
    ...mistakes.flatMap(({ mistake, result }) => [mistake, result]),
    ...ifNot.flatMap((remedy) => [remedy.sign, remedy.cause, remedy.do]),
  ].filter((text) => text !== "");
}

function stepTerms(step: ModuleStep, { procedure }: Module, content: Content): string[] {
  const parts = step.acts.map(({ target }) => procedure.parts.get(target)?.name);
  return [
    ...parts.filter((name) => name !== undefined),
    ...namesOf(step.tools, step.substances, step.hazards, content),
    ...told(step).flatMap(threadsIn),
  ];
}

const sheetNames = (module: Module, content: Content): string[] =>
  namesOf(
    module.tools,
    module.substances.map(({ use }) => use),
    module.hazards,
    content,
  );

function namesOf(
  tools: readonly string[],
  substances: readonly string[],
  hazards: readonly string[],
  content: Content,
): string[] {
  return [
    ...tools.map((id) => content.tools.get(id)?.title),
    ...substances.map((id) => content.substances.get(id)?.title),
    ...hazards.map((id) => content.hazards.get(id)?.title),
  ].filter((title) => title !== undefined);
}
