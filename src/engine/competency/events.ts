/** Events made and read. */
import { t } from "../words.ts";
import type { EventKind, NewEvent, RecordEvent } from "./event.ts";
import { eventFields } from "./event-fields.ts";
import { eventId, withId } from "./event-id.ts";
import { at, isObject } from "./fields.ts";
import type { Json, JsonObject } from "./json.ts";
import type { Primitives } from "./primitives.ts";
import { problem } from "./problem.ts";
import type { RecordProblem } from "./problems.ts";
import { quoted } from "./quoted.ts";
import type { Digest } from "./release.ts";

export { paperSeed } from "./event-id.ts";

type Hash = Pick<Primitives, "sha256">;

export type ReadEventResult =
  | { readonly ok: true; readonly event: RecordEvent }
  | { readonly ok: false; readonly problem: RecordProblem };

/** Gives an event its id. Throws a RangeError where it is not what `readEvent` would read back. O(size). */
export function makeEvent(event: NewEvent, primitives: Hash): RecordEvent {
  const read = readEvent(withId(event, primitives) as unknown as Json, primitives);
  if (!read.ok) throw new RangeError(read.problem.message);
  return read.event;
}

/** Reads an event of a file that nobody vouches for; what it holds is not judged yet. O(size). */
export function readEvent(json: Json, primitives: Hash): ReadEventResult {
  const fault = shapeFault(json);
  if (fault !== undefined) return { ok: false, problem: fault };
  const event = json as unknown as RecordEvent;
  const id = eventId(event, primitives);
  if (id === event.id) return { ok: true, event };
  return { ok: false, problem: problem("event-id", altered(event, id)) };
}

const altered = (event: RecordEvent, id: Digest): string =>
  t`The id of this event (${event.kind}, ${event.at}) is ${event.id}, but its content gives ${id}: it was changed after it was written. It does not count. Take the file again from the trainee, unaltered.`;

function shapeFault(json: Json): RecordProblem | undefined {
  if (!isObject(json)) return schema(t`An event is ${quoted(json)}; expected an object with a kind.`);
  const kind = at(json, "kind");
  if (typeof kind !== "string" || !Object.hasOwn(eventFields, kind))
    return schema(t`The kind of an event is ${quoted(kind)}; expected ${kinds}.`);
  return fieldFault(json, kind as EventKind);
}

const kinds = t`one of ${Object.keys(eventFields).join(", ")}`;

function fieldFault(json: JsonObject, kind: EventKind): RecordProblem | undefined {
  const fields = eventFields[kind];
  const stranger = Object.keys(json).find((name) => !Object.hasOwn(fields, name));
  if (stranger !== undefined)
    return schema(t`A ${kind} event has a field ${quoted(stranger)}, which it should not have.`);
  for (const [name, field] of Object.entries(fields)) {
    const value = at(json, name);
    if (!field.accepts(value))
      return schema(t`"${name}" of a ${kind} event is ${quoted(value)}; expected ${field.expected}.`);
  }
  return undefined;
}

const schema = (words: string): RecordProblem =>
  problem("schema", t`${words} It does not count. Take the file again from the page that wrote it.`);
