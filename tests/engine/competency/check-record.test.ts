/** Each code of `record check`, and files that were damaged, edited, replayed or put together by hand. */
import { beforeAll, describe, expect, test } from "vitest";
import { type CheckInput, checkFile } from "../../../src/engine/competency/check-record.ts";
import { digestOf } from "../../../src/engine/competency/digest.ts";
import type { CredentialEvent, RecordEvent } from "../../../src/engine/competency/event.ts";
import type { JsonObject } from "../../../src/engine/competency/json.ts";
import { base58, canonicalText, portable, utf8 } from "../../../src/engine/competency/libraries.ts";
import { type RecordCode, recordCodes } from "../../../src/engine/competency/problems.ts";
import { readRecord } from "../../../src/engine/competency/record-file.ts";
import { asJson } from "../../../src/engine/competency/release-digests.ts";
import { Releases } from "../../../src/engine/competency/releases.ts";
import type { RecordRules } from "../../../src/engine/competency/rules.ts";
import {
  cardOf,
  eventAt,
  mentorRow,
  observationAt,
  type Person,
  person,
  programmeWith,
  recordText,
  releaseOf,
  rulesWith,
  signed,
  signOffAt,
  sittingAt,
  statementEvent,
  theoryAt,
  withdrawalList,
} from "../../support/competency.ts";

const jo = person("Jo");
const ann = person("Ann Mentor");
const stranger = person("A stranger");
const motor = releaseOf("motor", { rules: rulesWith({ months: 12 }) });
const theory = theoryAt("2026-05-01T18:00:00Z", jo, motor);

type More = Partial<Omit<CheckInput, "rules">> & { readonly programme?: Partial<RecordRules> };

const codesOf = (text: string, { programme = {}, ...more }: More = {}): RecordCode[] =>
  problemsOf(text, { programme, ...more }).map(({ code }) => code);

function problemsOf(text: string, { programme = {}, ...more }: More = {}) {
  return checkFile(text, {
    rules: programmeWith([mentorRow(ann)], programme),
    releases: new Releases([cardOf(motor)], [motor]),
    statuses: [withdrawalList(ann)],
    on: "2026-06-30",
    primitives: portable,
    ...more,
  });
}

let events: RecordEvent[];
let text: string;

beforeAll(async () => {
  const watched = await statementEvent(
    observationAt("2026-05-08T19:00:00Z", ann, jo, motor, { outcome: "watched" }),
    ann,
  );
  const unaided = await statementEvent(observationAt("2026-05-09T19:00:00Z", ann, jo, motor), ann);
  const evidence = [
    { name: "Quiz", digest: theory[1]!.id },
    { name: "Practice", digest: theory[2]!.id },
    { name: "Watched", digest: watched.id },
    { name: "Unaided", digest: unaided.id },
  ];
  const signOff = await statementEvent(signOffAt("2026-05-10T19:00:00Z", ann, jo, motor, { evidence }), ann);
  events = [...theory, watched, unaided, signOff];
  text = await recordText(jo, events);
});

const signOffIn = (list: readonly RecordEvent[]) =>
  list.find(({ kind }) => kind === "sign-off") as CredentialEvent;
const withoutSignOff = () => events.filter(({ kind }) => kind !== "sign-off");

/** The file with something changed in it and signed again by whoever holds the key of its owner. */
async function resigned(owner: Person, change: (file: Record<string, unknown>) => object): Promise<string> {
  const { signature: _, ...file } = JSON.parse(text) as Record<string, unknown>;
  const changed = asJson(change(file)) as JsonObject;
  const signature = await owner.sign(portable.sha256(utf8(canonicalText(changed))));
  return JSON.stringify({ ...changed, signature: `z${base58.encode(signature)}` });
}

/** An event with a field changed, and an id that fits. */
function forged({ id: _, ...event }: RecordEvent, more: object): object {
  const changed = { ...event, ...more };
  return { ...changed, id: digestOf(asJson(changed), portable) };
}

test("a record in order is ok, and so is the credential by itself", () => {
  expect(problemsOf(text)).toEqual([]);
  expect(problemsOf(JSON.stringify(signOffIn(events).credential))).toEqual([]);
});

test("what is written is read back", async () => {
  const { record, problems, written } = readRecord(text, portable);
  expect(problems).toEqual([]);
  expect(written).toBe("2026-11-27T20:00:00.000Z");
  expect(await recordText(jo, record!.events)).toBe(text);
});

interface Bad {
  readonly what: string;
  readonly codes: readonly RecordCode[];
  file(): Promise<string> | string;
  readonly more?: More;
}

/** A record of everything but the sign-off, with another one. */
const withSignOff = async (more: object, signer = ann, at = "2026-05-10T19:00:00Z"): Promise<string> =>
  recordText(jo, [...withoutSignOff(), await statementEvent(signOffAt(at, signer, jo, motor, more), signer)]);

const credentialOf = async (more: object): Promise<JsonObject> =>
  signed(signOffAt("2026-05-10T19:00:00Z", ann, jo, motor, more), ann);

const bad: readonly Bad[] = [
  { what: "cut short", codes: ["not-json"], file: () => text.slice(0, text.length / 2) },
  {
    what: "a name twice",
    codes: ["not-json"],
    file: () => text.replace('"record"', '"record": 1, "record"'),
  },
  {
    what: "with __proto__",
    codes: ["not-json"],
    file: () => text.replace('"record"', '"__proto__": 1, "record"'),
  },
  { what: "nested too deep", codes: ["too-large"], file: () => "[".repeat(100_000) },
  { what: "larger than any record", codes: ["too-large"], file: () => `"${" ".repeat(17 * 1024 * 1024)}"` },
  { what: "no record", codes: ["schema"], file: () => "[1, 2]" },
  {
    what: "with a field of its own",
    codes: ["schema"],
    file: () => text.replace('"record"', '"extra": 1, "record"'),
  },
  {
    what: "of another programme",
    codes: ["schema"],
    file: () => resigned(jo, (file) => ({ ...file, programme: "https://other.example" })),
  },
  {
    what: "edited after it was saved",
    codes: ["owner-signature"],
    file: () => text.replace('"name": "Jo"', '"name": "Al"'),
  },
  {
    what: "signed again by another",
    codes: ["owner-signature"],
    file: () => resigned(stranger, (file) => file),
  },
  {
    what: "taken over by another",
    codes: ["evidence", "subject-mismatch", "subject-mismatch", "subject-mismatch"],
    file: () => resigned(stranger, (file) => ({ ...file, owner: stranger.did })),
  },
  {
    what: "with an event changed, and signed again by its owner",
    codes: ["event-id", "evidence"],
    file: () =>
      resigned(jo, (file) => ({
        ...file,
        events: events.map((event) =>
          event.kind === "practice" ? { ...event, given: ["c", "b", "a"] } : event,
        ),
      })),
  },
  {
    what: "with an event in it twice",
    codes: ["event-id"],
    file: () => resigned(jo, (file) => ({ ...file, events: [...events, events[0]] })),
  },
  {
    what: "with a claim that is not true",
    codes: ["evidence"],
    file: () =>
      recordText(jo, [
        ...withoutSignOff(),
        forged(sittingAt("2026-05-02T18:00:00Z", jo, motor, { first: 0, second: 0 }, { attempt: 2 }), {
          claimed: { score: 2, max: 2, passed: true },
        }) as RecordEvent,
      ]),
  },
  ...[
    ["no zone", "2026-05-01T18:00:00.000"],
    ["31 February", "2026-02-31T18:00:00.000Z"],
    ["hour 25", "2026-05-01T25:00:00.000Z"],
    ["an offset", "2026-05-01T18:00:00.000+01:00"],
  ].map(([what, at]) => ({
    what: `with an event of ${what}`,
    codes: ["schema"] as const,
    file: () =>
      resigned(jo, (file) => ({ ...file, events: [...withoutSignOff(), forged(events[0]!, { at })] })),
  })),
  {
    what: "with an event in the future",
    codes: ["not-yet-valid"],
    file: () =>
      recordText(jo, [...events, eventAt("2031-01-01T00:00:00Z", { kind: "hazard", hazard: "spring" })]),
  },
  {
    what: "with a kind of event that there is not",
    codes: ["schema"],
    file: () => resigned(jo, (file) => ({ ...file, events: [forged(events[0]!, { kind: "__proto__" })] })),
  },
  {
    what: "with another person's sign-off pasted in",
    codes: ["subject-mismatch"],
    file: async () =>
      recordText(jo, [
        ...withoutSignOff(),
        await statementEvent(signOffAt("2026-05-10T19:00:00Z", ann, person("Sam"), motor), ann),
      ]),
  },
  {
    what: "with a sign-off whose subject was written over",
    codes: ["signature"],
    file: async () => {
      const { credential } = (await statementEvent(
        signOffAt("2026-05-10T19:00:00Z", ann, person("Sam"), motor),
        ann,
      )) as CredentialEvent;
      const mine = JSON.parse(JSON.stringify(credential).replaceAll(person("Sam").did, jo.did)) as JsonObject;
      return recordText(jo, [
        ...withoutSignOff(),
        eventAt("2026-05-10T19:00:00Z", { kind: "sign-off", credential: mine }),
      ]);
    },
  },
  {
    what: "with an observation that says it is a sign-off",
    codes: ["schema"],
    file: () =>
      recordText(jo, [
        ...theory,
        eventAt("2026-05-10T19:00:00Z", {
          kind: "sign-off",
          credential: (events.find(({ kind }) => kind === "observation") as CredentialEvent).credential,
        }),
      ]),
  },
  {
    what: "with a context added after signing",
    codes: ["context"],
    file: async () => {
      const credential = await credentialOf({});
      const contexts = credential["@context"] as readonly string[];
      return JSON.stringify({ ...credential, "@context": [...contexts, "https://other.example/context"] });
    },
  },
  {
    what: "with another suite",
    codes: ["suite"],
    file: async () => JSON.stringify(await credentialOf({})).replace("eddsa-jcs-2022", "eddsa-rdfc-2022"),
  },
  {
    what: "signed by a key that is not the issuer's",
    codes: ["key-mismatch"],
    file: async () => {
      const credential = await credentialOf({});
      const [proof] = credential.proof as readonly JsonObject[];
      const method = `${stranger.did}#${stranger.did.slice("did:key:".length)}`;
      return JSON.stringify({ ...credential, proof: [{ ...proof, verificationMethod: method }] });
    },
  },
  { what: "by nobody's mentor", codes: ["issuer-unlisted"], file: () => withSignOff({}, stranger) },
  {
    what: "under a stolen key",
    codes: ["issuer-compromised", "issuer-compromised", "issuer-compromised"],
    file: () => text,
    more: { programme: { mentors: [mentorRow(ann, { compromised: "2026-06-01" })] } },
  },
  {
    what: "by a mentor for other modules",
    codes: ["not-allowed", "not-allowed", "not-allowed"],
    file: () => text,
    more: { programme: { mentors: [mentorRow(ann, { maySign: ["governor"] })] } },
  },
  {
    what: "by a mentor for themself",
    codes: ["self-signed", "self-signed", "self-signed"],
    file: () => text,
    more: { programme: { mentors: [mentorRow(ann, { ownRecords: [jo.did] })] } },
  },
  {
    what: "from a day that is still to come",
    codes: ["not-yet-valid"],
    file: async () =>
      recordText(jo, [
        ...withoutSignOff(),
        await statementEvent(signOffAt("2026-07-01T12:00:00Z", ann, jo, motor), ann, "2026-05-10T19:00:00Z"),
      ]),
  },
  { what: "lapsed", codes: ["lapsed"], file: () => text, more: { on: "2027-05-11" } },
  {
    what: "withdrawn",
    codes: ["withdrawn"],
    file: () => withSignOff({ statusIndex: 70_000 }),
    more: { statuses: [withdrawalList(ann, [70_000])] },
  },
  {
    what: "with a list of withdrawals that has run out",
    codes: ["status-list", "status-list", "status-list"],
    file: () => text,
    more: { statuses: [withdrawalList(ann, [], "2026-06-30T12:00:00Z")] },
  },
  {
    what: "on a text that the programme does not list",
    codes: ["revision"],
    file: () => JSON.stringify(signOffIn(events).credential),
    more: { releases: new Releases([cardOf(releaseOf("motor", { content: releaseOf("x").content }))], []) },
  },
  {
    what: "on an earlier revision, where a new one asks for a new sign-off",
    codes: ["revision"],
    file: () => text,
    more: { releases: new Releases([cardOf(releaseOf("motor", { revision: 2 }), [motor])], [motor]) },
  },
  {
    what: "without its observations",
    codes: ["evidence", "evidence", "evidence"],
    file: () =>
      recordText(
        jo,
        events.filter(({ kind }) => kind !== "observation"),
      ),
  },
  { what: "below the pass mark", codes: ["evidence"], file: () => withSignOff({ score: 0.79 }) },
  { what: "without a score", codes: ["evidence"], file: () => withSignOff({ score: undefined }) },
];

describe("a file", () => {
  test.each(bad)("$what: $codes", async ({ codes, file, more }) => {
    const problems = problemsOf(await file(), more);
    expect(problems.map(({ code }) => code).sort()).toEqual([...codes].sort());
    for (const { message } of problems) expect(message).toMatch(/^.{20,}[.]$/s);
  });

  test("each code has its example", () => {
    const shown = new Set(bad.flatMap(({ codes }) => codes));
    expect(recordCodes.filter((code) => !shown.has(code))).toEqual([]);
  });
});

test("dates reversed are never signed, and refused where somebody signs them all the same", async () => {
  const reversed = signOffAt("2026-05-10T19:00:00Z", ann, jo, motor, {
    validUntil: "2026-05-09T19:00:00.000Z",
  });
  await expect(signed(reversed, ann)).rejects.toThrow(RangeError);
  const credential = { ...(await credentialOf({})), validUntil: "2026-05-09T19:00:00.000Z" };
  expect(codesOf(JSON.stringify(credential))).toEqual(["schema"]);
});

describe("what has run its course", () => {
  test("and was signed anew since is no fault of the record", async () => {
    const again = [
      await statementEvent(observationAt("2027-06-01T19:00:00Z", ann, jo, motor), ann),
      await statementEvent(observationAt("2027-06-02T19:00:00Z", ann, jo, motor), ann),
      await statementEvent(signOffAt("2027-06-03T19:00:00Z", ann, jo, motor), ann),
    ];
    const renewed = await recordText(jo, [...events, ...again]);
    expect(codesOf(renewed, { on: "2027-06-04" })).toEqual([]);
    const unwatched = await recordText(jo, [...events, again[2]!]);
    expect(codesOf(unwatched, { on: "2027-06-04" })).toEqual(["lapsed", "evidence"]);
  });
});

test("problems name their place among the events", async () => {
  const file = await recordText(jo, [
    ...events.slice(1),
    forged(events[0]!, { kind: "read", module: "x" }) as RecordEvent,
  ]);
  expect(problemsOf(file)).toEqual([]);
  const low = problemsOf(await withSignOff({ score: 0.5 }));
  expect(low.map(({ at }) => at)).toEqual([`events[${withoutSignOff().length}]`]);
});

test("ids such as __proto__ and constructor are ids like any other", async () => {
  const odd = ["__proto__", "constructor", "toString"].flatMap((id) => [
    eventAt("2026-05-01T18:00:00Z", { kind: "hazard", hazard: id }),
    eventAt("2026-05-01T18:00:00Z", { kind: "read", module: id, revision: 1 }),
    sittingAt("2026-05-01T18:00:00Z", jo, { ...motor, module: id }),
  ]);
  expect(codesOf(await recordText(jo, [...events, ...odd]))).toEqual(["evidence", "evidence", "evidence"]);
});
