/** A plan as text for people. */
import { counted, duration } from "../../layouts/words.ts";
import type { Plan } from "../engine/procedure/sessions/plan.ts";
import type { Session, TooLong } from "../engine/procedure/sessions/plan-sessions.ts";
import type { TimedStep } from "../engine/procedure/sessions/timed-step.ts";

export type NamedStep = TimedStep & { readonly title?: string };

/** `steps` are those of the plan in the written order, `length` that of a session in minutes. */
export function planWords(plan: Plan, steps: readonly NamedStep[], length: number): string {
  if (steps.length === 0) return "There are no steps to plan.\n";
  const { handsOn, waits, criticalPath, split } = plan;
  const { sessions, tooLong } = split;
  const count =
    sessions === null ? "" : `, in ${counted(sessions.length, "session")} of at most ${duration(length)}`;
  return [
    ...(sessions === null ? tooLongWords(tooLong, length) : sessionsWords(sessions, steps)),
    `${duration(handsOn)} of work and ${duration(waits)} of waiting${count}.`,
    `Critical path, as with any number of hands: ${duration(criticalPath.minutes)}.`,
    ...wrapped(criticalPath.steps),
    "",
  ].join("\n");
}

function tooLongWords({ from, to, minutes }: TooLong, length: number): string[] {
  const stretch = from === to ? `"${from}" takes` : `the steps from "${from}" to "${to}" take`;
  const mend = from === to ? "cut it in two" : "find a safe place among them and mark it with stop";
  return [
    `No split into sessions of ${duration(length)}: ${stretch} ${duration(minutes)} in one go.`,
    `Either ${mend}, or take a longer session.`,
    "",
  ];
}

function sessionsWords(sessions: readonly Session[], steps: readonly NamedStep[]): string[] {
  const lines = stepLines(steps);
  let done = 0;
  return sessions.flatMap(({ steps: { length }, minutes, gapAtLeast }, index) => {
    const shown = lines.slice(done, done + length);
    done += length;
    const gap = gapAtLeast === undefined ? [] : [`At least ${duration(gapAtLeast)} until the next session.`];
    return [`Session ${index + 1}: ${duration(minutes)}`, ...shown, ...gap, ""];
  });
}

/** A line a step: number, id, time and title in columns, and the wait after it. */
function stepLines(steps: readonly NamedStep[]): string[] {
  const rows = steps.map(({ id, time, wait, title = "" }, index) => ({
    cells: [String(index + 1), id, duration(time)] as const,
    rest: [title, wait > 0 ? `(then wait ${duration(wait)})` : ""].filter((text) => text !== "").join(" "),
  }));
  const width = (cell: 0 | 1 | 2): number => Math.max(...rows.map(({ cells }) => cells[cell].length));
  const [numbers, ids, times] = [width(0), width(1), width(2)];
  return rows.map(({ cells: [number, id, time], rest }) =>
    `  ${number.padStart(numbers)}  ${id.padEnd(ids)}  ${time.padStart(times)}  ${rest}`.trimEnd(),
  );
}

/** Ids along a path, in lines of about 100 signs. */
function wrapped(ids: readonly string[]): string[] {
  const lines: string[] = [];
  for (const [index, id] of ids.entries()) {
    const word = index < ids.length - 1 ? `${id} →` : id;
    const line = lines.at(-1);
    if (line !== undefined && line.length + word.length < 100) lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(`  ${word}`);
  }
  return lines;
}
