/** The times of a graph file: `"times": {"a": {"time": "5 min", "wait": "2 h", "stop": true}}`. */
import type { Precedence } from "../engine/procedure/precedence.ts";
import type { TimedStep } from "../engine/procedure/sessions/timed-step.ts";
import { parseQuantity } from "../engine/workshop/quantity.ts";
import { nearestWords } from "../validate/nearest.ts";
import { BadInput } from "./command.ts";
import { readJson, soundPrecedence } from "./graph-file.ts";

export interface TimedGraph {
  readonly precedence: Precedence;
  /** In the order listed, which is a right one. */
  readonly steps: readonly TimedStep[];
}

/** Longer than any wait in a workshop, and short enough that 5,000 of them add up exactly. */
const longest = { minutes: 1000 * 24 * 60, words: "1,000 days" };

/** Reads a graph file with the times of its steps. Throws a BadInput that lists what is wrong, up to twenty things. */
export function readTimedGraph(file: string): TimedGraph {
  const value = readJson(file);
  const precedence = soundPrecedence(value, file);
  const faults = wrongOrder(precedence);
  const times = timesFrom((value as { times?: unknown }).times, new Set(precedence.steps), faults);
  if (faults.length > 0)
    throw new BadInput(
      faults
        .slice(0, 20)
        .map((fault) => `${file}: ${fault}`)
        .join("\n"),
    );
  return { precedence, steps: precedence.steps.map((id) => times.get(id) ?? untimed(id)) };
}

const untimed = (id: string): TimedStep => ({ id, time: 0, wait: 0, stop: false });

/** Sessions follow the order listed, so that has to be a right one. */
function wrongOrder({ steps, pairs }: Precedence): string[] {
  const places = new Map(steps.map((step, place) => [step, place]));
  return pairs
    .filter(({ first, then }) => places.get(first)! > places.get(then)!)
    .map(
      ({ first, then }) =>
        `"steps" lists ${quoted(then)} before ${quoted(first)}, which must come first; list them in a right order`,
    );
}

function timesFrom(value: unknown, known: ReadonlySet<string>, faults: string[]): Map<string, TimedStep> {
  if (value === undefined) return new Map();
  if (!isRecord(value)) {
    faults.push(
      '"times" must be an object of steps, as in {"a": {"time": "5 min", "wait": "2 h", "stop": true}}',
    );
    return new Map();
  }
  return new Map(
    Object.entries(value).map(([id, entry]) => {
      if (!known.has(id))
        faults.push(`"times" names ${quoted(id)}, which "steps" does not list${nearestWords(id, known)}`);
      return [id, timedStep(id, entry, faults)];
    }),
  );
}

const readers: ReadonlyMap<string, (value: unknown) => Partial<TimedStep> | string> = new Map([
  ["time", (value: unknown) => readMinutes(value, (time) => ({ time }))],
  ["wait", (value: unknown) => readMinutes(value, (wait) => ({ wait }))],
  ["stop", (value: unknown) => (typeof value === "boolean" ? { stop: value } : "must be true or false")],
]);

function timedStep(id: string, entry: unknown, faults: string[]): TimedStep {
  if (!isRecord(entry)) {
    faults.push(
      `the times of ${quoted(id)} must be an object, as in {"time": "5 min", "wait": "2 h", "stop": true}`,
    );
    return untimed(id);
  }
  const found = Object.entries(entry).map(([field, value]) => {
    const read = readers.get(field)?.(value) ?? `is not known; there are ${[...readers.keys()].join(", ")}`;
    if (typeof read !== "string") return read;
    faults.push(`the times of ${quoted(id)}: ${quoted(field)} ${read}`);
    return {};
  });
  return Object.assign(untimed(id), ...found) as TimedStep;
}

function readMinutes(
  value: unknown,
  as: (minutes: number) => Partial<TimedStep>,
): Partial<TimedStep> | string {
  const read = typeof value === "string" ? parseQuantity(value, "time") : undefined;
  if (read?.ok !== true || read.value.base < 0)
    return `must be a time such as "5 min" or "2 h 30 min", not ${quoted(value)}`;
  const minutes = read.value.base / 60;
  return minutes > longest.minutes ? `is longer than ${longest.words}` : as(minutes);
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function quoted(value: unknown): string {
  const text = JSON.stringify(value);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
