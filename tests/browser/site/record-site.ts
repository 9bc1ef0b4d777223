/** A small programme that keeps records, with two mentors whose keys tests have: built once for a test file. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { gzip } from "node:zlib";
import { afterAll, beforeAll } from "vitest";
import { statusListId } from "../../../src/engine/competency/credential.ts";
import { portable } from "../../../src/engine/competency/libraries.ts";
import type { Release } from "../../../src/engine/competency/release.ts";
import { bitsOf, makeStatusList } from "../../../src/engine/competency/status-list.ts";
import type { ModuleData, ProgrammeData } from "../../../src/model/record-data.ts";
import { identifier, type Person, person } from "../../support/competency.ts";
import { type Files, soundFiles } from "../../support/content-folder.ts";
import { runTool } from "../../support/run-command.ts";
import { type StaticServer, serveFolder } from "../../support/static-server.ts";

export const ada = person("Ada");
/** May sign nothing but a module that there is not. */
export const bert = person("Bert");

/** Its last lines are rows of mentors. */
export const programmeText = `name: Test bench
conditions:
  springs: {name: Springs, look-for: coils, if-unknown: Ask.}
identifier: ${identifier}
time-zone: Europe/London
sign-off: {watched: 0, unaided: 1, months: 24, dry-run: true}
mentors:
  - {id: ada, name: Ada, key: "${ada.did}", may-sign: all, highest-level: may teach, from: 2020-01-01}
  - {id: bert, name: Bert, key: "${bert.did}", may-sign: all, highest-level: under eye, from: 2020-01-01}
`;

async function withdrawals({ did, sign }: Person): Promise<string> {
  const list = await makeStatusList({
    issuer: did,
    id: statusListId(identifier, did),
    bits: bitsOf([]),
    validFrom: "2020-01-01T00:00:00Z",
    validUntil: "2100-01-01T00:00:00Z",
    created: "2020-01-01T00:00:00Z",
    gzip: promisify(gzip),
    sign,
    primitives: portable,
  });
  return JSON.stringify(list);
}

/** On which address the site is opened. */
export type Way = "localhost" | "plain http" | "disk";

export interface RecordSite {
  /** Folder of the built site. */
  readonly dir: string;
  /** Folder of its content. */
  readonly contentDir: string;
  /** Builds it anew with these files in its content, as a coordinator does. */
  rebuild(files: Files): Promise<void>;
  /** With a slash at its end. Plain http is at a name that is not this machine's own. */
  url(way: Way): string;
  programme(): ProgrammeData;
  release(): Release;
}

/** Builds it of the small programme's files before the tests of the file, and takes it away afterwards. The folder is known at once. */
export function withRecordSite(programmeFiles: Files = soundFiles): RecordSite {
  const folder = mkdtempSync(join(tmpdir(), "benchwright-record-"));
  const dir = join(folder, "site");
  const contentDir = join(folder, "content");
  async function rebuild(files: Files): Promise<void> {
    for (const [path, text] of files) {
      mkdirSync(dirname(join(contentDir, path)), { recursive: true });
      writeFileSync(join(contentDir, path), text);
    }
    const built = await runTool(["build", "--content", contentDir, "--to", dir]);
    if (built.code !== 0) throw new Error(`the site can't be built:\n${built.stdout}${built.stderr}`);
  }
  beforeAll(async () => {
    const lists = { ada: await withdrawals(ada), bert: await withdrawals(bert) };
    await rebuild(
      new Map([
        ...programmeFiles,
        ["programme.yaml", programmeText],
        ["withdrawals/ada.json", lists.ada],
        ["withdrawals/bert.json", lists.bert],
      ]),
    );
  }, 120_000);
  let server: StaticServer | undefined;
  beforeAll(async () => {
    server = await serveFolder(dir, "/any/path/");
  });
  afterAll(async () => {
    await server?.close();
    rmSync(folder, { recursive: true, force: true });
  });
  const urls: Readonly<Record<Way, () => string>> = {
    localhost: () => server!.url,
    "plain http": () => server!.url.replace("localhost", "workshop.test"),
    disk: () => `${pathToFileURL(dir).href}/`,
  };
  return {
    ...{ dir, contentDir, rebuild },
    url: (way) => urls[way](),
    programme: () => dataIn<ProgrammeData>(join(dir, "record/data/programme.js")),
    release: () => dataIn<ModuleData>(join(dir, "record/data/box.js")).release,
  };
}

/** What a data script hands over: its call has a name and JSON. */
function dataIn<Data>(file: string): Data {
  const text = readFileSync(file, "utf8");
  return JSON.parse(text.slice(text.indexOf(", ") + 2, text.lastIndexOf(")"))) as Data;
}
