/** What a trainee did by themself, marked again before the reader's eyes. */

import { dayOf } from "../../engine/competency/calendar.ts";
import type { RecordEvent } from "../../engine/competency/event.ts";
import type { Rescored, Verdict } from "../../engine/competency/evidence.ts";
import { readInstant } from "../../engine/competency/instant.ts";
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import { counted } from "../page/words.ts";
import type { Naming } from "../record/next-words.ts";
import type { Overview } from "../record/overview.ts";
import { type Row, table } from "./table.ts";

/** Of one module, or of all. Undefined where there is nothing. */
export function evidenceView(overview: Overview, naming: Naming, module?: string): HTMLElement | undefined {
  const rows = overview.assessed.events.flatMap((event) => {
    const isHere = module === undefined || !("module" in event) || event.module === module;
    return isHere && isOwn(event) && isAsked(event, naming, module) ? [row(event, overview, naming)] : [];
  });
  if (rows.length === 0) return undefined;
  return table("evidence", [t`What was done`, t`When`, t`Marked again`, t`Adds up`], rows);
}

type OwnEvent = Extract<RecordEvent, { kind: "read" | "hazard" | "quiz" | "practice" | "run" }>;

const own: ReadonlySet<string> = new Set(["read", "hazard", "quiz", "practice", "run"]);
const isOwn = (event: RecordEvent): event is OwnEvent => own.has(event.kind);

/** Of a hazard, whether the module has it. */
function isAsked(event: OwnEvent, { cards }: Naming, module: string | undefined): boolean {
  if (event.kind !== "hazard" || module === undefined) return true;
  return cards.get(module)?.hazards.some(({ id }) => id === event.hazard) === true;
}

function row(event: OwnEvent, { assessed, situation }: Overview, naming: Naming): Row {
  const marked = assessed.rescored.get(event.id);
  const day = naming.day(dayOf(readInstant(event.at)!, situation.rules.timeZone));
  const problem = marked?.ok === false ? marked.problem : undefined;
  const why = problem && element("small", {}, element("code", {}, problem.code), `: ${problem.message}`);
  return {
    head: nameOf(event, naming),
    cells: [[day], [comesTo(marked)], [problem === undefined ? sumWord(marked) : t`no`, why]],
    isFaulty: problem !== undefined,
  };
}

const sumWord = (marked: Rescored | undefined): string =>
  marked === undefined ? t`nothing to mark` : t`yes`;

function nameOf(event: OwnEvent, { cards }: Naming): (string | Node)[] {
  if (event.kind === "hazard") return [t`Hazard read: ${hazardTitle(event.hazard, cards)}`];
  const title = cards.get(event.module)?.title ?? event.module;
  return [
    `${doings[event.kind](event as never)}: ${title}`,
    element("small", {}, t`revision ${event.revision}`),
  ];
}

function hazardTitle(hazard: string, cards: Naming["cards"]): string {
  const all = [...cards.values()].flatMap(({ hazards }) => hazards);
  return all.find(({ id }) => id === hazard)?.title ?? hazard;
}

type OfModule = Exclude<OwnEvent, { kind: "hazard" }>;
const doings: { readonly [Kind in OfModule["kind"]]: (event: Extract<OfModule, { kind: Kind }>) => string } =
  {
    read: () => t`Sheet read`,
    quiz: ({ attempt }) => t`Quiz, sitting ${attempt}`,
    practice: ({ practice }) => t`Practice “${practice}”`,
    run: () => t`Done on paper`,
  };

/** The verdict of whoever reads, not the page's that wrote it. */
function comesTo(marked: Rescored | undefined): string {
  if (marked === undefined) return t`their own word`;
  return marked.ok ? verdictWords(marked.verdict) : t`does not count`;
}

export function verdictWords(verdict: Verdict): string {
  switch (verdict.kind) {
    case "quiz":
      return t`${rounded(verdict.score)} of ${rounded(verdict.max)} points, ${verdict.passed ? t`passed` : t`not passed`}`;
    case "handed in":
      return t`handed in, to be marked with the whole quiz`;
    case "practice":
      return verdict.right ? t`right` : t`not right`;
    case "run":
      return `${verdict.done ? t`finished` : t`not finished`}, ${counted(verdict.stops, "critical stop")}`;
  }
}

const rounded = (points: number): number => Math.round(points * 100) / 100;
