/** Nothing lies in itself, replaces itself, covers itself or needs itself, whether directly or round a corner. */
import type { Content } from "../../model/content.ts";
import { modulePath } from "../../model/link.ts";
import type { Module } from "../../model/module.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { inFile, type Rule } from "./rule.ts";

export const loops: Rule = {
  name: "loops",
  check(content, reporter) {
    for (const module of content.modules.values()) checkParts(module, content, reporter);
    const needs = (id: string): readonly string[] => content.outlines.get(modulePath(id))?.needs ?? [];
    const before = (id: string): readonly string[] =>
      [content.outlines.get(modulePath(id))?.handover?.beginsFrom].filter((one) => one !== undefined);
    for (const { id, path } of content.modules.values()) {
      reportLoop(id, needs, "needs", () => inFile(content, { path }, ["needs"]), reporter);
      reportLoop(id, before, "begins-from", () => inFile(content, { path }, ["begins-from"]), reporter);
    }
  },
};

function checkParts(module: Module, content: Content, reporter: Reporter): void {
  const { parts } = module.procedure;
  for (const part of parts.values()) {
    for (const field of ["in", "replaces"] as const) {
      const next = (id: string): string[] => [parts.get(id)?.[field]].filter((to) => to !== undefined);
      reportLoop(part.id, next, field, () => inFile(content, module, ["parts", part.id, field]), reporter);
    }
    for (const [index, covered] of part.covers.entries()) {
      const isOwn = part.heldBy.has(covered);
      if (covered !== part.id && !isOwn) continue;
      reporter.report(
        "self-reference",
        inFile(content, module, ["parts", part.id, "covers", index]),
        isOwn
          ? `"${part.id}" covers "${covered}", which hold it and so can be reached`
          : `"${part.id}" covers itself`,
      );
    }
  }
}

/** A loop is reported once, at the least of its ids. */
function reportLoop(
  start: string,
  next: (id: string) => readonly string[],
  field: string,
  spot: () => Spot,
  reporter: Reporter,
): void {
  const loop = findLoop(start, next);
  if (loop === undefined || loop.some((id) => id < start)) return;
  reporter.report("loop", spot(), `${field}: goes round in a circle: ${[...loop, start].join(" → ")}`);
}

/** The shortest way from `start` back to itself, by breadth-first search. */
function findLoop(start: string, next: (id: string) => readonly string[]): string[] | undefined {
  const from = new Map<string, string>();
  const waiting = [start];
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    for (const to of next(at)) {
      if (to === start) return wayTo(at, start, from);
      if (!from.has(to)) {
        from.set(to, at);
        waiting.push(to);
      }
    }
  }
  return undefined;
}

function wayTo(end: string, start: string, from: ReadonlyMap<string, string>): string[] {
  const way = [end];
  while (way[0] !== start) way.unshift(from.get(way[0]!)!);
  return way;
}
