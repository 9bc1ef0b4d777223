/** What a page's script needs to write into the record; nothing where the programme keeps none. */
import type { Digest } from "../../src/engine/competency/release.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Recorded } from "../../src/model/page-data.ts";
import type { Programme } from "../../src/model/programme.ts";

/** Undefined where the programme keeps no records. */
export function recordedOn({ identifier }: Programme, from: Address): Recorded | undefined {
  if (identifier === undefined) return undefined;
  return { programme: identifier, href: linkTo(from, { kind: "plain", id: "record" }) };
}

/** The same of a page on which one thing is done, which has this digest. */
export function recordedAs(
  digest: Digest | undefined,
  programme: Programme,
  from: Address,
): (Recorded & { readonly digest: Digest }) | undefined {
  const recorded = recordedOn(programme, from);
  return recorded && digest !== undefined ? { ...recorded, digest } : undefined;
}

/** The scripts of a page on which things are done: the recorder first, where there is one to be. */
export const scriptsOf = ({ identifier }: Programme, script: string): string[] =>
  identifier === undefined ? [script] : ["recorder", script];
