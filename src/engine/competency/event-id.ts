/** What hashing alone gives: ids and seeds. A page that only writes events needs no more. */
import { digestOf, digestOfText } from "./digest.ts";
import type { NewEvent, RecordEvent } from "./event.ts";
import type { JsonObject } from "./json.ts";
import type { Primitives } from "./primitives.ts";
import type { Digest } from "./release.ts";

type Hash = Pick<Primitives, "sha256">;

/** SHA-256 of the canonical JSON of all fields but `id`. */
export function eventId(event: NewEvent | RecordEvent, primitives: Hash): Digest {
  const { id: _, ...content } = event as RecordEvent;
  return digestOf(content as unknown as JsonObject, primitives);
}

/** Gives an event its id. The caller answers for its fields: `makeEvent` looks at them as well. O(size). */
export const withId = (event: NewEvent, primitives: Hash): RecordEvent => ({
  ...event,
  id: eventId(event, primitives),
});

/** The seed of a paper that is not supervised, which nobody can choose: it follows from who sits what for which time. */
export const paperSeed = (owner: string, quiz: Digest, attempt: number, primitives: Hash): string =>
  digestOfText(`${owner} ${quiz} ${attempt}`, primitives);
