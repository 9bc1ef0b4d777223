/** Who may do what, over several people; who could be next; who may work tonight. */
import { beforeAll, describe, expect, test } from "vitest";
import { nodePrimitives } from "../../../src/cli/primitives.ts";
import type { RecordEvent } from "../../../src/engine/competency/event.ts";
import { beforeWithdrawing, recallOf } from "../../../src/engine/competency/recall.ts";
import type { Release } from "../../../src/engine/competency/release.ts";
import { Releases } from "../../../src/engine/competency/releases.ts";
import { evening } from "../../../src/engine/competency/roster/evening.ts";
import { type RosterRow, rosterRow } from "../../../src/engine/competency/roster/row.ts";
import { byPerson, sameNames, togetherAs } from "../../../src/engine/competency/roster/same-person.ts";
import { type Entry, rosterSummary } from "../../../src/engine/competency/roster/summary.ts";
import { type Situation, situationOf } from "../../../src/engine/competency/situation.ts";
import {
  cardOf,
  mentorRow,
  newKeyAt,
  observationAt,
  type Person,
  person,
  programmeWith,
  recordOf,
  releaseOf,
  rulesWith,
  signOffAt,
  statementEvent,
  theoryAt,
  withdrawalList,
} from "../../support/competency.ts";

const [ann, ben] = [person("Ann Mentor"), person("Ben Mentor")];
const [jo, sam, kit, lou] = [person("Jo"), person("Sam"), person("Kit"), person("Lou")];
const joAgain = person("Jo's new phone");

const motor = releaseOf("motor", { rules: rulesWith({ months: 12 }) });
const governor = releaseOf("governor", {
  needs: ["motor"],
  rules: rulesWith({ mentorPresent: true, traineesPerMentor: 2 }),
});
const polish = releaseOf("polish");
const modules = [motor, governor, polish];
const benRow = mentorRow(ben, { maySign: ["motor"], ownRecords: [lou.did] });

const situationOn = (on: string, cards = modules.map((one) => cardOf(one))): Situation =>
  situationOf({
    rules: programmeWith([mentorRow(ann), benRow]),
    releases: new Releases(cards, modules),
    statuses: [withdrawalList(ann), withdrawalList(ben)],
    on,
  });
const june = situationOn("2026-06-30");

const watched = async (who: Person, release: Release, day = "2026-05-08") => [
  await statementEvent(observationAt(`${day}T19:00:00Z`, ann, who, release, { outcome: "watched" }), ann),
  await statementEvent(observationAt(`${day}T20:00:00Z`, ann, who, release), ann),
];
const whole = async (who: Person, release: Release) => [
  ...theoryAt("2026-05-01T18:00:00Z", who, release),
  ...(await watched(who, release)),
  await statementEvent(signOffAt("2026-05-10T19:00:00Z", ann, who, release), ann),
];

const rowOf = (who: Person, events: readonly RecordEvent[], file: string, situation = june): RosterRow =>
  rosterRow(
    { record: recordOf(who, events), files: [file], written: "2026-06-01T00:00:00.000Z" },
    situation,
    nodePrimitives,
  );

let events: Map<Person, RecordEvent[]>;
let rows: RosterRow[];

beforeAll(async () => {
  events = new Map([
    [jo, [...(await whole(jo, motor)), ...(await whole(jo, governor))]],
    [sam, [...(await whole(sam, motor)), ...theoryAt("2026-05-11T18:00:00Z", sam, governor)]],
    [kit, [...theoryAt("2026-05-11T18:00:00Z", kit, motor), ...(await watched(kit, motor))]],
    [lou, theoryAt("2026-05-11T18:00:00Z", lou, motor)],
  ]);
  rows = [...events].map(([who, list]) => rowOf(who, list, `${who.name}.record.json`));
});

const names = (list: readonly (Entry | RosterRow)[]) =>
  list.map((each) => ("person" in each ? each.person.name : each.name));

describe("the roster", () => {
  test("lists people by module, as far as they are with it", () => {
    const unwritten = new Map([["governor", ["what the spring should measure"]]]);
    const summary = rosterSummary({ rows, broken: [], situation: june, unwritten });
    const found = summary.modules.map(({ module, alone, toSign, toWatch, others }) => [
      ...[module, names(alone), names(toSign), names(toWatch), names(others)],
    ]);
    expect(found).toEqual([
      ["motor", ["Jo", "Sam"], ["Kit"], ["Lou"], []],
      ["governor", ["Jo"], [], ["Sam"], []],
      ["polish", [], [], [], []],
    ]);
    expect(names(summary.people)).toEqual(["Jo", "Kit", "Lou", "Sam"]);
    expect(summary.unheld.map(({ module }) => module)).toEqual(["polish"]);
    expect(summary.soon).toEqual([]);
  });

  test("says what leaves with a single person, who could be next, and what to ask while they are there", () => {
    const unwritten = new Map([["governor", ["what the spring should measure"]]]);
    const { handovers } = rosterSummary({ rows, broken: [], situation: june, unwritten });
    expect(handovers).toHaveLength(1);
    expect(handovers[0]).toMatchObject({ module: "governor", unwritten: ["what the spring should measure"] });
    expect(handovers[0]!.holder.person.name).toBe("Jo");
    expect(names(handovers[0]!.next)).toEqual(["Sam"]);
  });

  test("tells what lapses soon, the first first, and who has lapsed is there to be watched", () => {
    const spring = situationOn("2027-05-01");
    const late = rowOf(jo, events.get(jo)!, "jo", spring);
    const soon = rosterSummary({ rows: [late], broken: [], situation: spring, unwritten: new Map() }).soon;
    expect(soon.map(({ state }) => [state.module, state.until])).toEqual([["motor", "2027-05-10"]]);
    const summer = situationOn("2027-06-01");
    const lapsed = rowOf(sam, events.get(sam)!, "sam", summer);
    const { modules: found } = rosterSummary({
      rows: [lapsed],
      broken: [],
      situation: summer,
      unwritten: new Map(),
    });
    expect(names(found[0]!.toWatch)).toEqual(["Sam"]);
  });

  test("tells who was stopped for safety since", async () => {
    const stop = observationAt("2026-06-01T19:00:00Z", ben, sam, motor, { outcome: "stopped for safety" });
    const row = rowOf(sam, [...events.get(sam)!, await statementEvent(stop, ben)], "sam");
    const { stopped } = rosterSummary({ rows: [row], broken: [], situation: june, unwritten: new Map() });
    expect(stopped.map(({ person: { name }, state }) => [name, state.stopped])).toEqual([
      ["Sam", "2026-06-01"],
    ]);
  });

  test("bears files that could not be read beside the people", () => {
    const broken = [
      { file: "x.record.json", problems: [{ code: "not-json" as const, message: "Cut short." }] },
    ];
    const summary = rosterSummary({ rows, broken, situation: june, unwritten: new Map() });
    expect(summary.broken).toEqual(broken);
    expect(summary.people).toHaveLength(4);
  });
});

describe("one person with several files", () => {
  test("is one row: copies of a record, and a record that goes on under a new key", async () => {
    const handover = await statementEvent(newKeyAt("2026-06-02T12:00:00Z", ann, joAgain, jo.did), ann);
    const half = events.get(jo)!.slice(0, 4);
    const rest = events.get(jo)!.slice(4);
    const handedIn = [
      { record: recordOf(jo, half), files: ["phone"], written: "2026-05-20T00:00:00.000Z" },
      { record: recordOf(sam, events.get(sam)!), files: ["sam"], written: "2026-05-20T00:00:00.000Z" },
      { record: recordOf(jo, rest), files: ["laptop"], written: "2026-05-21T00:00:00.000Z" },
      { record: recordOf(joAgain, [handover]), files: ["new phone"], written: "2026-06-03T00:00:00.000Z" },
    ];
    const all = handedIn.map((each) => rosterRow(each, june, nodePrimitives));
    const groups = byPerson(all);
    expect(groups.map((group) => group.flatMap(({ files }) => files))).toEqual([
      ["phone", "laptop", "new phone"],
      ["sam"],
    ]);
    const [, , ...others] = handedIn;
    const one = togetherAs(groups[0]!, [handedIn[0]!, ...others]);
    expect(one).toMatchObject({
      files: ["phone", "laptop", "new phone"],
      written: "2026-06-03T00:00:00.000Z",
    });
    const row = rosterRow(one, june, nodePrimitives);
    expect(row.owner).toBe(joAgain.did);
    expect(row.states.get("governor")!.standing).toBe("signed off");
  });

  test("keys that nobody has signed over stay apart, but are shown as one name", () => {
    const other = rowOf({ ...person("Another"), name: " jo " }, [], "other");
    expect(byPerson([...rows, other])).toHaveLength(5);
    expect(sameNames([...rows, other]).map(names)).toEqual([["Jo", " jo "]]);
  });

  test("thousands of copies of one record are one person, in no time that grows with their square", () => {
    const [row] = rows;
    const copies = Array.from({ length: 20_000 }, (_, place) => ({ ...row!, files: [`${place}`] }));
    const linked = copies.map((copy, place) => ({
      ...copy,
      owner: `key ${place}`,
      keys: [`key ${place}`, `key ${Math.max(0, place - 1)}`],
    }));
    expect(byPerson(copies)).toHaveLength(1);
    expect(byPerson(linked)).toHaveLength(1);
    expect(byPerson(linked.toReversed())[0]).toHaveLength(20_000);
  });
});

describe("who may work tonight", () => {
  const tonight = (present: readonly string[], mentors: readonly string[]) =>
    evening({
      rows: rows.filter(({ name }) => present.includes(name)),
      mentors: new Set(mentors),
      situation: june,
    }).map(({ module, alone, waiting, underEye, places }) => ({
      module,
      alone: names(alone),
      waiting: names(waiting),
      underEye: names(underEye),
      places,
    }));

  test("without a mentor, only what may be done without one in the room", () => {
    expect(tonight(["Jo", "Kit"], [])).toEqual([
      { module: "motor", alone: ["Jo"], waiting: [], underEye: [], places: undefined },
      { module: "governor", alone: [], waiting: ["Jo"], underEye: [], places: 0 },
    ]);
  });

  test("with one, those who have done the theory may work under their eye, as many as the rule says", () => {
    expect(tonight(["Jo", "Sam", "Kit"], ["ann-mentor"])).toEqual([
      { module: "motor", alone: ["Jo", "Sam"], waiting: [], underEye: ["Kit"], places: undefined },
      { module: "governor", alone: ["Jo"], waiting: [], underEye: ["Sam"], places: 2 },
    ]);
  });

  test("a mentor watches over nothing that they may not sign, and never over themself", () => {
    expect(tonight(["Jo", "Sam", "Lou"], ["ben-mentor"])).toEqual([
      { module: "motor", alone: ["Jo", "Sam"], waiting: [], underEye: [], places: undefined },
      { module: "governor", alone: [], waiting: ["Jo"], underEye: [], places: 0 },
    ]);
  });
});

describe("recall of a revision", () => {
  const withdrawing = {
    module: "motor",
    revision: 1,
    from: "2026-07-01",
    because: "the brake step was wrong",
  };

  test("lists whom it stops, who learns from it, and what builds on it", () => {
    const recall = recallOf(withdrawing, rows, june.releases.cards)!;
    expect(names(recall.stopped)).toEqual(["Jo", "Sam"]);
    expect(names(recall.learning)).toEqual(["Kit", "Lou"]);
    expect(recall.keeping).toEqual([]);
    expect(recall.alsoStopped.map(({ module, people }) => [module, names(people)])).toEqual([
      ["governor", ["Jo"]],
    ]);
  });

  test("prints a notice with names, in whole sentences", () => {
    const { notice } = recallOf(withdrawing, rows, june.releases.cards)!;
    expect(notice).toMatchObject({
      heading: "Stop work: The motor, revision 1, from 2026-07-01",
      because: "the brake step was wrong",
      people: ["Jo", "Sam"],
      modules: [{ title: "The governor", people: ["Jo"] }],
    });
    for (const line of notice.todo) expect(line).toMatch(/^[A-Z].*[.]$/);
  });

  test("nobody else is stopped when it is done: what it says is what comes of it", () => {
    const [card, ...others] = modules.map((one) => cardOf(one));
    const marked = { ...card!, revisions: [{ ...card!.revisions[0]!, withdrawn: withdrawing }] };
    const july = situationOn("2026-07-01", [marked, ...others]);
    const after = [...events].map(([who, list]) => rowOf(who, list, who.name, july));
    const standings = after.map(({ name, states }) => [
      name,
      states.get("motor")?.standing,
      states.get("governor")?.standing,
    ]);
    expect(standings).toEqual([
      ["Jo", "withdrawn", "suspended"],
      ["Sam", "withdrawn", "under way"],
      ["Kit", "ready to be watched", undefined],
      ["Lou", "ready to be watched", undefined],
    ]);
    const before = situationOn("2026-07-01", beforeWithdrawing([marked, ...others], withdrawing));
    expect(rowOf(jo, events.get(jo)!, "jo", before).states.get("motor")!.standing).toBe("signed off");
  });

  test("of a module that there is not is nothing", () => {
    expect(recallOf({ ...withdrawing, module: "__proto__" }, rows, june.releases.cards)).toBeUndefined();
  });

  test("who is signed off on another revision besides keeps that", async () => {
    const next = releaseOf("motor", { revision: 2, rules: rulesWith({ newRevision: "holds" }) });
    const situation = situationOf({
      rules: programmeWith([mentorRow(ann)]),
      releases: new Releases([cardOf(next, [motor])], [motor, next]),
      statuses: [withdrawalList(ann)],
      on: "2026-06-30",
    });
    const both = [...events.get(jo)!, ...(await whole(jo, next))];
    const recall = recallOf(withdrawing, [rowOf(jo, both, "jo", situation)], situation.releases.cards)!;
    expect([names(recall.stopped), names(recall.keeping)]).toEqual([[], ["Jo"]]);
  });
});
