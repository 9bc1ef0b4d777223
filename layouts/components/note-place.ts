/** The place for the button by which a trainee notes that a sheet was read. Without the script, and on paper, there is nothing. */
import { type Address, linkTo, linkToFile } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { attribute, type Html, html } from "../html.ts";

export interface Noted {
  readonly kind: "read" | "hazard";
  readonly id: string;
  /** Of a module. */
  readonly revision?: number;
}

/** Undefined where the programme keeps no records. */
export function notePlace({ kind, id, revision }: Noted, book: Book, from: Address): Html | undefined {
  const { identifier } = book.site.programme;
  const recorder = book.assets.scripts.get("recorder");
  if (identifier === undefined || recorder === undefined) return undefined;
  const record = linkTo(from, { kind: "plain", id: "record" });
  return html`<div class="note-place on-screen" data-note="${kind}" data-programme="${identifier}" data-of="${id}"${attribute("data-revision", revision)} data-recorder="${linkToFile(from, recorder)}" data-record="${record}"></div>
`;
}

/** The script of pages that have such a place. */
export const noteScripts = ({ site }: Book): string[] =>
  site.programme.identifier === undefined ? [] : ["read"];
