import type { Act, After } from "../../engine/procedure/procedure.ts";
import { actKinds } from "../../engine/procedure/procedure.ts";
import type { ModuleStep, Protection } from "../../model/module.ts";
import type { Section, Source } from "../../model/source.ts";
import type { StepData, TargetsData } from "../schema/step.ts";
import { makeFigure } from "./figure.ts";

export function makeStep(source: Source, section: Section, data: StepData): ModuleStep {
  return {
    id: data.id,
    title: section.title,
    acts: actKinds.flatMap((kind) =>
      targetsOf(data[kind]).map(([target, count]): Act => ({ kind, target, count })),
    ),
    makes: data.makes ?? new Map(),
    through: data.through ?? [],
    while: data.while ?? new Map(),
    after: new Map([...(data.after ?? [])].map(([id, reason]) => [id, makeAfter(reason)])),
    maySwap: data["may-swap"] ?? new Map(),
    ...{ critical: data.critical, time: data.time ?? 0, wait: data.wait ?? 0 },
    ...{ stop: data.stop, dries: data.dries, hotWork: data["hot-work"] },
    ...{ tools: data.tools ?? [], hazards: data.hazards ?? [] },
    ...makeSubstances(data.substances ?? []),
    conditions: data.conditions ?? [],
    ...{ check: data.check, phase: data.phase, feel: data.feel },
    figure: data.figure === undefined ? undefined : makeFigure(source, data.figure),
    record: data.record ?? [],
    recordFor: data["record-for"],
    mistakes: data.mistakes ?? [],
    ifNot: data["if-not"] ?? [],
    draft: data.draft ?? [],
    ...makeProtection(data),
    section,
  };
}

function makeSubstances(
  taken: NonNullable<StepData["substances"]>,
): Pick<ModuleStep, "substances" | "purposes"> {
  return {
    substances: taken.map((one) => (typeof one === "string" ? one : one.use)),
    purposes: new Map(taken.flatMap((one) => (typeof one === "string" ? [] : [[one.use, one.for]]))),
  };
}

/** Targets with their counts; undefined means all. */
export function targetsOf(data: TargetsData | undefined): [string, number | undefined][] {
  if (data === undefined) return [];
  if (typeof data === "string") return [[data, undefined]];
  if (!Array.isArray(data)) return Object.entries(data);
  return data.flatMap(
    (one) =>
      (typeof one === "string" ? [[one, undefined]] : Object.entries(one)) as [string, number | undefined][],
  );
}

const makeAfter = (reason: string | After): After =>
  typeof reason === "string" ? { because: reason, critical: false } : reason;

export function makeProtection(data: Pick<StepData, "wear" | "never-wear" | "waste">): Protection {
  return { wear: data.wear ?? [], neverWear: data["never-wear"] ?? [], waste: data.waste ?? [] };
}
