/** What a statement rests on, as the evidence of a credential: told apart by `genre`, since a list has no names. */
import { at, isList, textAt } from "./fields.ts";
import type { Json, JsonObject } from "./json.ts";
import type { Digest } from "./release.ts";
import type { Statement } from "./sign-off.ts";

type Genre = "content" | "event" | "words" | "phases" | "steps";

interface Entry {
  readonly name: string;
  readonly narrative?: string;
  readonly digestMultibase?: Digest;
}

/** Which entries a statement has of each genre, in this order. */
const rows: readonly { readonly genre: Genre; of(statement: Statement): readonly Entry[] }[] = [
  {
    genre: "content",
    of: (statement) =>
      statement.kind === "new-key"
        ? []
        : [{ name: "What the module said", digestMultibase: statement.content }],
  },
  {
    genre: "event",
    of: (statement) =>
      statement.kind === "sign-off"
        ? statement.evidence.map(({ name, digest }) => ({ name, digestMultibase: digest }))
        : [],
  },
  {
    genre: "words",
    of: (statement) =>
      statement.kind === "new-key" ? [] : entryOf("In the mentor's words", statement.words),
  },
  {
    genre: "phases",
    of: (statement) =>
      statement.kind === "observation" ? entryOf("Phases watched", statement.phases.join(", ")) : [],
  },
  {
    genre: "steps",
    of: (statement) =>
      statement.kind === "observation" ? entryOf("Steps ticked", statement.ticked.join(", ")) : [],
  },
];

const entryOf = (name: string, narrative: string): readonly Entry[] =>
  narrative === "" ? [] : [{ name, narrative }];

export const evidenceOf = (statement: Statement): readonly JsonObject[] =>
  rows.flatMap(({ genre, of }) =>
    of(statement).map((entry) => ({ type: ["Evidence"], genre, ...entry }) satisfies JsonObject),
  );

/** The digest of the module's content; empty where there is none. */
export const contentIn = (credential: Json): Digest =>
  textAt(entriesIn(credential, "content")[0], "digestMultibase") ?? "";

export const eventsIn = (credential: Json): readonly { readonly name: string; readonly digest: Digest }[] =>
  entriesIn(credential, "event").map((entry) => ({
    name: textAt(entry, "name") ?? "",
    digest: textAt(entry, "digestMultibase") ?? "",
  }));

/** What is told of the genre; empty where nothing is. */
export const narrativeIn = (credential: Json, genre: "words"): string =>
  textAt(entriesIn(credential, genre)[0], "narrative") ?? "";

/** Ids, as they are written there. */
export function idsIn(credential: Json, genre: "phases" | "steps"): readonly string[] {
  const text = textAt(entriesIn(credential, genre)[0], "narrative");
  return text === undefined ? [] : text.split(", ");
}

function entriesIn(credential: Json, genre: Genre): readonly Json[] {
  const evidence = at(credential, "evidence");
  return isList(evidence) ? evidence.filter((entry) => textAt(entry, "genre") === genre) : [];
}
