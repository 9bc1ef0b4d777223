/** The commands key, record and roster, as their users call them. */
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { openKey } from "../../src/cli/key/key-file.ts";
import type { Release } from "../../src/engine/competency/release.ts";
import { callCommand } from "../support/call-command.ts";
import { ann, ben, clubFiles, listText, releasesIn, signedOff, writeRecordFile } from "../support/club.ts";
import { person, signed, signOffAt } from "../support/competency.ts";
import { temporaryFolder, writeFolder } from "../support/content-folder.ts";

const [jo, sam] = [person("Jo"), person("Sam")];
const words = "four words by chance";

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
  vi.stubEnv("BENCHWRIGHT_PASSPHRASE", words);
});
afterEach(() => vi.unstubAllEnvs());

async function call(...args: string[]) {
  const called = await callCommand(...args, "--content", content);
  expect(called.err).not.toMatch(/^\s+at .+:\d+/m);
  return { ...called, json: () => JSON.parse(called.out) };
}

const keyCall = async (...args: string[]) => {
  const called = await callCommand("key", ...args);
  return { ...called, json: () => JSON.parse(called.out) };
};

describe("key", () => {
  test("new makes a locked file that others can't read, public prints its did:key without a passphrase", async () => {
    const file = join(temporaryFolder(), "ann.key.json");
    const made = await keyCall("new", "--to", file, "--json");
    expect(made).toMatchObject({ code: 0, err: "" });
    const { key } = made.json();
    expect(key).toMatch(/^did:key:z6Mk[1-9A-HJ-NP-Za-km-z]{44}$/);
    expect(statSync(file).mode & 0o077).toBe(0);
    vi.unstubAllEnvs();
    expect(await keyCall("public", file)).toMatchObject({ code: 0, out: `${key}\n` });
    const [again, text] = [await keyCall("new", "--to", file), readFileSync(file, "utf8")];
    expect(again).toMatchObject({ code: 2, err: expect.stringContaining("exists already") });
    expect(readFileSync(file, "utf8")).toBe(text);
  });

  test.each([
    [["new"], 2, "--to FILE"],
    [["public"], 2, "key public FILE"],
    [["public", "nowhere.json"], 1, "There is no such file."],
    [[], 2, "key new"],
    [["lend"], 2, "There is no key lend"],
    [["public", "a", "b"], 2, 'takes no "b"'],
    [["public", "a", "--to", "b"], 2, "takes no --to"],
  ])("%j", async (args, code, says) => {
    expect(await keyCall(...args)).toMatchObject({ code, out: "", err: expect.stringContaining(says) });
  });

  test("a passphrase of few letters is refused, and nothing is written", async () => {
    vi.stubEnv("BENCHWRIGHT_PASSPHRASE", "short");
    const file = join(temporaryFolder(), "k.json");
    expect(await keyCall("new", "--to", file)).toMatchObject({
      code: 1,
      err: expect.stringContaining("12 letters"),
    });
    expect(existsSync(file)).toBe(false);
  });

  test("no option takes a passphrase", async () => {
    const { out } = await callCommand("help", "key");
    expect(out).not.toMatch(/^ {2}--pass/m);
    expect(out).toContain("BENCHWRIGHT_PASSPHRASE");
  });
});

describe("record check", () => {
  test("a whole record is in order, by the content and by the site that is built from it", async () => {
    const file = await writeRecordFile(records, "jo", jo, await signedOff(jo, motor));
    const checked = await call("record", "check", file, "--on", "2026-11-27", "--json");
    expect(checked.json()).toMatchObject({
      ok: true,
      files: [{ file, ok: true, what: "the record of Jo, 7 events", problems: [] }],
    });
    expect(checked).toMatchObject({ code: 0, err: "" });
    expect(await call("record", "check", file, "--on", "2026-11-27")).toMatchObject({
      code: 0,
      out: expect.stringContaining(`${file}: in order (the record of Jo, 7 events). Signed in it:\n`),
    });
    const site = join(temporaryFolder(), "site");
    expect((await call("build", "--fresh", "--to", site)).code).toBe(0);
    const bySite = await callCommand("record", "check", file, "--on", "2026-11-27", "--site", site);
    expect(bySite).toMatchObject({ code: 0, err: "" });
    writeFileSync(join(site, "withdrawals/ann.json"), await listText(ann, [], "2026-06-01T00:00:00Z"));
    const stale = await callCommand("record", "check", file, "--on", "2026-11-27", "--site", site, "--json");
    expect(codesIn(stale.out)).toEqual(["status-list", "status-list", "status-list"]);
  });

  test("a credential by itself is checked too; one that lapsed, one of a stranger, one from another mentor's module", async () => {
    const give = async (name: string, credential: unknown) => {
      const file = join(records, `${name}.json`);
      writeFileSync(file, JSON.stringify(credential));
      return file;
    };
    const good = await give("good", await signed(signOffAt("2026-03-17T20:00:00Z", ann, jo, motor), ann));
    const old = await give("old", await signed(signOffAt("2023-03-17T20:00:00Z", ann, jo, motor), ann));
    const strange = await give(
      "strange",
      await signed(signOffAt("2026-03-17T20:00:00Z", sam, jo, motor), sam),
    );
    const beyond = await give(
      "beyond",
      await signed(signOffAt("2026-03-17T20:00:00Z", ben, jo, governor), ben),
    );
    const { code, json } = await call(
      "record",
      "check",
      good,
      old,
      strange,
      beyond,
      "--on",
      "2026-11-27",
      "--json",
    );
    expect(code).toBe(1);
    const { ok, files } = json();
    expect(ok).toBe(false);
    const found = files.map((each: { problems: { code: string }[] }) => each.problems.map((one) => one.code));
    expect(found).toEqual([[], ["lapsed"], ["issuer-unlisted"], expect.arrayContaining(["not-allowed"])]);
  });

  test("for a day to which the mentor's list does not reach nothing is in order", async () => {
    writeFileSync(join(content, "withdrawals/ann.json"), await listText(ann, [], "2027-11-29T00:00:00Z"));
    const file = await writeRecordFile(records, "jo", jo, await signedOff(jo, motor));
    const on = async (day: string) => {
      const { code, out } = await call("record", "check", file, "--on", day, "--json");
      return { code, codes: [...new Set(codesIn(out))] };
    };
    expect(await on("2027-11-28")).toEqual({ code: 0, codes: [] });
    expect(await on("2028-01-01")).toEqual({ code: 1, codes: ["status-list"] });
    const { err } = await call("record", "check", file, "--on", "2028-01-01");
    expect(err).toContain("holds until 2027-11-29T00:00:00Z, and does not reach the end of 2028-01-01");
    const list = join(content, "withdrawals/ann.json");
    expect((await call("record", "check", list, "--on", "2027-11-28")).code).toBe(0);
    expect((await call("record", "check", list, "--on", "2028-01-01")).code).toBe(1);
  });

  /** What Ann's desk saves: the observations and the sign-off that stand in the record of Jo. */
  async function listFile(change = (list: unknown[]) => list): Promise<string> {
    const events = await signedOff(jo, motor);
    const list = events.flatMap((event) => ("credential" in event ? [event.credential] : []));
    const file = join(records, "jo.signed.json");
    writeFileSync(file, JSON.stringify(change(list)));
    return file;
  }

  test("a list as the Mentor's desk saves it: each statement is told by what it is", async () => {
    const file = await listFile();
    const { code, out, err, json } = await call("record", "check", file, "--on", "2026-11-27", "--json");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const [{ what, problems, statements }] = json().files;
    expect({ what, problems }).toEqual({ what: "3 signed statements", problems: [] });
    expect(out).not.toContain("can't be");
    expect(statements.map(({ kind, at }: { kind: string; at: string }) => [at, kind])).toEqual([
      ["[0]", "observation"],
      ["[1]", "observation"],
      ["[2]", "sign-off"],
    ]);
    const text = (await call("record", "check", file, "--on", "2026-11-27")).out;
    expect(text).toContain(`${file}: in order (3 signed statements). Signed in it:\n`);
    expect(text).toContain(`  sign-off, alone, on motor, revision 1: for Jo, 2026-03-17, by Ann Mentor\n`);
  });

  test("a list with one statement is that statement; in a longer one each fault has its place", async () => {
    const one = await listFile((list) => list.slice(-1));
    expect((await call("record", "check", one, "--on", "2026-11-27")).out).toContain("(a signed statement)");
    const edited = await listFile(([first, ...others]) => [
      { ...(first as object), validFrom: "2026-03-09T20:00:00Z" },
      ...others,
      5,
    ]);
    const { code, json } = await call("record", "check", edited, "--on", "2026-11-27", "--json");
    expect(code).toBe(1);
    const [{ problems, statements }] = json().files;
    expect(problems.map(({ code, at }: { code: string; at: string }) => [code, at])).toEqual([
      ["signature", "[0].proof[0].proofValue"],
      ["schema", "[3]"],
    ]);
    expect(statements).toHaveLength(2);
    const old = await call("record", "check", await listFile(), "--on", "2029-01-01");
    expect(old.err).toMatch(/^ {2}lapsed at \[2\]$/m);
    expect(old.err).toMatch(/^ {4}urn:\S+ {2}\(does not count: lapsed.*\)$/m);
  });

  test("a record's statements are listed with kind, module, level, day and id", async () => {
    const events = await signedOff(jo, motor);
    const file = await writeRecordFile(records, "jo", jo, events);
    const { json } = await call("record", "check", file, "--on", "2026-11-27", "--json");
    const last = events.at(-1)!;
    const id = "credential" in last ? String(last.credential.id) : "";
    expect(id).toMatch(/^urn:/);
    expect(json().files[0].statements.at(-1)).toEqual({
      ...{ at: "events[6]", id, kind: "sign-off", module: "motor", revision: 1, level: "alone" },
      // Its 24 months by the rules of the test programme.
      ...{ on: "2026-03-17", until: "2028-03-17" },
      person: { name: "Jo", key: jo.did },
      mentor: { name: "Ann Mentor", key: ann.did },
      problems: [],
    });
    expect((await call("record", "check", file, "--on", "2026-11-27")).out).toContain(`\n    ${id}\n`);
  });

  test("a list of withdrawals by itself", async () => {
    const give = async (name: string, text: string) => {
      const file = join(records, name);
      writeFileSync(file, text);
      return file;
    };
    const [good, stranger, old] = [
      await give("ann.json", await listText(ann)),
      await give("sam.json", await listText(sam)),
      await give("old.json", await listText(ann, [], "2026-02-01T00:00:00Z")),
    ];
    expect(await call("record", "check", good)).toMatchObject({
      code: 0,
      out: `${good}: in order (a list of withdrawals).\n`,
    });
    for (const [file, says] of [
      [stranger, "no mentor of this programme"],
      [old, "holds until 2026-02-01T00:00:00Z, and not to the end of"],
    ] as const)
      expect(await call("record", "check", file)).toMatchObject({
        code: 1,
        err: expect.stringContaining(says),
      });
  });

  test.each([
    ["an edited record", (text: string) => text.replace('"name": "Jo"', '"name": "Jon"'), "owner-signature"],
    ["half a record", (text: string) => text.slice(0, text.length / 2), "not-json"],
    ["a name twice", (text: string) => text.replace("{", '{"name": "Jo",'), "not-json"],
    ["nothing", () => "", "not-json"],
    ["another kind of file", () => "{}", "schema"],
  ])("%s is refused with its code, told on standard error", async (_, change, code) => {
    const file = await writeRecordFile(records, "jo", jo, await signedOff(jo, motor));
    writeFileSync(file, change(readFileSync(file, "utf8")));
    const told = await call("record", "check", file, "--json");
    expect(told.code).toBe(1);
    expect(codesIn(told.out)).toContain(code);
    expect(await call("record", "check", file)).toMatchObject({
      code: 1,
      out: "",
      err: expect.stringContaining(`  ${code}`),
    });
  });

  test("what is no text, no file or too large is refused unread", async () => {
    const [binary, large] = [join(records, "binary.json"), join(records, "large.json")];
    writeFileSync(binary, Buffer.of(0xff, 0xfe, 0x00));
    writeFileSync(large, Buffer.alloc(16 * 1024 * 1024 + 1, " "));
    const { out, code } = await call(
      "record",
      "check",
      binary,
      large,
      records,
      join(records, "none.json"),
      "--json",
    );
    expect(code).toBe(1);
    expect(codesIn(out)).toEqual(["not-json", "too-large", "not-json", "not-json"]);
  });

  test.each([
    [["check"], 2, "record check FILE"],
    [["check", "x", "--on", "2026-02-30"], 2, "is no date"],
    [["check", "x", "--key", "k"], 2, "takes no --key"],
    [["check", "x", "--site", "nowhere"], 2, "not both"],
  ])("%j is a wrong call", async (args, code, says) => {
    expect(await call("record", ...args)).toMatchObject({
      code,
      out: "",
      err: expect.stringContaining(says),
    });
  });

  test("a folder that is no site with records is told", async () => {
    const { code, err } = await callCommand("record", "check", "x", "--site", temporaryFolder());
    expect({ code, err }).toEqual({ code: 1, err: expect.stringContaining("no data of records here") });
  });
});

const codesIn = (out: string): string[] =>
  (JSON.parse(out) as { files: { problems: { code: string }[] }[] }).files.flatMap(({ problems }) =>
    problems.map(({ code }) => code),
  );

describe("record release", () => {
  const releasedFiles = (module: string) => readdirSync(join(content, "modules", module, "released"));

  test("keeps each module, and content that passed check passes it still, with fewer warnings", async () => {
    const warnings = async () =>
      (await call("check", "--json")).json().diagnostics.map(({ code }: { code: string }) => code);
    expect(await warnings()).toContain("revision-unreleased");
    const made = await call("record", "release", "--json");
    expect(made).toMatchObject({ code: 0, err: "" });
    expect(made.json().modules.map(({ module, change }: Record<string, string>) => [module, change])).toEqual(
      [
        ["governor", "released"],
        ["motor", "released"],
      ],
    );
    expect(await warnings()).not.toContain("revision-unreleased");
    expect((await call("record", "release", "--json")).json().modules).toMatchObject([
      { change: "kept", files: [] },
      { change: "kept", files: [] },
    ]);
  });

  test("of one module only; a typo is accepted under the same revision, and both releases are kept", async () => {
    await call("record", "release", "motor");
    expect(existsSync(join(content, "modules/governor/released"))).toBe(false);
    const file = join(content, "modules/motor/module.md");
    writeFileSync(file, readFileSync(file, "utf8").replace("Three steps", "Just three steps"));
    const { out } = await call("record", "release", "motor");
    expect(out).toContain("other content accepted under the same revision");
    expect(releasedFiles("motor")).toHaveLength(2);
    const jos = await writeRecordFile(records, "jo", jo, await signedOff(jo, motor));
    expect(await call("record", "check", jos, "--on", "2026-11-27")).toMatchObject({ code: 0, err: "" });
  });

  test("a sign-off on content that was never released is told once the content is another", async () => {
    const jos = await writeRecordFile(records, "jo", jo, await signedOff(jo, motor));
    const file = join(content, "modules/motor/module.md");
    writeFileSync(file, readFileSync(file, "utf8").replace("Three steps", "Just three steps"));
    const { out, code } = await call("record", "check", jos, "--on", "2026-11-27", "--json");
    expect(code).toBe(1);
    expect(codesIn(out)).toContain("revision");
  });

  test("a draft is not released, and asked for by name that is a fault", async () => {
    const file = join(content, "modules/motor/module.md");
    writeFileSync(
      file,
      readFileSync(file, "utf8").replace(
        /^summary: .*$/m,
        "summary: What this module is for, in one sentence.",
      ),
    );
    const all = await call("record", "release", "--json");
    expect({ code: all.code, modules: all.json().modules }).toMatchObject({
      code: 0,
      modules: [{ change: "released" }, { module: "motor", change: "draft", files: [] }],
    });
    expect(existsSync(join(content, "modules/motor/released"))).toBe(false);
    expect(await call("record", "release", "motor")).toMatchObject({
      code: 1,
      out: expect.stringContaining("not released: it is still a draft"),
    });
  });

  test("a module that there is not, and a programme that keeps no records", async () => {
    expect(await call("record", "release", "moter")).toMatchObject({
      code: 2,
      err: expect.stringContaining("motor"),
    });
    content = writeFolder(new Map([...clubFiles, ["programme.yaml", "name: A club\n"]]));
    expect(await call("record", "release")).toMatchObject({
      code: 1,
      err: expect.stringContaining("identifier"),
    });
  });
});

describe("record withdraw", () => {
  /** A mentor whose key lies in a file. */
  async function withKeyFile(): Promise<string> {
    const file = join(temporaryFolder(), "cleo.key.json");
    const { key } = (await keyCall("new", "--to", file, "--json")).json();
    const programme = join(content, "programme.yaml");
    const text = readFileSync(programme, "utf8");
    writeFileSync(
      programme,
      text.replace("mentors:\n", `mentors:\n  - {id: cleo, name: Cleo, key: "${key}", from: 2020-01-01}\n`),
    );
    return file;
  }

  test("makes the list, renews it, and what was withdrawn stays so", async () => {
    const key = await withKeyFile();
    const list = join(content, "withdrawals/cleo.json");
    expect(
      (await call("record", "withdraw", "--key", key, "--until", "2036-12-31", "--json")).json(),
    ).toEqual({
      file: list,
      mentor: "cleo",
      until: "2037-01-01T00:00:00.000Z",
      withdrawn: 0,
      added: 0,
      named: [],
    });
    expect((await call("record", "withdraw", "4711", "--key", key, "--json")).json()).toMatchObject({
      withdrawn: 1,
      added: 1,
    });
    expect((await call("record", "withdraw", "4711", "12", "--key", key, "--json")).json()).toMatchObject({
      withdrawn: 2,
      added: 1,
    });
    const errors = (await call("check", "--json")).json().diagnostics;
    expect(errors.filter(({ code }: { code: string }) => code.startsWith("withdrawals"))).toEqual([]);
  });

  test("a key of no mentor, a wrong passphrase, a list of somebody else, a place that there is not", async () => {
    const key = await withKeyFile();
    const list = join(content, "withdrawals/cleo.json");
    writeFileSync(list, await listText(ann));
    expect(await call("record", "withdraw", "--key", key)).toMatchObject({
      code: 1,
      err: expect.stringContaining("Move it away"),
    });
    writeFileSync(list, "{}");
    expect(await call("record", "withdraw", "--key", key)).toMatchObject({
      code: 1,
      err: expect.stringContaining("Nothing is written"),
    });
    expect(readFileSync(list, "utf8")).toBe("{}");
    writeFileSync(list, "");
    expect((await call("record", "withdraw", "999999", "--key", key)).code).not.toBe(0);
    vi.stubEnv("BENCHWRIGHT_PASSPHRASE", "other words by chance");
    expect(await call("record", "withdraw", "--key", key)).toMatchObject({
      code: 1,
      err: expect.stringContaining("passphrase does not open"),
    });
    expect(await call("record", "withdraw", "--key", list)).toMatchObject({ code: 1 });
    expect(await call("record", "withdraw")).toMatchObject({
      code: 2,
      err: expect.stringContaining("--key FILE"),
    });
  });

  test("a sign-off is withdrawn by its id, and no longer counts", async () => {
    const key = await withKeyFile();
    const cleo = { name: "Cleo", ...(await openKey(key)) };
    const mentor = { ...cleo, did: cleo.key };
    await call("record", "withdraw", "--key", key);
    const events = await signedOff(jo, motor, mentor);
    const file = await writeRecordFile(records, "jo", jo, events);
    const check = () => call("record", "check", file, "--json");
    expect((await check()).json()).toMatchObject({ ok: true });
    const { id } = (await signed(
      signOffAt("2026-03-17T20:00:00Z", mentor, jo, motor, evidenceOf(events)),
      mentor,
    )) as { id: string };
    expect(await call("record", "withdraw", id, "--key", key, "--records", records)).toMatchObject({
      code: 0,
      out: expect.stringContaining("Withdrawn: sign-off, alone, on motor, revision 1, of Jo"),
    });
    expect(codesIn((await check()).out)).toEqual(["withdrawn"]);
    const { code, err } = await call(
      "record",
      "withdraw",
      id.replace(/.$/, "x"),
      "--key",
      key,
      "--records",
      records,
    );
    expect({ code, err }).toEqual({ code: 1, err: expect.stringContaining("record check FILE lists") });
  });

  /** Jo's record and what Cleo has signed in it, as her desk saves it. */
  async function signedByCleo() {
    const key = await withKeyFile();
    const cleo = { name: "Cleo", ...(await openKey(key)) };
    await call("record", "withdraw", "--key", key);
    const events = await signedOff(jo, motor, { ...cleo, did: cleo.key });
    const credentials = events.flatMap((event) => ("credential" in event ? [event.credential] : []));
    const [record, list] = [
      await writeRecordFile(records, "jo", jo, events),
      join(records, "jo.signed.json"),
    ];
    writeFileSync(list, JSON.stringify(credentials));
    return { key, record, list, ids: credentials.map(({ id }) => String(id)) };
  }

  test("of a list all is withdrawn, and each is named", async () => {
    const { key, list, record, ids } = await signedByCleo();
    const { code, out } = await call("record", "withdraw", list, "--key", key);
    expect(code).toBe(0);
    expect(ids).toHaveLength(3);
    for (const id of ids) expect(out).toMatch(new RegExp(`^Withdrawn: .*of Jo, .*${id}`, "m"));
    expect(out).toContain("3 withdrawals");
    expect(codesIn((await call("record", "check", record, "--json")).out)).toContain("withdrawn");
  });

  test("a whole record is not withdrawn: the ids in it are told, and by one of them and the file it is", async () => {
    const { key, record, list, ids } = await signedByCleo();
    const asked = await call("record", "withdraw", record, "--key", key);
    expect(asked).toMatchObject({ code: 2, out: "" });
    for (const id of ids) expect(asked.err).toContain(id);
    expect(asked.err).toContain("sign-off, alone, on motor, revision 1: for Jo");
    for (const file of [record, list])
      expect(await call("record", "withdraw", ids[2]!, "--records", file, "--key", key)).toMatchObject({
        code: 0,
        out: expect.stringContaining(`Withdrawn: sign-off, alone, on motor, revision 1, of Jo`),
      });
    const anns = await writeRecordFile(records, "sam", sam, await signedOff(sam, motor));
    expect(await call("record", "withdraw", anns, "--key", key)).toMatchObject({
      code: 1,
      err: expect.stringContaining("signed nothing in it"),
    });
  });

  test("a word that is no file, id or place is told so", async () => {
    const key = await withKeyFile();
    const { code, err } = await call("record", "withdraw", "robin", "--key", key);
    expect(code).toBe(1);
    expect(err).toContain("robin: there is no file of this name");
    expect(err).not.toMatch(/ENOENT|not-json/);
  });

  test("only who signed a sign-off can withdraw it", async () => {
    const key = await withKeyFile();
    const credential = await signed(signOffAt("2026-03-17T20:00:00Z", ann, jo, motor), ann);
    const file = join(records, "sign-off.json");
    writeFileSync(file, JSON.stringify(credential));
    expect(await call("record", "withdraw", file, "--key", key)).toMatchObject({
      code: 1,
      err: expect.stringContaining("Only who signed it"),
    });
    await writeRecordFile(records, "jo", jo, await signedOff(jo, motor));
    const id = String(credential.id);
    expect(await call("record", "withdraw", id, "--key", key)).toMatchObject({
      code: 2,
      err: expect.stringContaining("--records DIR"),
    });
    expect(await call("record", "withdraw", id, "--key", key, "--records", records)).toMatchObject({
      code: 1,
    });
  });
});

const evidenceOf = (events: readonly { kind: string; id: string }[]) => ({
  evidence: events.filter(({ kind }) => kind === "quiz").map(({ id }) => ({ name: "Quiz", digest: id })),
});
