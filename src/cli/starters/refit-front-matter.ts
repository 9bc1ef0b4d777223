/** The front matter of a reassembly: what it handles, as the module that took it apart has it. */
import type { RefitStep } from "../../engine/procedure/reassembly.ts";
import type { Tray } from "../../engine/procedure/tray.ts";
import type { Content } from "../../model/content.ts";
import type { Module, ModuleStep } from "../../model/module.ts";

type Fields = Readonly<Record<string, unknown>>;

export function frontMatter(
  id: string,
  module: Module,
  steps: readonly RefitStep[],
  content: Content,
  end: Tray,
): Fields {
  const data = content.sources.get(module.path)!.data.value as Fields;
  const undone = module.procedure.steps.filter((step) => steps.some(({ undoes }) => undoes === step.id));
  const things = new Set(
    steps.flatMap(({ refit, tighten }) => [...refit, ...tighten].map(({ target }) => target)),
  );
  const parts = partsAround(things, undone, module);
  const kept = new Set([...things, ...parts]);
  return withoutEmpty({
    title: `Put back what comes off in: ${module.title}`,
    summary: `Refits, tightens and sets what “${module.title}” takes off.`,
    revision: 1,
    needs: module.needs,
    "begins-from": module.id,
    tools: union(undone, "tools"),
    hazards: [...new Set([...module.hazards, ...union(undone, "hazards")])],
    conditions: [...new Set([...module.conditions, ...union(undone, "conditions")])],
    wear: module.wear,
    "never-wear": module.neverWear,
    parts: chosen(data.parts, parts, (part) => trimmedPart(part, kept)),
    fasteners: chosen(data.fasteners, things, ({ stays: _, ...set }) => set),
    state: statesOf(data.state, steps, undone, module, parts),
    draft: [
      ...handingOn(id, module, things, end),
      "what this module is about, its checks as found and as left",
    ],
  });
}

const union = (steps: readonly ModuleStep[], field: "tools" | "hazards" | "conditions"): string[] => [
  ...new Set(steps.flatMap((step) => step[field])),
];

const withoutEmpty = (fields: Fields): Fields =>
  Object.fromEntries(
    Object.entries(fields).filter(
      ([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0),
    ),
  );

/** The parts that go back, those that they lie in, and those worked through. */
function partsAround(
  things: ReadonlySet<string>,
  undone: readonly ModuleStep[],
  { procedure: { parts } }: Module,
): Set<string> {
  const around = new Set(
    [...things, ...undone.flatMap(({ through }) => through)].filter((id) => parts.has(id)),
  );
  for (const id of around) {
    const whole = parts.get(id)?.in;
    if (whole !== undefined) around.add(whole);
  }
  return around;
}

/** Those entries of a table whose ids are wanted, in its order; undefined where there are none. */
function chosen(
  table: unknown,
  ids: ReadonlySet<string>,
  make: (entry: Fields) => Fields,
): Fields | undefined {
  const entries = Object.entries((table ?? {}) as Readonly<Record<string, Fields>>).filter(([id]) =>
    ids.has(id),
  );
  return entries.length === 0
    ? undefined
    : Object.fromEntries(entries.map(([id, entry]) => [id, make(entry)]));
}

/** A part without what its other module alone knows. */
function trimmedPart(part: Fields, kept: ReadonlySet<string>): Fields {
  const { "held-by": heldBy, covers, replaces, ...others } = part;
  const isKept = (id: unknown): boolean => typeof id === "string" && kept.has(id);
  const holds = Array.isArray(heldBy)
    ? heldBy.filter(isKept)
    : Object.fromEntries(Object.entries((heldBy ?? {}) as Fields).filter(([id]) => isKept(id)));
  return withoutEmpty({
    ...others,
    "held-by": Object.keys(holds).length === 0 ? undefined : holds,
    covers: Array.isArray(covers) ? covers.filter(isKept) : undefined,
    replaces: isKept(replaces) ? replaces : undefined,
  });
}

/** The states that matter here, from what the other module leaves them at to what the draft brings them to. */
function statesOf(
  table: unknown,
  steps: readonly RefitStep[],
  undone: readonly ModuleStep[],
  { procedure }: Module,
  parts: ReadonlySet<string>,
): Fields | undefined {
  const needed = [...parts].flatMap((part) => [...(procedure.parts.get(part)?.onlyWhile.keys() ?? [])]);
  const ids = new Set([...needed, ...undone.flatMap((step) => [...step.while.keys()])]);
  const made = new Map(steps.flatMap(({ makes }) => [...makes]));
  const entries = Object.entries(chosen(table, ids, (state) => state) ?? {}).map(([id, state]) => {
    const starts = procedure.states.get(id)!.ends;
    return [id, { ...(state as Fields), starts, ends: made.get(id) ?? starts }] as const;
  });
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
}

/** What the other module has to say under leaves:, where it does not say so yet; `end` is its closing tray. */
function handingOn(
  id: string,
  { id: from, procedure }: Module,
  things: ReadonlySet<string>,
  end: Tray,
): string[] {
  const whole = `{to: ${id}}`;
  const missing = [...things].flatMap((thing) => {
    const left = procedure.leaves.get(thing);
    const { tight = 0, slack = 0, out = 1 } = end.sets.get(thing) ?? {};
    if (tight + slack === 0) return left?.to === id ? [] : [`${thing}: ${whole}`];
    if (left?.out === out && left.slack === slack) return [];
    return [`${thing}: {out: ${out}, slack: ${slack}}`];
  });
  return missing.length === 0 ? [] : [`handing on: leaves: of "${from}" has to say {${missing.join(", ")}}`];
}
