/** What can be searched for: every page and every heading, with the names of things that belong to it. */
import type { Address } from "../model/address.ts";
import { type Content, sheetsOf } from "../model/content.ts";
import { anchorOf } from "../model/link.ts";
import type { Module, ModuleStep } from "../model/module.ts";
import type { Sheet } from "../model/sheet.ts";
import type { SearchDocument } from "../model/site.ts";
import type { Section } from "../model/source.ts";

/** Of the sheets alone, which every share of the content has. */
export const sheetDocuments = (content: Content): SearchDocument[] =>
  sheetsOf(content).flatMap(documentsOfSheet);

export function moduleDocuments(module: Module, content: Content): SearchDocument[] {
  const address: Address = { kind: "module", id: module.id };
  const { parts, fasteners, steps } = module.procedure;
  const terms = [
    ...sheetNames(module, content),
    ...[...fasteners.keys(), ...parts.keys()].flatMap((id) => itemNames(id, module)),
  ];
  const stepOf = new Map(steps.map((step) => [step.section, step]));
  const sections = headed(module.sections).map((section) => {
    const step = stepOf.get(section);
    return sectionDocument(
      address,
      module.title,
      section,
      step === undefined ? [] : stepTerms(step, module, content),
    );
  });
  return [{ address, title: module.title, heading: "", terms: [...new Set(terms)] }, ...sections];
}

function documentsOfSheet(sheet: Sheet): SearchDocument[] {
  const address: Address = { kind: sheet.kind, id: sheet.id };
  const sections = headed(sheet.sections).map((section) =>
    sectionDocument(address, sheet.title, section, []),
  );
  return [{ address, title: sheet.title, heading: "", terms: [] }, ...sections];
}

const headed = (sections: readonly Section[]): Section[] => sections.filter(({ level }) => level > 0);

function sectionDocument(
  page: Address,
  title: string,
  section: Section,
  terms: readonly string[],
): SearchDocument {
  return { address: { ...page, at: anchorOf(section) }, title, heading: section.title, terms };
}

function stepTerms(step: ModuleStep, module: Module, content: Content): string[] {
  const names = step.acts.flatMap(({ target }) => itemNames(target, module));
  return [...new Set([...names, ...namesOf(step.tools, step.substances, step.hazards, content)])];
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

/** The name of a part, or the name and thread of a fastener set. */
function itemNames(id: string, module: Module): string[] {
  const set = module.procedure.fasteners.get(id);
  return [set?.name, set?.thread, module.procedure.parts.get(id)?.name].filter((name) => name !== undefined);
}
