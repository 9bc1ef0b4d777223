/** What a statement is about, by its address and as an Achievement of Open Badges 3.0. */
import { publicKeyOfDid } from "./did-key.ts";
import type { JsonObject } from "./json.ts";
import type { Statement } from "./sign-off.ts";
import { resultDescriptions } from "./statement-results.ts";

/** The programme in whose name a mentor signs. */
export interface Programme {
  /** An https address or a tag, for ever. */
  readonly identifier: string;
  readonly name: string;
}

export type Subject =
  | { readonly kind: "sign-off" | "observation"; readonly module: string; readonly revision: number }
  | { readonly kind: "new-key"; readonly oldKey: string };

/** For instance `https://club.example/modules/let-down/revisions/3/observation`. */
export function achievementId(about: Subject, identifier: string): string {
  if (about.kind === "new-key") return `${identifier}/keys/${about.oldKey}`;
  const tail = about.kind === "observation" ? "/observation" : "";
  return `${identifier}/modules/${about.module}/revisions/${about.revision}${tail}`;
}

/** Undefined of an address that `achievementId` does not give for this programme. */
export function readAchievementId(id: string, identifier: string): Subject | undefined {
  if (!id.startsWith(`${identifier}/`)) return undefined;
  const path = id.slice(identifier.length + 1);
  const oldKey = /^keys\/(.+)$/.exec(path)?.[1];
  if (oldKey !== undefined) return publicKeyOfDid(oldKey) && { kind: "new-key", oldKey };
  const [, module, revision, tail] =
    /^modules\/([a-z][a-z0-9-]*)\/revisions\/([1-9]\d{0,8})(\/observation)?$/.exec(path) ?? [];
  if (module === undefined) return undefined;
  return { kind: tail === undefined ? "sign-off" : "observation", module, revision: Number(revision) };
}

export function achievementOf(statement: Statement, { identifier, name }: Programme): JsonObject {
  const id = achievementId(statement, identifier);
  const { achievementType, title, description, criteria } = wordsOf(statement, name);
  const results = resultDescriptions(statement, id);
  return {
    id,
    type: ["Achievement"],
    ...(achievementType === undefined ? {} : { achievementType }),
    creator: { id: identifier, type: ["Profile"], name },
    name: title,
    description,
    criteria: { narrative: criteria },
    ...(statement.kind === "new-key" ? {} : { version: String(statement.revision) }),
    ...(results.length === 0 ? {} : { resultDescription: results }),
  };
}

interface Words {
  readonly achievementType: string | undefined;
  readonly title: string;
  readonly description: string;
  readonly criteria: string;
}

/** For people only: whoever reads a credential back takes nothing from these words but the title. */
function wordsOf(statement: Statement, programme: string): Words {
  switch (statement.kind) {
    case "sign-off":
      return {
        achievementType: "Competency",
        title: statement.title,
        description: `Signed off for the work of this module, at revision ${statement.revision} and the level that is given.`,
        criteria: `What ${programme} asks for before a sign-off on this module, at this revision.`,
      };
    case "observation":
      return {
        achievementType: "Assessment",
        title: statement.title,
        description: `Watched at the bench doing the work of this module, at revision ${statement.revision}.`,
        criteria: `A mentor of ${programme} watched the work and says how it went.`,
      };
    case "new-key":
      return {
        achievementType: undefined,
        title: "New key",
        description: "The record goes on under this key.",
        criteria: `A mentor of ${programme} knows that whoever holds this key is who held the old one.`,
      };
  }
}
