/** The roster and the recall of a revision, as their users call them. */
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import type { Release } from "../../src/engine/competency/release.ts";
import { callCommand } from "../support/call-command.ts";
import { ann, ben, clubFiles, listText, releasesIn, signedOff, writeRecordFile } from "../support/club.ts";
import { observationAt, person, signOffAt, statementEvent, theoryAt } from "../support/competency.ts";
import { temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { runTool } from "../support/run-command.ts";

const [jo, sam, kit] = [person("Jo"), person("Sam"), person("Kit")];

let content: string;
let records: string;
let motor: Release;
let governor: Release;

beforeEach(async () => {
  content = writeFolder(clubFiles);
  mkdirSync(join(content, "withdrawals"));
  writeFileSync(join(content, "withdrawals/ann.json"), await listText(ann));
  writeFileSync(join(content, "withdrawals/ben.json"), await listText(ben));
  records = temporaryFolder();
  const releases = releasesIn(content);
  motor = releases.get("motor")!;
  governor = releases.get("governor")!;
});

async function call(...args: string[]) {
  const called = await callCommand(...args, "--content", content);
  expect(called.err).not.toMatch(/^\s+at .+:\d+/m);
  return { ...called, json: () => JSON.parse(called.out) };
}

const evidenceOf = (events: readonly { kind: string; id: string }[]) => ({
  evidence: events.filter(({ kind }) => kind === "quiz").map(({ id }) => ({ name: "Quiz", digest: id })),
});

/** Jo is signed off on both, Sam on the motor until March 2027, Kit has done the theory of the motor. */
async function threePeople(): Promise<void> {
  await writeRecordFile(records, "jo", jo, [
    ...(await signedOff(jo, motor)),
    ...(await signedOff(jo, governor, ann, "2026-04")),
  ]);
  const short = signOffAt("2026-03-17T20:00:00Z", ann, sam, motor, { validUntil: "2027-01-10T23:59:59Z" });
  const all = await signedOff(sam, motor);
  const withoutSignOff = all.filter(({ kind }) => kind !== "sign-off");
  await writeRecordFile(records, "sam", sam, [
    ...withoutSignOff,
    await statementEvent({ ...short, ...evidenceOf(all) }, ann),
  ]);
  await writeRecordFile(records, "kit", kit, theoryAt("2026-11-01T19:00:00Z", kit, motor));
}

describe("roster", () => {
  const onDay = ["--on", "2026-11-27"];

  test("says who may do what, who is ready, what lapses, what one person holds, and which files are broken", async () => {
    await threePeople();
    writeFileSync(join(records, "torn.record.json"), "{");
    const joFile = join(records, "jo.record.json");
    writeFileSync(
      join(records, "edited.record.json"),
      readFileSync(joFile, "utf8").replace('"name": "Jo"', '"name": "Jon"'),
    );
    const { code, out, err } = await call("roster", records, ...onDay, "--json");
    const { on, people, modules, lapsing, handovers, unheld, broken } = JSON.parse(out);
    expect(on).toBe("2026-11-27");
    expect(people.map(({ name }: { name: string }) => name)).toEqual(["Jo", "Kit", "Sam"]);
    expect(people[0]).toMatchObject({
      key: jo.did,
      handedIn: "2026-11-27T20:00:00.000Z",
      files: [joFile],
      modules: {
        motor: { standing: "signed off", level: "alone", until: "2028-03-17" },
        governor: { standing: "signed off", until: "2028-04-17" },
      },
    });
    expect(people[1].modules).toEqual({
      motor: expect.objectContaining({ standing: "ready to be watched" }),
    });
    const named = (list: { name: string }[]) => list.map(({ name }) => name);
    const ofMotor = modules.find(({ module }: { module: string }) => module === "motor");
    expect(named(ofMotor.alone)).toEqual(["Jo", "Sam"]);
    expect(named(ofMotor.readyToBeWatched)).toEqual(["Kit"]);
    expect(lapsing).toEqual([{ name: "Sam", key: sam.did, module: "motor", until: "2027-01-10" }]);
    expect(handovers).toMatchObject([{ module: "governor", holder: { name: "Jo" } }]);
    expect(handovers[0].unwritten).toContain("what is checked once the work is done");
    expect(unheld).toEqual([]);
    expect(
      broken.map(({ problems }: { problems: { code: string }[] }) => problems.map((one) => one.code)),
    ).toEqual([["owner-signature"], ["not-json"]]);
    expect(code).toBe(1);
    expect(err).toContain("torn.record.json");
  });

  test("by a later day what lapsed has lapsed, by an earlier one nothing is signed yet", async () => {
    await threePeople();
    const standing = async (day: string) => {
      const { people } = JSON.parse((await call("roster", records, "--on", day, "--json")).out);
      const [ofSam] = people.filter(({ name }: { name: string }) => name === "Sam");
      return ofSam?.modules.motor?.standing;
    };
    expect(await standing("2027-01-10")).toBe("lapses soon");
    expect(await standing("2027-01-11")).toBe("lapsed");
    expect(await standing("2026-03-16")).toBe("ready to be watched");
    expect(await standing("2026-03-02")).toBeUndefined();
  });

  test("nobody may work alone on a day to which no list of withdrawals reaches, and it is said why", async () => {
    await threePeople();
    writeFileSync(join(content, "withdrawals/ann.json"), await listText(ann, [], "2027-11-29T00:00:00Z"));
    expect((await call("roster", records, "--on", "2027-11-28")).out).toContain("The motor: Jo\n");
    const { code, out, json } = {
      ...(await call("roster", records, "--on", "2028-01-01")),
      json: JSON.parse((await call("roster", records, "--on", "2028-01-01", "--json")).out),
    };
    expect(code).toBe(0);
    expect(out).not.toContain("May work alone\n");
    expect(out).toContain(
      "Jo: The motor (can't be confirmed: of ann not every list of withdrawals reaches the end of 2028-01-01)",
    );
    expect(json.modules.flatMap(({ alone }: { alone: unknown[] }) => alone)).toEqual([]);
    expect(json.people[0].modules.motor.standing).toBe("unconfirmed");
  });

  test("a sign-off that has ended is listed with the reason: a new revision, a day that is over", async () => {
    await threePeople();
    const lapsed = (await call("roster", records, "--on", "2027-02-01")).out;
    expect(lapsed).toContain("  Sam: The motor (lapsed after 2027-01-10)\n");
    await call("record", "release");
    const file = join(content, "modules/motor/module.md");
    writeFileSync(file, readFileSync(file, "utf8").replace("revision: 1", "revision: 2"));
    await call("record", "release");
    const { out } = await call("roster", records, "--on", "2027-02-01");
    expect(out).toContain(
      [
        "Sign-offs that do not count",
        "  Jo: The governor (suspended: no sign-off that counts on The motor)",
        "  Jo: The motor (signed on revision 1, which does not carry over to the present one)",
        "  Sam: The motor (signed on revision 1, which does not carry over to the present one)",
      ].join("\n"),
    );
    const { ended } = JSON.parse((await call("roster", records, "--on", "2027-02-01", "--json")).out);
    expect(ended[1]).toEqual({
      ...{ name: "Jo", key: jo.did, module: "motor" },
      ...{ because: "earlier revision", revision: 1, until: "2028-03-17" },
    });
  });

  test("a sign-off whose observation was withdrawn is listed, after a new revision too", async () => {
    await writeRecordFile(records, "jo", jo, await signedOff(jo, motor));
    // As `signedOff` has them: unaided on the 17th.
    const { statusIndex } = observationAt("2026-03-17T19:00:00Z", ann, jo, motor);
    writeFileSync(join(content, "withdrawals/ann.json"), await listText(ann, [statusIndex]));
    const line =
      "  Jo: The motor (signed on revision 1, and not all that it rests on counts; record check tells what)";
    expect((await call("roster", records, ...onDay)).out).toContain(line);
    await call("record", "release");
    const file = join(content, "modules/motor/module.md");
    writeFileSync(file, readFileSync(file, "utf8").replace("revision: 1", "revision: 2"));
    await call("record", "release");
    expect((await call("roster", records, ...onDay)).out).toContain(line);
  });

  test("two files of one person are one person; text, table and page say the same", async () => {
    await threePeople();
    mkdirSync(join(records, "older"));
    await writeRecordFile(
      join(records, "older"),
      "kit",
      kit,
      theoryAt("2026-10-01T19:00:00Z", kit, governor),
    );
    const [page, table] = [join(temporaryFolder(), "roster.html"), join(temporaryFolder(), "roster.csv")];
    const { code, out, err } = await call("roster", records, ...onDay, "--html", page, "--csv", table);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(out).toContain("A restoring club: 2026-11-27, 3 people, 2 modules");
    expect(out).toContain("May work alone\n  The governor: Jo\n  The motor: Jo, Sam\n");
    expect(out).toContain("2027-01-10  Sam: The motor");
    const rows = readFileSync(table, "utf8").trimEnd().split("\n");
    expect(rows[0]).toBe("name,key,handed_in,governor,motor");
    expect(rows.slice(1)).toEqual([
      `Jo,${jo.did},2026-11-27T20:00:00.000Z,signed off until 2028-04-17,signed off until 2028-03-17`,
      `Kit,${kit.did},2026-11-27T20:00:00.000Z,under way,ready to be watched`,
      `Sam,${sam.did},2026-11-27T20:00:00.000Z,,lapses soon until 2027-01-10`,
    ]);
    const text = readFileSync(page, "utf8");
    expect(text).toContain('<th scope="row">Jo</th><td>signed off until 2028-04-17</td>');
    expect(text).not.toMatch(/<script|<link|src=|https?:\/\//);
  });

  test("a name that begins like a formula or holds marks is harmless in table and page", async () => {
    const odd = person('=1+1,"<b>');
    await writeRecordFile(records, "odd", odd, theoryAt("2026-11-01T19:00:00Z", odd, motor));
    const [page, table] = [join(temporaryFolder(), "roster.html"), join(temporaryFolder(), "roster.csv")];
    await call("roster", records, ...onDay, "--html", page, "--csv", table);
    expect(readFileSync(table, "utf8")).toContain('"\'=1+1,""<b>",');
    expect(readFileSync(page, "utf8")).not.toContain("<b>");
  });

  test("tonight, with these people present", async () => {
    await threePeople();
    const tonight = async (present: string) =>
      JSON.parse((await call("roster", records, ...onDay, "--present", present, "--json")).out).tonight.map(
        (module: Record<string, { name: string }[] | string>) => [
          module.module,
          ...["alone", "underEye", "waitingForMentor"].map((list) =>
            (module[list] as { name: string }[]).map(({ name }) => name),
          ),
        ],
      );
    expect(await tonight("Jo, Kit")).toEqual([
      ["governor", [], [], ["Jo"]],
      ["motor", ["Jo"], [], []],
    ]);
    expect(await tonight("jo,kit,ANN")).toEqual([
      ["governor", ["Jo"], [], []],
      ["motor", ["Jo"], ["Kit"], []],
    ]);
    expect(await call("roster", records, "--present", "Nobody")).toMatchObject({
      code: 2,
      err: expect.stringContaining('nobody is called "nobody"'),
    });
  });

  test.each([
    [[], 2, "roster DIR"],
    [["nowhere"], 1, "can't be read"],
    [["here", "--on", "today"], 2, "is no date"],
  ])("%j", async (args, code, says) => {
    expect(await call("roster", ...args)).toMatchObject({
      code,
      out: "",
      err: expect.stringContaining(says),
    });
  });
});

describe("record recall", () => {
  const args = ["record", "recall", "motor", "--revision", "1", "--because", "The arbor can slip."];

  test("names whom and what it touches, and changes nothing until it is told to", async () => {
    await threePeople();
    await call("record", "release");
    const told = await call(...args, "--records", records, "--from", "2026-11-27", "--json");
    expect(told).toMatchObject({ code: 0, err: "" });
    const { stopped, learning, alsoStopped, notice, marked } = told.json();
    const named = (list: { name: string }[]) => list.map(({ name }) => name).sort();
    expect(named(stopped)).toEqual(["Jo", "Sam"]);
    expect(named(learning)).toEqual(["Kit"]);
    expect(alsoStopped).toMatchObject([{ module: "governor", people: [{ name: "Jo" }] }]);
    expect(notice.heading).toBe("Stop work: The motor, revision 1, from 2026-11-27");
    expect(marked).toBeNull();
    const roster = () => call("roster", records, "--on", "2026-11-27", "--json");
    expect((await roster()).json().modules).toMatchObject([
      { alone: [{ name: "Jo" }] },
      { alone: [{ name: "Jo" }, { name: "Sam" }] },
    ]);
    const page = join(temporaryFolder(), "notice.html");
    const done = await call(...args, "--records", records, "--from", "2026-11-27", "--mark", "--html", page);
    expect(done).toMatchObject({
      code: 0,
      out: expect.stringContaining("Written: modules/motor/revisions.yaml"),
    });
    expect(readFileSync(page, "utf8")).toContain("The arbor can slip.");
    expect((await call("check")).code).toBe(0);
    expect((await roster()).json().modules).toMatchObject([{ alone: [] }, { alone: [] }]);
    expect(
      (await call(...args, "--records", records, "--from", "2026-11-27", "--json")).json().stopped,
    ).toHaveLength(2);
  });

  test("names for a day ahead also those whom the lists of today confirm and those of that day will not", async () => {
    await threePeople();
    writeFileSync(join(content, "withdrawals/ann.json"), await listText(ann, [], "2027-11-29T00:00:00Z"));
    const made = await call(
      ...["record", "recall", "motor", "--revision", "1", "--records", records],
      ...["--because", "a guard was left out", "--from", "2028-01-01", "--json"],
    );
    expect(JSON.parse(made.out).stopped.map(({ name }: { name: string }) => name)).toContain("Jo");
  });

  test.each([
    [["motor", "--revision", "1"], "--because"],
    [["moter", "--revision", "1", "--because", "x"], "governor, motor"],
    [["motor", "--revision", "7", "--because", "x"], "no revision 7"],
    [["motor", "--revision", "one", "--because", "x"], "is no revision"],
  ])("%j is a wrong call", async (given, says) => {
    expect(await call("record", "recall", ...given, "--records", records)).toMatchObject({
      code: 2,
      out: "",
      err: expect.stringContaining(says),
    });
  });
});

test("on several threads it is the roster that one thread makes, copies of a record being one person", async () => {
  await threePeople();
  for (const name of ["jo", "sam", "kit"]) {
    const file = join(records, `${name}.record.json`);
    for (let copy = 0; copy < 280; copy++) copyFileSync(file, join(records, `${name}-${copy}.record.json`));
  }
  writeFileSync(join(records, "torn.record.json"), "{");
  const args = ["roster", records, "--on", "2026-11-27", "--content", content, "--json"];
  const [alone, together] = [await callCommand(...args), await runTool(args)];
  expect(together).toMatchObject({ code: 1, stdout: alone.out, stderr: alone.err });
  const { people } = JSON.parse(alone.out);
  expect(people.map(({ files }: { files: string[] }) => files.length)).toEqual([281, 281, 281]);
}, 120_000);
