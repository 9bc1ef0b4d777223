/** Fetches one file of an edition and makes sure that it is the one. */
import { digestOf } from "./digest.ts";
import type { Trouble } from "./messages.ts";

/** Keeping has come to an end. */
export class NotKept extends Error {
  readonly trouble: Trouble;
  constructor(trouble: Trouble) {
    super(trouble.kind);
    this.trouble = trouble;
  }
}

/** Throws a NotKept where it does not come, or another file than the list names does. Only its type is kept of what the host says of it. */
export async function fetchFile(address: string, path: string, digest: string): Promise<Response> {
  const answer = await fetch(address, { cache: "no-cache" }).catch(() => undefined);
  if (answer?.ok !== true) throw new NotKept({ kind: "not-coming", path });
  const content = await answer.arrayBuffer().catch(() => {
    throw new NotKept({ kind: "not-coming", path });
  });
  if ((await digestOf(content)) !== digest) throw new NotKept({ kind: "differs", path });
  return new Response(content, {
    headers: { "content-type": answer.headers.get("content-type") ?? "application/octet-stream" },
  });
}
