/** People, a small programme and signed records for tests. Everything is invented; keys follow from names, so that runs are alike. */
import { createHash } from "node:crypto";
import { endOfMonths } from "../../src/engine/competency/calendar.ts";
import { signStatement, statusListId } from "../../src/engine/competency/credential.ts";
import { didKeyOf } from "../../src/engine/competency/did-key.ts";
import { digestOf, digestOfText } from "../../src/engine/competency/digest.ts";
import type { NewEvent, RecordEvent } from "../../src/engine/competency/event.ts";
import { makeEvent, paperSeed } from "../../src/engine/competency/events.ts";
import { readInstant } from "../../src/engine/competency/instant.ts";
import type { JsonObject } from "../../src/engine/competency/json.ts";
import { portable, publicKeyOf, signWith } from "../../src/engine/competency/libraries.ts";
import { inOrder } from "../../src/engine/competency/merge.ts";
import type { CompetencyRecord } from "../../src/engine/competency/record.ts";
import { writeRecord } from "../../src/engine/competency/record-file.ts";
import type { Release, ReleaseCard } from "../../src/engine/competency/release.ts";
import { asJson } from "../../src/engine/competency/release-digests.ts";
import type { Mentor, RecordRules, SignOffRules } from "../../src/engine/competency/rules.ts";
import { usualRules } from "../../src/engine/competency/rules-of.ts";
import type { NewKey, Observation, SignOff, Statement } from "../../src/engine/competency/sign-off.ts";
import type { StatusList } from "../../src/engine/competency/situation.ts";
import { drawPaper } from "../../src/engine/quiz/paper.ts";
import type { Quiz } from "../../src/engine/quiz/quiz.ts";
import { scoreQuiz } from "../../src/engine/quiz/score.ts";

export interface Person {
  readonly name: string;
  readonly did: string;
  sign(message: Uint8Array): Promise<Uint8Array>;
}

export const secretOf = (name: string): Uint8Array =>
  new Uint8Array(createHash("sha256").update(`key of ${name}`).digest());

/** Someone with a key of their own; trainee or mentor. */
export function person(name: string): Person {
  const secret = secretOf(name);
  return {
    name,
    did: didKeyOf(publicKeyOf(secret)),
    sign: async (message) => signWith(secret, message),
  };
}

export const identifier = "https://club.example/restoring";

/** As the programme lists them: may sign everything from the beginning of 2020. */
export function mentorRow({ name, did }: Person, more: Partial<Mentor> = {}): Mentor {
  return {
    id: name.toLowerCase().replaceAll(/[^a-z]+/g, "-"),
    name,
    key: did,
    maySign: "all",
    highestLevel: "may teach",
    from: "2020-01-01",
    to: undefined,
    compromised: undefined,
    keep: [],
    ownRecords: [],
    ...more,
  };
}

export function programmeWith(mentors: readonly Mentor[], more: Partial<RecordRules> = {}): RecordRules {
  return {
    identifier,
    programme: "A restoring club",
    timeZone: "Europe/London",
    mentors,
    lapsedNeeds: "suspend",
    soonDays: 60,
    ...more,
  };
}

/** Two questions, the second answer of each right; and one more way to be wrong. */
export const smallQuiz: Quiz = {
  pass: 0.8,
  questions: ["first", "second"].map((id) => ({
    ...{ kind: "choose-one" as const, id, ask: `${id}?`, why: "", see: "#a", points: 1 },
    ...{ objective: undefined, critical: false },
    options: [
      { text: "no", right: false, why: "because" },
      { text: "yes", right: true, why: "" },
      { text: "never", right: false, why: "because" },
    ],
  })),
};

const steps = ["a", "b", "c"];
const pairs = [
  { first: "a", then: "b", because: ["b lies under a"], critical: true },
  { first: "b", then: "c", because: ["c lies under b"], critical: false },
];
const graph = { steps, pairs };

/** A module with a quiz, one practice and a run on paper, of three steps in a row; the pair a, b is critical. */
export function releaseOf(module: string, more: Partial<Release> = {}): Release {
  const revision = more.revision ?? 1;
  const digest = (what: string) => digestOfText(`${what} of ${module} ${revision}`, portable);
  return {
    ...{ module, revision, title: `The ${module}`, summary: "", content: digest("content"), needs: [] },
    hazards: [],
    steps: steps.map((id) => ({
      ...{ id, title: id, critical: id === "a", check: undefined, phase: undefined },
    })),
    phases: [],
    asLeft: [],
    quiz: { digest: digest("quiz"), quiz: smallQuiz, supervised: false },
    practices: [{ id: "order", title: "Order", digest: digest("practice"), graph, mixedIn: [] }],
    run: {
      digest: digest("run"),
      precedence: graph,
      procedure: { parts: [], fasteners: [], states: [], steps: [] },
    },
    rules: usualRules,
    ...more,
  };
}

export const rulesWith = (more: Partial<SignOffRules>): SignOffRules => ({ ...usualRules, ...more });

/** Its card; revisions below it are accepted too where they are handed in. */
export function cardOf(release: Release, earlier: readonly Release[] = []): ReleaseCard {
  const { quiz, practices, run, ...card } = release;
  const rows = [...earlier, release].map(({ revision, content }) => ({ revision, content: [content] }));
  return {
    ...card,
    quiz: quiz && { digest: quiz.digest, supervised: quiz.supervised },
    practices: practices.map(({ id, title, digest }) => ({ id, title, digest })),
    run: run && { digest: run.digest },
    revisions: rows,
  };
}

/** An event with its id; `at` may be any RFC 3339 time. */
export const eventAt = (at: string, event: WithoutTime<NewEvent>): RecordEvent =>
  makeEvent({ ...event, at: new Date(at).toISOString() } as NewEvent, portable);

type WithoutTime<Event> = Event extends NewEvent ? Omit<Event, "at"> : never;

export const readAt = (at: string, { module, revision }: Release): RecordEvent =>
  eventAt(at, { kind: "read", module, revision });

export interface SittingMore {
  readonly attempt?: number;
  readonly preferred?: readonly string[];
  readonly seed?: string;
}

/** A sitting with these answers, as the page would write it down. */
export function sittingAt(
  at: string,
  { did }: Person,
  release: Release,
  answers: Readonly<Record<string, unknown>> = { first: 1, second: 1 },
  { attempt = 1, preferred = [], seed: own }: SittingMore = {},
): RecordEvent {
  const { module, revision, quiz } = release;
  const seed = own ?? paperSeed(did, quiz!.digest, attempt, portable);
  const given = Object.entries(answers);
  const paper = drawPaper(quiz!.quiz ?? smallQuiz, seed, new Set(preferred));
  const { score, max, passed } = scoreQuiz(paper, new Map(given));
  const claimed = quiz!.supervised ? null : { score, max, passed };
  return eventAt(at, {
    kind: "quiz",
    ...{ module, revision, quiz: quiz!.digest, attempt, seed, preferred, answers: given, claimed },
  });
}

export function practiceAt(at: string, release: Release, given: readonly string[] = steps): RecordEvent {
  const { module, revision, practices } = release;
  const { id, digest } = practices[0]!;
  const right = given.join() === steps.join();
  return eventAt(at, {
    kind: "practice",
    ...{ module, revision, graph: digest, practice: id, given, claimed: { right } },
  });
}

export function runAt(
  at: string,
  { module, revision, run }: Release,
  tried: readonly string[] = steps,
  claimed = { done: true, stops: 0 },
): RecordEvent {
  return eventAt(at, { kind: "run", module, revision, graph: run!.digest, tried, claimed });
}

/** Everything that a trainee does by themself, done right. */
export function theoryAt(at: string, trainee: Person, release: Release): RecordEvent[] {
  return [
    readAt(at, release),
    ...release.hazards.map(({ id }) => eventAt(at, { kind: "hazard", hazard: id })),
    ...(release.quiz === undefined ? [] : [sittingAt(at, trainee, release)]),
    ...(release.practices.length === 0 ? [] : [practiceAt(at, release)]),
    ...(release.run === undefined ? [] : [runAt(at, release)]),
  ];
}

const hexOf = (what: unknown): string => createHash("sha256").update(JSON.stringify(what)).digest("hex");

const uuidOf = (what: unknown): string => {
  const hex = hexOf(what);
  const parts = [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20, 32)];
  return `urn:uuid:${parts.join("-")}`;
};

/** Its place on the list follows from what it says, too. */
const signedBy = (mentor: Person, trainee: Person, at: string, what: unknown) => ({
  issuer: mentor.did,
  issuerName: mentor.name,
  subject: trainee.did,
  subjectName: trainee.name,
  validFrom: new Date(at).toISOString(),
  validUntil: undefined,
  statusIndex: Number.parseInt(hexOf([mentor.name, trainee.name, at, what]).slice(0, 4), 16),
});

const ofRelease = ({ module, title, revision, content }: Release) => ({ module, title, revision, content });

type Without = "id" | "kind";

/** Watched unaided and whole, where nothing else is said. */
export function observationAt(
  at: string,
  mentor: Person,
  trainee: Person,
  release: Release,
  more: Partial<Omit<Observation, Without>> = {},
): Observation {
  const content = {
    ...signedBy(mentor, trainee, at, ["observation", release.module, more]),
    ...ofRelease(release),
    ...{ outcome: "unaided" as const, phases: [], words: "Calm and careful.", ticked: [] },
    ...more,
  };
  return { ...content, kind: "observation", id: uuidOf(["observation", content]) };
}

/** At level "alone", for as long as the rules say, with every point. */
export function signOffAt(
  at: string,
  mentor: Person,
  trainee: Person,
  release: Release,
  more: Partial<Omit<SignOff, Without>> = {},
): SignOff {
  const { months } = release.rules;
  const content = {
    ...signedBy(mentor, trainee, at, ["sign-off", release.module, more]),
    ...ofRelease(release),
    validUntil: months === undefined ? undefined : endOfMonths(readInstant(at)!, months, "Europe/London"),
    level: "alone" as const,
    score: release.quiz === undefined ? undefined : 1,
    evidence: [],
    words: "",
    ...more,
  };
  return { ...content, kind: "sign-off", id: uuidOf(["sign-off", content]) };
}

export function newKeyAt(at: string, mentor: Person, trainee: Person, oldKey: string): NewKey {
  const content = { ...signedBy(mentor, trainee, at, oldKey), oldKey };
  return { ...content, kind: "new-key", id: uuidOf(["new-key", content]) };
}

/** The credential, signed by `signer`, who should be its issuer. */
export const signed = (statement: Statement, signer: Person): Promise<JsonObject> =>
  signStatement(statement, {
    identifier,
    programme: "A restoring club",
    sign: signer.sign,
    primitives: portable,
    created: statement.validFrom,
  });

/** The statement as an event of the moment from which it holds, or of `at`. */
export async function statementEvent(
  statement: Statement,
  signer: Person,
  at: string = statement.validFrom,
): Promise<RecordEvent> {
  return eventAt(at, { kind: statement.kind, credential: await signed(statement, signer) });
}

export const digestOfCredential = (credential: JsonObject): string => digestOf(asJson(credential), portable);

/** A mentor's list of withdrawals, as it was read; in date for long. */
export const withdrawalList = (
  { did }: Person,
  withdrawn: readonly number[] = [],
  validUntil = "2100-01-01T00:00:00Z",
): StatusList => ({
  issuer: did,
  id: statusListId(identifier, did),
  isSet: (index) => withdrawn.includes(index),
  validUntil,
});

export const recordOf = (owner: Person, events: readonly RecordEvent[]): CompetencyRecord => ({
  programme: identifier,
  owner: owner.did,
  name: owner.name,
  named: "2026-01-01T00:00:00.000Z",
  events: inOrder(events),
});

/** A record's file, signed by its owner. */
export const recordText = (
  owner: Person,
  events: readonly RecordEvent[],
  programme = identifier,
): Promise<string> =>
  writeRecord(
    { ...recordOf(owner, events), programme },
    { sign: owner.sign, written: "2026-11-27T20:00:00.000Z", primitives: portable },
  );
