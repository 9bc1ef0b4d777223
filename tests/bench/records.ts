/** Measures the competency record: sign-offs verified a second, and the roster over many record files. */
import {
  createPrivateKey,
  generateKeyPairSync,
  sign as signByNode,
  verify as verifyByNode,
} from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { nodePrimitives } from "../../src/cli/primitives.ts";
import type { RecordEvent } from "../../src/engine/competency/event.ts";
import type { JsonObject } from "../../src/engine/competency/json.ts";
import { writeRecord } from "../../src/engine/competency/record-file.ts";
import type { Release } from "../../src/engine/competency/release.ts";
import { ann, ben, clubFiles, listText, releasesIn, signedOff } from "../support/club.ts";
import {
  identifier,
  type Person,
  person,
  practiceAt,
  recordOf,
  runAt,
  secretOf,
  signed,
  signOffAt,
} from "../support/competency.ts";
import { toolEntry } from "../support/run-command.ts";
import { measure } from "./measure.ts";
import { median, type Row } from "./row.ts";
import { asShipped } from "./shipped.ts";

const people = 10_000;
/** A folder of records is read with code that has been compiled by then. */
const warmUp = 5;
const events = 20;

/** Seconds that the roster over all of them may take, on two cores. */
const rosterLimit = 30;
/** MiB; a tenth of the files takes as much but for the rows. */
const memoryLimit = 512;

/** Signs by Node, a hundred times as quick as the portable one, with the same key. */
function quick(who: Person): Person {
  // PKCS #8 of an Ed25519 key (RFC 8410) up to the key itself.
  const head = Buffer.from("302e020100300506032b657004220420", "hex");
  const der = Buffer.concat([head, secretOf(who.name)]);
  const key = createPrivateKey({ key: der, format: "der", type: "pkcs8" });
  return { ...who, sign: async (message) => new Uint8Array(signByNode(null, message, key)) };
}

export async function recordRows(scratch: string): Promise<Row[]> {
  const folder = join(scratch, "club");
  for (const [path, text] of clubFiles) write(join(folder, path), text);
  for (const [id, mentor] of [
    ["ann", ann],
    ["ben", ben],
  ] as const)
    write(join(folder, "withdrawals", `${id}.json`), await listText(mentor));
  const releases = releasesIn(folder);
  return [
    ...(await verifyRows(scratch, releases.get("motor")!)),
    ...(await rosterRows(scratch, folder, releases)),
  ];
}

type Reading = typeof import("../../src/engine/competency/statements.ts");
type Verifying = typeof import("../../src/cli/primitives.ts");

/**
 * Read as a file would be: parsed, its shape looked at, made canonical, hashed, verified. Beside it what OpenSSL alone takes
 * for as many signatures in the same rounds, since processors do not run alike from minute to minute.
 */
async function verifyRows(scratch: string, release: Release): Promise<Row[]> {
  const { readStatement } = await asShipped<Reading>(scratch, "engine/competency/statements.ts");
  const shipped = await asShipped<Verifying>(scratch, "cli/primitives.ts");
  const mentor = quick(ann);
  const texts: string[] = [];
  for (let number = 0; number < 2000; number++) {
    const statement = signOffAt("2026-03-17T20:00:00Z", mentor, person(`Person ${number}`), release);
    texts.push(JSON.stringify(await signed(statement, mentor)));
  }
  const naming = { identifier, timeZone: "Europe/London" };
  const readAll = () =>
    texts.every((text) => readStatement(JSON.parse(text) as JsonObject, naming, shipped.nodePrimitives).ok);
  const verifyAll = opensslAlone(texts.length);
  const rounds = Array.from({ length: warmUp + 15 }, () => [
    aSecond(texts.length, readAll),
    aSecond(texts.length, verifyAll),
  ]);
  const middle = (column: number) => median(rounds.slice(warmUp).map((round) => round[column]!));
  return [
    {
      what: "sign-offs verified by the commands, a second on one core",
      measured: middle(0),
      unit: "",
      atLeast: 5000,
    },
    { what: "signatures verified by OpenSSL alone, in the same rounds", measured: middle(1), unit: "" },
  ];
}

/** How many are done a second of processor time. */
function aSecond(count: number, all: () => boolean): number {
  const began = process.cpuUsage();
  if (!all()) throw new Error("what was just signed is not verified");
  const { user, system } = process.cpuUsage(began);
  return (count / (user + system)) * 1e6;
}

function opensslAlone(count: number): () => boolean {
  const { publicKey, privateKey } = generateKeyPairSync("ed25519");
  const messages = Array.from({ length: count }, (_, at) => Buffer.alloc(64, at % 251));
  const signatures = messages.map((message) => signByNode(null, message, privateKey));
  return () => messages.every((message, at) => verifyByNode(null, message, publicKey, signatures[at]!));
}

async function rosterRows(
  scratch: string,
  content: string,
  releases: ReadonlyMap<string, Release>,
): Promise<Row[]> {
  const files = join(scratch, "records");
  await writeRecords(files, releases);
  const run = (dir: string) =>
    measure(process.execPath, [toolEntry, "roster", dir, "--content", content, "--json"], scratch);
  const small = await run(join(files, "0"));
  const all = await run(files);
  const what = `roster over ${people.toLocaleString("en")} records of ${events} events`;
  return [
    { what, measured: all.ms / 1000, unit: "s", budget: rosterLimit },
    { what: `${what}: processor time of all threads`, measured: all.cpu / 1000, unit: "s" },
    { what: `${what}: peak memory`, measured: all.memory, unit: "MiB", budget: memoryLimit },
    { what: "the same over a tenth of them: peak memory", measured: small.memory, unit: "MiB" },
  ];
}

/** In ten folders. */
async function writeRecords(folder: string, releases: ReadonlyMap<string, Release>): Promise<void> {
  const mentor = quick(ann);
  for (let number = 0; number < people; number++) {
    const owner = quick(person(`Person ${number}`));
    const text = await writeRecord(recordOf(owner, await eventsOf(owner, mentor, [...releases.values()])), {
      sign: owner.sign,
      written: "2026-11-27T20:00:00.000Z",
      primitives: nodePrimitives,
    });
    write(join(folder, String(number % 10), `${number}.record.json`), text);
  }
}

/** Signed off on each module, and more practice until there are as many as it takes. */
async function eventsOf(owner: Person, mentor: Person, releases: readonly Release[]): Promise<RecordEvent[]> {
  const done = (await Promise.all(releases.map((release) => signedOff(owner, release, mentor)))).flat();
  for (let day = 1; done.length < events; day++) {
    const at = `2026-05-${String(day).padStart(2, "0")}T19:00:00Z`;
    done.push((day % 2 === 0 ? runAt : practiceAt)(at, releases[0]!));
  }
  return done;
}

function write(file: string, text: string | Uint8Array): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}
