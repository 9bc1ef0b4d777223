/** Worked situations: what someone is allowed on a date, and what is missing. The rules are those of the design, in words beside each. */
import { beforeAll, describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import type { CredentialEvent, RecordEvent } from "../../../src/engine/competency/event.ts";
import type { Release } from "../../../src/engine/competency/release.ts";
import { Releases } from "../../../src/engine/competency/releases.ts";
import type { RecordRules } from "../../../src/engine/competency/rules.ts";
import { type StateInput, stateOf } from "../../../src/engine/competency/standing.ts";
import type { ModuleState } from "../../../src/engine/competency/state.ts";
import {
  cardOf,
  digestOfCredential,
  eventAt,
  mentorRow,
  newKeyAt,
  observationAt,
  person,
  practiceAt,
  programmeWith,
  readAt,
  recordOf,
  releaseOf,
  rulesWith,
  runAt,
  signOffAt,
  sittingAt,
  statementEvent,
  theoryAt,
  withdrawalList,
} from "../../support/competency.ts";

const jo = person("Jo");
const ann = person("Ann Mentor");
const ben = person("Ben Mentor");
const mentors = [mentorRow(ann), mentorRow(ben)];
const motor = releaseOf("motor", { rules: rulesWith({ months: 12 }) });

interface Situation extends Partial<Omit<StateInput, "rules" | "releases" | "record">> {
  readonly events: readonly RecordEvent[];
  readonly modules?: readonly Release[];
  readonly earlier?: readonly Release[];
  readonly programme?: Partial<RecordRules>;
  readonly owner?: typeof jo;
}

function statesIn(situation: Situation): Map<string, ModuleState> {
  const { events, modules = [motor], earlier = [], programme = {}, owner = jo, ...rest } = situation;
  const cards = modules.map((release) =>
    cardOf(
      release,
      earlier.filter(({ module }) => module === release.module),
    ),
  );
  return stateOf({
    record: recordOf(owner, events),
    rules: programmeWith(mentors, programme),
    releases: new Releases(cards, [...modules, ...earlier]),
    statuses: [withdrawalList(ann), withdrawalList(ben)],
    on: "2026-06-30",
    primitives: nodePrimitives,
    ...rest,
  });
}

const stateIn = (situation: Situation, module = "motor"): ModuleState => statesIn(situation).get(module)!;
const missingIn = (situation: Situation): string[] => stateIn(situation).missing.map(({ kind }) => kind);

const theory = theoryAt("2026-05-01T18:00:00Z", jo, motor);
const observed = (at: string, more = {}, mentor = ann, release = motor) =>
  statementEvent(observationAt(at, mentor, jo, release, more), mentor);
const signedOff = (at: string, more = {}, mentor = ann, release = motor) =>
  statementEvent(signOffAt(at, mentor, jo, release, more), mentor);

let watched: RecordEvent;
let unaided: RecordEvent;
let signOff: RecordEvent;
/** Everything that a sign-off takes, and the sign-off of 2026-05-10. */
let whole: RecordEvent[];

beforeAll(async () => {
  watched = await observed("2026-05-08T19:00:00Z", { outcome: "watched" });
  unaided = await observed("2026-05-09T19:00:00Z");
  signOff = await signedOff("2026-05-10T19:00:00Z");
  whole = [...theory, watched, unaided, signOff];
});

describe("the way to a sign-off", () => {
  test("nothing done: not begun, and everything is missing in the order of work", () => {
    const hazards = [{ id: "stored-spring", title: "Stored spring" }];
    const module = { ...motor, hazards, rules: rulesWith({ dryRun: true }) };
    const state = stateIn({ events: [], modules: [module] });
    expect(state).toMatchObject({ standing: "not begun", level: undefined, until: undefined, mentors: [] });
    const kinds = state.missing.map(({ kind }) => kind);
    expect(kinds).toEqual([
      "reading",
      "hazard",
      "quiz",
      "practice",
      "dry-run",
      "watched",
      "unaided",
      "occasions",
      "mentors",
    ]);
  });

  test("read only: under way", () => {
    const state = stateIn({ events: [readAt("2026-05-01T18:00:00Z", motor)] });
    expect(state.standing).toBe("under way");
    expect(state.missing).toContainEqual({ kind: "quiz", best: undefined, pass: 0.8 });
  });

  test("the theory done: ready to be watched, and nothing but watching is missing", () => {
    const state = stateIn({ events: theory });
    expect(state.standing).toBe("ready to be watched");
    expect(state.missing).toEqual([
      { kind: "watched", has: 0, needs: 1 },
      { kind: "unaided", has: 0, needs: 1 },
      { kind: "occasions", has: 0, needs: 1 },
      { kind: "mentors", has: 0, needs: 1 },
    ]);
  });

  test("watched once: the unaided one is missing", () => {
    const state = stateIn({ events: [...theory, watched] });
    expect(state).toMatchObject({ standing: "ready to be watched", mentors: ["ann-mentor"] });
    expect(state.missing).toEqual([{ kind: "unaided", has: 0, needs: 1 }]);
  });

  test("watched and unaided: ready to be signed", () => {
    expect(stateIn({ events: [...theory, watched, unaided] })).toMatchObject({
      standing: "ready to be signed",
      missing: [],
    });
  });

  test("unaided twice does for watched and unaided: it is more", async () => {
    const again = await observed("2026-05-08T19:00:00Z");
    expect(stateIn({ events: [...theory, again, unaided] }).standing).toBe("ready to be signed");
  });

  test("a quiz that was failed tells its best sitting", () => {
    const half = sittingAt("2026-05-01T18:00:00Z", jo, motor, { first: 1, second: 0 });
    const none = sittingAt("2026-05-02T18:00:00Z", jo, motor, { first: 0, second: 0 }, { attempt: 2 });
    const state = stateIn({ events: [half, none] });
    expect(state.missing).toContainEqual({ kind: "quiz", best: 0.5, pass: 0.8 });
  });

  test("the programme's pass mark counts where it is above the quiz's own", () => {
    const strict = { ...motor, rules: rulesWith({ pass: 1 }) };
    const quiz = { ...motor.quiz!, quiz: { ...motor.quiz!.quiz!, pass: 0.5 } };
    const half = sittingAt("2026-05-01T18:00:00Z", jo, { ...strict, quiz }, { first: 1, second: 0 });
    expect(missingIn({ events: [half], modules: [{ ...strict, quiz }] })).toContain("quiz");
    expect(
      missingIn({ events: [half], modules: [{ ...strict, quiz, rules: rulesWith({ pass: 0.5 }) }] }),
    ).not.toContain("quiz");
  });

  test("a practice not put right, and a run with a critical stop, are missing still", () => {
    const module = { ...motor, rules: rulesWith({ dryRun: true }) };
    const wrong = practiceAt("2026-05-01T18:00:00Z", motor, ["b", "a", "c"]);
    const stopped = runAt("2026-05-01T18:00:00Z", motor, ["b", "a", "b", "c"], { done: true, stops: 1 });
    const kinds = missingIn({ events: [wrong, stopped], modules: [module] });
    expect(kinds).toContain("practice");
    expect(kinds).toContain("dry-run");
    const refused = runAt("2026-05-01T18:00:00Z", motor, ["a", "c", "b", "c"]);
    expect(missingIn({ events: [refused], modules: [module] })).not.toContain("dry-run");
  });

  test("a supervised sitting that was handed in holds nothing up, and stays to be marked", () => {
    const module = { ...motor, quiz: { ...motor.quiz!, quiz: undefined, supervised: true } };
    const events = [readAt("2026-05-01T18:00:00Z", module), practiceAt("2026-05-01T18:00:00Z", module)];
    const none = stateIn({ events, modules: [module] });
    expect(none.standing).toBe("under way");
    expect(none.missing[0]).toEqual({ kind: "supervised-quiz", sat: false });
    const sitting = sittingAt("2026-05-01T18:00:00Z", jo, module, { first: "yes" }, { seed: "4711" });
    const sat = stateIn({ events: [...events, sitting], modules: [module] });
    expect(sat.standing).toBe("ready to be watched");
    expect(sat.missing[0]).toEqual({ kind: "supervised-quiz", sat: true });
  });
});

describe("observations", () => {
  test("not yet adds nothing, and takes nothing back", async () => {
    const notYet = await observed("2026-05-09T20:00:00Z", { outcome: "not yet" });
    expect(stateIn({ events: [...theory, watched, notYet] }).missing).toEqual([
      { kind: "unaided", has: 0, needs: 1 },
    ]);
    expect(stateIn({ events: [...theory, watched, unaided, notYet] }).standing).toBe("ready to be signed");
  });

  test("a stop for safety takes back what was watched before it, until it is watched again", async () => {
    const stop = await observed("2026-05-09T20:00:00Z", { outcome: "stopped for safety" });
    const stopped = stateIn({ events: [...theory, watched, unaided, stop] });
    expect(stopped).toMatchObject({ standing: "ready to be watched", stopped: "2026-05-09" });
    expect(stopped.missing).toContainEqual({ kind: "unaided", has: 0, needs: 1 });
    const again = await observed("2026-05-16T19:00:00Z", { outcome: "watched" });
    expect(stateIn({ events: [...theory, watched, unaided, stop, again] })).toMatchObject({
      stopped: undefined,
      missing: [{ kind: "unaided", has: 0, needs: 1 }],
    });
  });

  test("a stop at the same minute as an observation comes last, in whatever order they were signed", async () => {
    const stop = await observed("2026-05-09T19:00:00Z", { outcome: "stopped for safety" });
    expect(stateIn({ events: [...theory, watched, stop, unaided] }).stopped).toBe("2026-05-09");
  });

  test("a stop after the sign-off does not end it: only the programme withdraws; but it is told", async () => {
    const stop = await observed("2026-05-20T19:00:00Z", { outcome: "stopped for safety" });
    expect(stateIn({ events: [...whole, stop] })).toMatchObject({
      standing: "signed off",
      stopped: "2026-05-20",
    });
  });

  test("phases are watched one by one, and each is asked for as often", async () => {
    const phases = ["strip", "refit"].map((id) => ({ id, title: id }));
    const module = { ...motor, phases };
    const strip = await observed("2026-05-08T19:00:00Z", { phases: ["strip"] });
    const stripAgain = await observed("2026-05-09T19:00:00Z", { phases: ["strip"] });
    const one = stateIn({ events: [...theory, strip, stripAgain], modules: [module] });
    expect(one.missing).toContainEqual({ kind: "phase", phase: "refit" });
    expect(one.missing).not.toContainEqual({ kind: "phase", phase: "strip" });
    const refit = await observed("2026-05-10T19:00:00Z", { phases: ["refit"], outcome: "watched" });
    const all = await observed("2026-05-11T19:00:00Z", {});
    const both = stateIn({ events: [...theory, strip, refit, all], modules: [module] });
    expect(both.standing).toBe("ready to be signed");
  });

  test("a stop in one phase takes back that phase alone; a phase that there is not counts for nothing", async () => {
    const phases = ["strip", "refit"].map((id) => ({ id, title: id }));
    const module = { ...motor, phases, rules: rulesWith({ watched: 0 }) };
    const all = await observed("2026-05-08T19:00:00Z", {});
    const stop = await observed("2026-05-09T19:00:00Z", { phases: ["refit"], outcome: "stopped for safety" });
    const nowhere = await observed("2026-05-10T19:00:00Z", { phases: ["paint"] });
    const state = stateIn({ events: [...theory, all, stop, nowhere], modules: [module] });
    expect(state.missing.filter(({ kind }) => kind === "phase")).toEqual([{ kind: "phase", phase: "refit" }]);
  });

  test("two occasions are two days in the programme's time zone, and two mentors are two people", async () => {
    const module = { ...motor, rules: rulesWith({ watched: 0, unaided: 2, occasions: 2, mentors: 2 }) };
    // 22:30 and 23:30 UTC are two days in summer London, one in UTC.
    const late = await observed("2026-05-08T22:30:00Z");
    const later = await observed("2026-05-08T23:30:00Z");
    const one = stateIn({ events: [...theory, late, later], modules: [module] });
    expect(one.missing).toEqual([{ kind: "mentors", has: 1, needs: 2 }]);
    const second = await observed("2026-05-08T23:30:00Z", {}, ben);
    expect(stateIn({ events: [...theory, late, second], modules: [module] }).standing).toBe(
      "ready to be signed",
    );
    const utc = stateIn({
      events: [...theory, late, second],
      modules: [module],
      programme: { timeZone: "UTC" },
    });
    expect(utc.missing).toEqual([{ kind: "occasions", has: 1, needs: 2 }]);
  });

  test("one of another revision, and one by nobody's mentor, count for nothing", async () => {
    const next = releaseOf("motor", { revision: 2 });
    const state = stateIn({ events: [watched, unaided], modules: [next], earlier: [motor] });
    expect(state.missing).toContainEqual({ kind: "unaided", has: 0, needs: 1 });
    const stranger = person("A stranger");
    const theirs = await observed("2026-05-08T19:00:00Z", {}, stranger);
    expect(stateIn({ events: [...theory, theirs] }).missing).toContainEqual({
      kind: "unaided",
      has: 0,
      needs: 1,
    });
  });
});

describe("a sign-off", () => {
  test("holds to the end of its last day in the programme's time zone", () => {
    // 12 months from 10 May: to the end of 10 May 2027, which is 23:00 UTC in summer.
    const on = (date: string) => stateIn({ events: whole, on: date });
    expect(on("2026-05-10")).toMatchObject({
      ...{ standing: "signed off", level: "alone", until: "2027-05-10", revision: 1, missing: [] },
      mentors: ["ann-mentor"],
    });
    expect(on("2027-03-10").standing).toBe("signed off");
    // 60 days before.
    expect(on("2027-03-11").standing).toBe("lapses soon");
    expect(on("2027-05-10").standing).toBe("lapses soon");
    expect(on("2027-05-11")).toMatchObject({ standing: "lapsed", until: "2027-05-10", level: "alone" });
  });

  test("to renew it, one is watched again", async () => {
    const soon = stateIn({ events: whole, on: "2027-05-01" });
    expect(soon.missing.map(({ kind }) => kind)).toEqual(["watched", "unaided", "occasions", "mentors"]);
    const again = [
      await observed("2027-04-20T19:00:00Z", { outcome: "watched" }),
      await observed("2027-04-20T20:00:00Z"),
    ];
    expect(stateIn({ events: [...whole, ...again], on: "2027-05-01" })).toMatchObject({
      standing: "lapses soon",
      missing: [],
    });
    const renewal = await signedOff("2027-04-20T20:30:00Z");
    const renewed = stateIn({ events: [...whole, ...again, renewal], on: "2027-05-20" });
    expect(renewed).toMatchObject({ standing: "signed off", until: "2028-04-20" });
    const unearned = stateIn({ events: [...whole, renewal], on: "2027-05-20" });
    expect(unearned.standing).toBe("lapsed");
  });

  test("made early in the morning of the next day there, it is not known yet at the end of the day here", () => {
    expect(stateIn({ events: whole, on: "2026-05-09" }).standing).toBe("ready to be signed");
    const kiritimati = { timeZone: "Pacific/Kiritimati" };
    // 19:00 UTC on the 10th is 09:00 on the 11th there.
    expect(stateIn({ events: whole, on: "2026-05-10", programme: kiritimati }).standing).toBe(
      "ready to be signed",
    );
    expect(stateIn({ events: whole, on: "2026-05-11", programme: kiritimati }).standing).toBe("signed off");
  });

  test("of a day that is still to come counts for nothing, although it was brought in", async () => {
    const ahead = await statementEvent(
      signOffAt("2026-07-01T12:00:00Z", ann, jo, motor),
      ann,
      "2026-05-10T12:00:00Z",
    );
    const events = [...theory, watched, unaided, ahead];
    expect(stateIn({ events, on: "2026-06-30" }).standing).toBe("ready to be signed");
    expect(stateIn({ events, on: "2026-07-01" }).standing).toBe("signed off");
  });

  test("without what it rests on it counts for nothing", async () => {
    expect(stateIn({ events: [...theory, watched, signOff] }).standing).toBe("ready to be watched");
    const low = await signedOff("2026-05-10T19:00:00Z", { score: 0.5 });
    expect(stateIn({ events: [...theory, watched, unaided, low] }).standing).toBe("ready to be signed");
    const absent = { name: "Quiz", digest: theory[1]!.id };
    const resting = await signedOff("2026-05-10T19:00:00Z", { evidence: [absent] });
    expect(stateIn({ events: [...theory, watched, unaided, resting] }).standing).toBe("signed off");
    const without = theory.filter(({ id }) => id !== absent.digest);
    expect(stateIn({ events: [...without, watched, unaided, resting] }).standing).toBe("under way");
  });

  test("one that never held uses nothing up", async () => {
    const early = await signedOff("2026-05-08T20:00:00Z");
    // At the time one observation was missing.
    expect(stateIn({ events: [...theory, watched, early] }).standing).toBe("ready to be watched");
    expect(stateIn({ events: [...theory, watched, early, unaided, signOff] }).standing).toBe("signed off");
  });

  test("may list a statement by any event that brought it in, or by itself", async () => {
    const { credential } = unaided as CredentialEvent;
    const again = eventAt("2026-05-20T08:00:00Z", { kind: "observation", credential });
    for (const digest of [unaided.id, again.id, digestOfCredential(credential)]) {
      const resting = await signedOff("2026-05-10T19:00:00Z", { evidence: [{ name: "Unaided", digest }] });
      const events = [...theory, watched, unaided, again, resting];
      expect(stateIn({ events }).standing).toBe("signed off");
    }
    const stranger = person("A stranger");
    const theirs = await observed("2026-05-09T19:00:00Z", {}, stranger);
    const evidence = [{ name: "Unaided", digest: theirs.id }];
    const resting = await signedOff("2026-05-10T19:00:00Z", { evidence });
    expect(stateIn({ events: [...theory, watched, unaided, theirs, resting] }).standing).not.toBe(
      "signed off",
    );
  });

  test("under eye leaves the way to alone open, and shows its level", async () => {
    const underEye = await signedOff("2026-05-02T19:00:00Z", { level: "under eye" });
    expect(stateIn({ events: [...theory, underEye] })).toMatchObject({
      standing: "ready to be watched",
      level: "under eye",
      until: "2027-05-02",
    });
  });

  test("of the highest level that counts is shown", async () => {
    const teach = await signedOff("2026-05-10T20:00:00Z", { level: "may teach" }, ben);
    expect(stateIn({ events: [...whole, teach] })).toMatchObject({
      level: "may teach",
      mentors: ["ben-mentor", "ann-mentor"],
    });
  });

  test("withdrawn counts no more, whatever else a list says", () => {
    const place = signOffAt("2026-05-10T19:00:00Z", ann, jo, motor).statusIndex;
    const statuses = [withdrawalList(ann), withdrawalList(ann, [place + 1])];
    expect(stateIn({ events: whole, statuses }).standing).toBe("signed off");
    expect(
      stateIn({ events: whole, statuses: [withdrawalList(ann), withdrawalList(ann, [place])] }),
    ).toMatchObject({
      standing: "withdrawn",
      level: "alone",
    });
  });

  test("can't be confirmed by a list that is missing, has run out, or is another mentor's", () => {
    const expired = withdrawalList(ann, [], "2026-06-29T12:00:00Z");
    const forged = { ...withdrawalList(ann), issuer: ben.did };
    for (const statuses of [[], [expired], [forged], [withdrawalList(ben)]])
      expect(stateIn({ events: whole, statuses })).toMatchObject({ standing: "unconfirmed", level: "alone" });
    const today = stateIn({ events: whole, statuses: [expired], listsOn: "2026-06-28" });
    expect(today.standing).toBe("signed off");
  });

  test("rests on observations that must be confirmed too", async () => {
    const byBen = await observed("2026-05-09T19:30:00Z", {}, ben);
    const place = observationAt("2026-05-09T19:30:00Z", ben, jo, motor).statusIndex;
    const events = [...theory, watched, byBen, signOff];
    expect(stateIn({ events }).standing).toBe("signed off");
    expect(stateIn({ events, statuses: [withdrawalList(ann)] }).standing).toBe("unconfirmed");
    expect(stateIn({ events, statuses: [withdrawalList(ann), withdrawalList(ben, [place])] }).standing).toBe(
      "ready to be watched",
    );
  });

  test("on an earlier revision holds, or must be made again, as the rules say", () => {
    const next = (newRevision: "holds" | "again") =>
      stateIn({
        events: whole,
        modules: [releaseOf("motor", { revision: 2, rules: rulesWith({ newRevision }) })],
        earlier: [motor],
      });
    expect(next("holds")).toMatchObject({ standing: "signed off", revision: 1, until: "2027-05-10" });
    expect(next("again")).toMatchObject({ standing: "earlier revision", revision: 1 });
    expect(next("again").missing.map(({ kind }) => kind)).toContain("reading");
  });

  test("on a text that the programme does not list counts for nothing", () => {
    const other = releaseOf("motor", { content: releaseOf("other").content });
    expect(stateIn({ events: whole, modules: [other] }).standing).not.toBe("signed off");
  });

  test("a typo put right under the same revision takes nothing away", () => {
    const mended = releaseOf("motor", { content: releaseOf("mended").content });
    const card = {
      ...cardOf(mended),
      revisions: [{ revision: 1, content: [motor.content, mended.content] }],
    };
    const state = stateOf({
      record: recordOf(jo, whole),
      rules: programmeWith(mentors),
      releases: new Releases([card], [motor, mended]),
      statuses: [withdrawalList(ann)],
      on: "2026-06-30",
      primitives: nodePrimitives,
    }).get("motor")!;
    expect(state.standing).toBe("signed off");
  });

  test("on a revision that the programme has withdrawn counts no more from that date", () => {
    const withdrawn = { from: "2026-06-15", because: "the brake step was wrong" };
    const card = { ...cardOf(motor), revisions: [{ revision: 1, content: [motor.content], withdrawn }] };
    const on = (date: string) =>
      stateOf({
        record: recordOf(jo, whole),
        rules: programmeWith(mentors),
        releases: new Releases([card], [motor]),
        statuses: [withdrawalList(ann)],
        on: date,
        primitives: nodePrimitives,
      }).get("motor")!.standing;
    expect(on("2026-06-14")).toBe("signed off");
    expect(on("2026-06-15")).toBe("withdrawn");
  });
});

describe("who signs", () => {
  const withAnn = (more: object) => ({ programme: { mentors: [mentorRow(ann, more), mentorRow(ben)] } });

  test.each([
    ["nobody whom the programme lists", { key: ben.did }],
    ["not yet a mentor on the day", { from: "2026-05-11" }],
    ["no mentor any more", { to: "2026-05-09" }],
    ["a mentor for other modules", { maySign: ["governor"] }],
    ["a mentor up to a lower level", { highestLevel: "under eye" }],
    ["the trainee themself", { ownRecords: [jo.did] }],
    ["whoever has stolen the key", { compromised: "2026-06-01" }],
  ])("%s: the sign-off counts for nothing", (_, more) => {
    expect(stateIn({ events: whole, ...withAnn(more) }).standing).not.toBe("signed off");
  });

  test("a mentor from and to include both days", () => {
    const days = withAnn({ from: "2026-05-08", to: "2026-05-10" });
    expect(stateIn({ events: whole, ...days }).standing).toBe("signed off");
  });

  test("of a stolen key what the programme keeps still counts, and before the date all of it", () => {
    const keep = [watched, unaided, signOff].map((event) =>
      digestOfCredential((event as CredentialEvent).credential),
    );
    const stolen = { compromised: "2026-06-01" };
    expect(stateIn({ events: whole, ...withAnn({ ...stolen, keep }) }).standing).toBe("signed off");
    expect(stateIn({ events: whole, ...withAnn({ ...stolen, keep: keep.slice(1) }) }).standing).not.toBe(
      "signed off",
    );
    expect(stateIn({ events: whole, ...withAnn(stolen), on: "2026-05-31" }).standing).toBe("signed off");
  });
});

describe("modules that others build on", () => {
  const governor = releaseOf("governor", { needs: ["motor"] });
  const modules = [governor, motor];
  let both: RecordEvent[];

  beforeAll(async () => {
    both = [
      ...whole,
      ...theoryAt("2026-05-11T18:00:00Z", jo, governor),
      await observed("2026-05-12T19:00:00Z", { outcome: "watched" }, ann, governor),
      await observed("2026-05-13T19:00:00Z", {}, ann, governor),
      await signedOff("2026-05-14T19:00:00Z", {}, ann, governor),
    ];
  });

  test("a needed module comes first", () => {
    const events = theoryAt("2026-05-11T18:00:00Z", jo, governor);
    const state = stateIn({ events, modules }, "governor");
    expect(state.standing).toBe("under way");
    expect(state.missing[0]).toEqual({ kind: "module", module: "motor" });
  });

  test("a lapsed one suspends what builds on it, or does not, as the programme says", () => {
    expect(stateIn({ events: both, modules }, "governor").standing).toBe("signed off");
    const later = { events: both, modules, on: "2027-06-01" };
    const suspended = stateIn({ ...later, programme: { lapsedNeeds: "suspend" } }, "governor");
    expect(suspended).toMatchObject({ standing: "suspended", level: "alone" });
    expect(suspended.missing).toEqual([{ kind: "module", module: "motor" }]);
    expect(stateIn({ ...later, programme: { lapsedNeeds: "keep" } }, "governor").standing).toBe("signed off");
  });

  test("one that was withdrawn, or never signed, suspends under either rule", () => {
    for (const lapsedNeeds of ["keep", "suspend"] as const) {
      const programme = { lapsedNeeds };
      const never = both.filter((event) => event !== signOff);
      expect(stateIn({ events: never, modules, programme }, "governor").standing).toBe("suspended");
    }
  });

  test("modules that need one another in a circle wait for ever, and do no harm", () => {
    const circle = [releaseOf("motor", { needs: ["governor"] }), releaseOf("governor", { needs: ["motor"] })];
    const states = statesIn({ events: theory, modules: circle });
    expect([...states.values()].map(({ standing }) => standing)).toEqual(["under way", "not begun"]);
  });
});

describe("a new key", () => {
  const newJo = person("Jo, new phone");
  const events = () => whole;
  const handover = (mentor = ann) =>
    statementEvent(newKeyAt("2026-06-01T12:00:00Z", mentor, newJo, jo.did), mentor);

  test("old events and sign-offs count for it once a mentor has signed it over", async () => {
    expect(stateIn({ events: events(), owner: newJo }).standing).not.toBe("signed off");
    expect(stateIn({ events: [...events(), await handover()], owner: newJo }).standing).toBe("signed off");
  });

  test("a chain of keys counts, link by link", async () => {
    const third = person("Jo, third phone");
    const link = await statementEvent(newKeyAt("2026-06-02T12:00:00Z", ben, third, newJo.did), ben);
    const chain = [...events(), link];
    expect(stateIn({ events: chain, owner: third }).standing).not.toBe("signed off");
    expect(stateIn({ events: [...chain, await handover()], owner: third }).standing).toBe("signed off");
  });

  test("nobody but a mentor signs it over, and no mentor their own", async () => {
    const stranger = person("A stranger");
    const forged = [...events(), await handover(stranger)];
    expect(stateIn({ events: forged, owner: newJo }).standing).not.toBe("signed off");
    const own = { mentors: [mentorRow(ann), mentorRow(ben, { ownRecords: [jo.did] })] };
    const self = [...events(), await handover(ben)];
    expect(stateIn({ events: self, owner: newJo, programme: own }).standing).not.toBe("signed off");
  });
});

test("an event after the date is not known on it", () => {
  const late = eventAt("2026-06-30T23:00:00Z", { kind: "read", module: "motor", revision: 1 });
  // 23:00 UTC on 30 June is midnight in London: 1 July.
  expect(stateIn({ events: [late], on: "2026-06-30" }).standing).toBe("not begun");
  expect(stateIn({ events: [late], on: "2026-07-01" }).standing).toBe("under way");
});
