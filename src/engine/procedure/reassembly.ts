/** Putting back what a procedure has left off and slack: its removals the other way round. */
import type { Procedure, Step } from "./procedure.ts";
import { type Relations, relationsOf } from "./relations.ts";
import { startingTray, type Tray } from "./tray.ts";

/** Something with how many of it; undefined means all to which the act applies. */
export interface Some {
  readonly target: string;
  readonly count: number | undefined;
}

export interface RefitStep {
  /** The step that it undoes, or for whose parts it brings a state about. */
  readonly undoes: string;
  readonly refit: readonly Some[];
  readonly tighten: readonly Some[];
  /** States that it brings about; such a step refits and tightens nothing. */
  readonly makes: ReadonlyMap<string, string>;
}

/**
 * The steps that refit and tighten what is off and slack at the end, the last removed first. What was removed and refitted
 * meanwhile counts for nothing, and so does what is discarded or has given its place to a part that is on. What was put back
 * on the way stays there, and may be in the way of the rest, such as screws kept in their holes: the draft does not take it
 * off again, and the walk tells its author. Each undoes the acts of one step in reverse; where a part that goes back would cover what is
 * still to be tightened, the step is cut in two. A state that was needed for the removal and holds no more is brought about
 * first. `trays` are those of the steps as written, which must walk without faults but those at the end.
 * O(steps · (parts + sets) + acts · covers).
 */
export function reassembly(procedure: Procedure, trays: readonly Tray[]): RefitStep[] {
  const relations = relationsOf(procedure);
  const lasting = lastingTrays([startingTray(procedure), ...trays], goneFor(procedure, trays.at(-1)));
  const values = new Map(trays.at(-1)?.states);
  return procedure.steps
    .map((step, index) => ({ step, before: lasting[index]!, after: lasting[index + 1]! }))
    .reverse()
    .flatMap(({ step, before, after }): RefitStep[] => {
      const undone = undo(step, before, after, relations);
      if (undone.length === 0) return [];
      return [...statesFor(step, undone, values, relations), ...undone];
    });
}

/** Of a tray, what stays so until the end: parts that stay off, how many of a set stay out, and stay out or slack. */
interface Lasting {
  readonly parts: ReadonlySet<string>;
  readonly out: ReadonlyMap<string, number>;
  readonly loose: ReadonlyMap<string, number>;
}

/** What never goes back. */
function goneFor({ parts, leaves }: Procedure, end: Tray | undefined): Set<string> {
  const fitted = [...parts.values()].filter(({ id }) => end !== undefined && !end.parts.has(id));
  const discarded = [...leaves].filter(([, { fate }]) => fate === "discarded").map(([id]) => id);
  return new Set([...discarded, ...fitted.flatMap(({ replaces }) => replaces ?? [])]);
}

function lastingTrays(trays: readonly Tray[], gone: ReadonlySet<string>): Lasting[] {
  const lasting: Lasting[] = [];
  for (const tray of trays.toReversed()) {
    const next = lasting.at(-1);
    const least = (of: "out" | "loose", now: (set: string) => number): Map<string, number> =>
      new Map(
        [...tray.sets.keys()].map((set) => {
          const last = gone.has(set) ? 0 : (next?.[of].get(set) ?? Infinity);
          return [set, Math.min(now(set), last)];
        }),
      );
    lasting.push({
      parts: new Set([...tray.parts].filter((part) => !gone.has(part) && (next?.parts.has(part) ?? true))),
      out: least("out", (set) => tray.sets.get(set)!.out),
      loose: least("loose", (set) => tray.sets.get(set)!.out + tray.sets.get(set)!.slack),
    });
  }
  return lasting.reverse();
}

function undo(step: Step, before: Lasting, after: Lasting, relations: Relations): RefitStep[] {
  const targets = [...new Set(step.acts.toReversed().map(({ target }) => target))];
  const pieces: { refit: Some[]; tighten: Some[] }[] = [{ refit: [], tighten: [] }];
  for (const target of targets) {
    const covers = (set: string): boolean => relations.coversOf(set).includes(target);
    if (pieces.at(-1)!.tighten.some((one) => covers(one.target))) pieces.push({ refit: [], tighten: [] });
    const piece = pieces.at(-1)!;
    if (relations.part(target) !== undefined) {
      if (after.parts.has(target) && !before.parts.has(target))
        piece.refit.push({ target, count: undefined });
      continue;
    }
    const [outBefore, looseBefore] = [before.out.get(target) ?? 0, before.loose.get(target) ?? 0];
    const out = (after.out.get(target) ?? 0) - outBefore;
    const loose = (after.loose.get(target) ?? 0) - looseBefore;
    if (out > 0) piece.refit.push({ target, count: outBefore === 0 ? undefined : out });
    if (loose > 0) piece.tighten.push({ target, count: looseBefore === outBefore ? undefined : loose });
  }
  return pieces
    .filter(({ refit, tighten }) => refit.length + tighten.length > 0)
    .map((piece) => ({ ...piece, undoes: step.id, makes: new Map() }));
}

/** A step that brings about what the removal needed, where that does not hold; `values` are those that do, and are brought on. */
function statesFor(
  step: Step,
  undone: readonly RefitStep[],
  values: Map<string, string>,
  relations: Relations,
): RefitStep[] {
  const moved = undone.flatMap(({ refit }) => refit.map(({ target }) => relations.part(target)));
  const needed = new Map([...step.while, ...moved.flatMap((part) => [...(part?.onlyWhile ?? [])])]);
  const makes = new Map([...needed].filter(([state, value]) => values.get(state) !== value));
  for (const [state, value] of makes) values.set(state, value);
  return makes.size === 0 ? [] : [{ undoes: step.id, refit: [], tighten: [], makes }];
}
