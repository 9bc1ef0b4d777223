import type { NeverLeft } from "../../engine/procedure/leaving.ts";
import type { Hold, Left, StateVariable } from "../../engine/procedure/procedure.ts";
import type { Module, ModuleFastener, ModulePart, ModuleProcedure, ModuleStep } from "../../model/module.ts";
import type { ChosenPractice } from "../../model/practice.ts";
import type { Source } from "../../model/source.ts";
import type { HeldByData, LeftData, ModuleData, PracticeData } from "../schema/module.ts";
import { makeFigure } from "./figure.ts";
import { makeSignOff } from "./sign-off.ts";
import { makeProtection } from "./step.ts";

export function makeModule(source: Source, data: ModuleData, steps: readonly ModuleStep[]): Module {
  const { title, summary, revision, issued, needs, tools, hazards, conditions, ends, sources, draft } = data;
  return {
    id: source.id,
    path: source.path,
    ...{ title, summary, revision, issued, needs, tools, hazards, conditions, sources, draft },
    beginsFrom: data["begins-from"],
    writtenBy: data["written-by"],
    approvedBy: data["approved-by"],
    substances: data.substances.map(({ use, amount, place }) => ({ use, amount, place })),
    figure: data.figure && makeFigure(source, data.figure),
    procedure: makeProcedure(data, steps),
    phases: data.phases ?? new Map(),
    practices: data.practices?.map(makePractice),
    asFound: data["as-found"].map(({ check, limit }) => ({ check, limit })),
    asLeft: data["as-left"].map(({ check, limit }) => ({ check, limit })),
    ends: Object.fromEntries(Object.entries(ends).filter(([, text]) => text !== undefined)),
    signOff: makeSignOff(data["sign-off"]),
    ...makeProtection(data),
    sections: source.sections,
  };
}

const makePractice = ({ id, title, phase, steps, ...data }: PracticeData): ChosenPractice => ({
  ...{ id, title, phase, steps },
  mixedIn: data["mixed-in"],
});

function makeProcedure(data: ModuleData, steps: readonly ModuleStep[]): ModuleProcedure {
  const fasteners = new Map([...(data.fasteners ?? [])].map(([id, set]) => [id, makeFastener(id, set)]));
  const parts = new Map([...(data.parts ?? [])].map(([id, part]) => [id, makePart(id, part, fasteners)]));
  const states = new Map([...(data.state ?? [])].map(([id, state]) => [id, makeState(id, state)]));
  const leaves = makeLeaves(data.leaves, fasteners);
  return { parts, fasteners, states, steps, leaves, neverLeft: makeNeverLeft(data) };
}

function makeNeverLeft({ parts, fasteners, state }: ModuleData): NeverLeft {
  return {
    parts: new Set(entries(parts).flatMap(([id, part]) => (part["never-left"] === "off" ? [id] : []))),
    fasteners: new Map(entries(fasteners).map(([id, set]) => [id, set["never-left"] ?? []])),
    states: new Map(entries(state).map(([id, one]) => [id, one["never-left"] ?? []])),
  };
}

const entries = <Value>(map: ReadonlyMap<string, Value> | undefined): [string, Value][] => [...(map ?? [])];

type Entry<Key extends "parts" | "fasteners" | "state"> =
  NonNullable<ModuleData[Key]> extends Map<string, infer Value> ? Value : never;

function makeFastener(id: string, data: Entry<"fasteners">): ModuleFastener {
  const { name, count, kind, thread, length, drive, keep, matched, stays, torque, note } = data;
  return {
    id,
    ...{ name, count, kind, thread, length, drive, keep, matched, stays, torque, note },
    torqueSource: data["torque-source"],
    strengthClass: data.class,
    into: data.into && {
      material: data.into.material,
      engagement: data.into.engagement,
      isSound: data.into.sound,
    },
  };
}

function makePart(
  id: string,
  data: Entry<"parts">,
  fasteners: ReadonlyMap<string, ModuleFastener>,
): ModulePart {
  const { name, count, replaces, keep, note } = data;
  return {
    id,
    ...{ name, count, replaces, keep, note },
    keepDry: data["keep-dry"],
    heldBy: makeHolds(data["held-by"], fasteners),
    covers: data.covers ?? [],
    in: data.in,
    onlyWhile: data["only-while"] ?? new Map(),
  };
}

/** A set that is not listed is reported by a rule; it counts as one screw until then. */
function makeHolds(
  data: HeldByData | undefined,
  fasteners: ReadonlyMap<string, ModuleFastener>,
): Map<string, Hold> {
  const all = (set: string): Hold => ({ out: fasteners.get(set)?.count ?? 1, slack: 0 });
  if (data === undefined) return new Map();
  if (Array.isArray(data)) return new Map(data.map((set) => [set, all(set)]));
  return new Map(Object.entries(data).map(([set, hold]) => [set, hold === "all" ? all(set) : hold]));
}

function makeState(id: string, data: Entry<"state">): StateVariable {
  return { id, name: data.name, values: data.values, starts: data.starts, ends: data.ends ?? data.starts };
}

function makeLeaves(
  data: ModuleData["leaves"],
  fasteners: ReadonlyMap<string, ModuleFastener>,
): Map<string, Left> {
  const entries: [string, LeftData][] = Array.isArray(data)
    ? data.map((id) => [id, "off"])
    : Object.entries(data ?? {});
  return new Map(entries.map(([id, left]) => [id, makeLeft(left, fasteners.get(id)?.count ?? 1)]));
}

function makeLeft(left: LeftData, count: number): Left {
  const whole = { out: count, slack: 0, fate: "left" as const, to: undefined };
  if (left === "slack") return { ...whole, out: 0, slack: count };
  if (left === "discarded") return { ...whole, fate: "discarded" };
  if (left === "off") return whole;
  return "to" in left ? { ...whole, fate: "onward", to: left.to } : { ...whole, ...left };
}
