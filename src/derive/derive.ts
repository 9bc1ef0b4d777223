/** Content to site: all that can be worked out about it before any page is made. */
import { type Content, sheetsOf } from "../model/content.ts";
import type { Site } from "../model/site.ts";
import { deriveModule } from "./module.ts";
import { searchDocuments } from "./search.ts";
import { usesOf } from "./uses.ts";

/** Expects content without errors: graphs free of cycles, names that exist. */
export function derive(content: Content): Site {
  const modules = inNeededOrder(content).map((module) => deriveModule(module, content));
  const sheets = sheetsOf(content).map((sheet) => ({ sheet, usedBy: usesOf(sheet, content) }));
  return {
    programme: content.programme,
    modules,
    sheets,
    search: searchDocuments(content),
    pictures: [...content.pictures].sort(),
  };
}

/** Modules after those that they need, otherwise by title. */
function inNeededOrder(content: Content) {
  const waiting = [...content.modules.values()].sort((a, b) =>
    a.title.localeCompare(b.title, content.programme.language),
  );
  const done = new Set<string>();
  const order = [];
  for (let round = waiting; round.length > 0; ) {
    const ready = round.filter(({ needs }) => needs.every((id) => done.has(id) || !content.modules.has(id)));
    const next = ready.length > 0 ? ready : round;
    for (const module of next) done.add(module.id);
    order.push(...next);
    round = round.filter(({ id }) => !done.has(id));
  }
  return order;
}
