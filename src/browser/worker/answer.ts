/** Answers for the site: from the edition that the asking page began with, otherwise from the network. */
import { awayPage, type EditionFile } from "../../model/edition.ts";
import { keepFiles } from "../offline/keep-files.ts";
import { addressIn, readNote } from "../offline/shelf.ts";
import type { Editions, OpenEdition } from "./editions.ts";
import { moduleOf, pathIn } from "./path.ts";
import { sizeKept } from "./picture-size.ts";
import type { AskedEvent, WorkerScope } from "./scope.ts";

export interface Answering {
  readonly scope: WorkerScope;
  readonly editions: Editions;
  readonly version: string;
}

/** Never rejects: where nothing can be had, a page says so and anything else is a network error. */
export async function answer(event: AskedEvent, answering: Answering): Promise<Response> {
  const { scope, editions } = answering;
  const root = scope.registration.scope;
  const edition = await editions.at(await versionFor(event, answering));
  const path = pathIn(root, event.request.url);
  if (edition === undefined || path === undefined) return fromNetwork(event, root);
  const file = edition.files.get(path);
  if (file === undefined) {
    if (isFolder(edition, path)) return withSlash(event);
    const otherSize = sizeKept(path, edition.files);
    if (otherSize === undefined) return fromNetwork(event, root);
    return fromNetwork(event, root, () => edition.cache.match(addressIn(root, otherSize)));
  }
  const kept = await edition.cache.match(addressIn(root, path));
  if (kept !== undefined) return kept;
  if (edition.version === answering.version) event.waitUntil(keepModule(file, edition, scope));
  return fromNetwork(event, root);
}

/** A page that is only coming begins with the current edition. */
async function versionFor(event: AskedEvent, { scope, version }: Answering): Promise<string> {
  if (event.request.mode === "navigate") return version;
  const begun = await readNote(scope.caches, scope.registration.scope, "begun");
  return begun?.[event.clientId] ?? version;
}

const isFolder = ({ files }: OpenEdition, path: string): boolean => files.has(`${path}/index.html`);

/** Links of a page are relative to its folder. */
function withSlash({ request }: AskedEvent): Response {
  const address = new URL(request.url);
  address.pathname += "/";
  return Response.redirect(address.href);
}

async function fromNetwork(
  { request }: AskedEvent,
  root: string,
  otherwise: () => Promise<Response | undefined> = async () => undefined,
): Promise<Response> {
  try {
    return await fetch(request);
  } catch {
    const instead = await otherwise();
    if (instead !== undefined) return instead;
    return request.mode === "navigate" ? Response.redirect(addressIn(root, awayPage)) : Response.error();
  }
}

/** Of a large edition a module is kept, with all that belongs to it, when something of it is first asked for. */
async function keepModule(
  [path]: EditionFile,
  edition: OpenEdition,
  { caches, registration }: WorkerScope,
): Promise<void> {
  const module = moduleOf(path);
  const files = [...edition.files.values()].filter(([other]) =>
    module === undefined ? other === path : moduleOf(other) === module,
  );
  const keeping = { caches, root: registration.scope, version: edition.version, told: () => {} };
  // What does not come now is asked for the next time.
  await keepFiles(files, keeping).catch(() => {});
}
