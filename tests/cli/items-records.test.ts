/** `items` over a folder of records, and over papers that ask different questions. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeEach, describe, expect, test } from "vitest";
import { checkContent } from "../../src/cli/content.ts";
import { paperSeed } from "../../src/engine/competency/events.ts";
import { portable } from "../../src/engine/competency/libraries.ts";
import type { Release } from "../../src/engine/competency/release.ts";
import { drawPaper } from "../../src/engine/quiz/paper.ts";
import { quizDigest } from "../../src/engine/quiz/quiz-digest.ts";
import { callCommand } from "../support/call-command.ts";
import { clubFiles, releasesIn, writeRecordFile } from "../support/club.ts";
import { person, recordText, sittingAt } from "../support/competency.ts";
import { changed, temporaryFolder, writeFolder } from "../support/content-folder.ts";

const [jo, sam, kit, lee] = ["Jo", "Sam", "Kit", "Lee"].map(person) as [
  ReturnType<typeof person>,
  ReturnType<typeof person>,
  ReturnType<typeof person>,
  ReturnType<typeof person>,
];

let content: string;
let records: string;
let motor: Release;

const quizIn = (folder: string) => join(folder, "modules/motor/quiz.yaml");
const itemsOf = (...more: string[]) => callCommand("items", records, "--quiz", quizIn(content), ...more);

beforeEach(() => {
  content = writeFolder(clubFiles);
  motor = releasesIn(content).get("motor")!;
  records = temporaryFolder();
});

/** As the quiz page hands it in. */
function handIn(name: string, answers: unknown, change: object = {}): void {
  const { quiz } = checkContent(content).content.quizzes.get("motor")!;
  const fields = { sitting: 1, module: "motor", revision: 1, digest: quizDigest(quiz), seed: "7" };
  writeFileSync(
    join(records, `${name}.sitting.json`),
    JSON.stringify({ ...fields, preferred: [], answers, ...change }),
  );
}

describe("a folder of records", () => {
  /** Of both questions the second option, 1, is right. */
  const jos = () => [
    sittingAt("2026-03-01T10:00:00Z", jo, motor, { first: 1, second: 0 }),
    sittingAt(
      "2026-03-09T10:00:00Z",
      jo,
      motor,
      { first: 1, second: 1 },
      { attempt: 2, preferred: ["second"] },
    ),
  ];

  test("counts the first sitting of each person, and says what it leaves out and why", async () => {
    await writeRecordFile(records, "jo", jo, jos());
    mkdirSync(join(records, "older"));
    await writeRecordFile(join(records, "older"), "jo", jo, jos().slice(0, 1));
    const governor = releasesIn(content).get("governor")!;
    await writeRecordFile(records, "sam", sam, [
      sittingAt("2026-03-02T10:00:00Z", sam, motor, { first: 0, second: 1 }),
      sittingAt("2026-03-02T11:00:00Z", sam, governor, { first: 0, second: 0 }),
    ]);
    const before = { ...motor, quiz: { ...motor.quiz!, digest: motor.run!.digest } };
    await writeRecordFile(records, "kit", kit, [
      sittingAt("2026-02-01T10:00:00Z", kit, before, { first: 0, second: 0 }),
      sittingAt("2026-03-02T10:00:00Z", kit, motor, { first: 1, second: 1 }),
    ]);
    handIn("unnamed", [
      ["first", "yes"],
      ["second", "never"],
    ]);
    handIn("other", [["first", "no"]], { revision: 2 });
    const { code, out, err } = await itemsOf("--json");
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const found = JSON.parse(out);
    // Jo, Sam, Kit and the one without a name: right are 1 0 1 1 of the first, 0 1 1 0 of the second.
    expect(found).toMatchObject({
      persons: 4,
      gathered: { records: 4, handedIn: 1, later: 1, copies: 1, otherQuiz: 2 },
      skipped: [],
      items: [
        { id: "first", asked: 4, difficulty: 0.75 },
        { id: "second", asked: 4, difficulty: 0.5, options: [{ taken: 1 }, { taken: 2 }, { taken: 1 }] },
      ],
    });
    const words = (await itemsOf()).out;
    expect(words).toContain(
      "of each person the first sitting only, since later ones are not independent of it; 1 later sitting left out",
    );
    expect(words).toContain("2 sittings of another quiz, or of this one before it was changed, left out");
    const all = JSON.parse((await itemsOf("--all-sittings", "--json")).out);
    expect(all).toMatchObject({ persons: 5, gathered: { later: 0, copies: 1 } });
    expect(all.items[1].difficulty).toBeCloseTo(3 / 5, 12);
    expect(all.notes.join(" ")).toContain("not independent");
  });

  test("tells broken files and goes on without them", async () => {
    await writeRecordFile(records, "jo", jo, jos());
    const text = await recordText(sam, [
      sittingAt("2026-03-02T10:00:00Z", sam, motor, { first: 0, second: 0 }),
    ]);
    writeFileSync(join(records, "half.record.json"), text.slice(0, text.length / 2));
    writeFileSync(join(records, "edited.record.json"), text.replace('"name": "Sam"', '"name": "Sammy"'));
    writeFileSync(join(records, "torn.sitting.json"), '{"sitting": 1');
    handIn("claims", [["first", "yes"]], { score: 9 });
    const html = join(temporaryFolder(), "r.html");
    const { code, out } = await itemsOf("--json", "--html", html);
    expect(code).toBe(0);
    const { persons, skipped, gathered } = JSON.parse(out);
    expect({ persons, records: gathered.records }).toEqual({ persons: 1, records: 1 });
    const [claims, edited, half, torn] = skipped as { file: string; why: string }[];
    expect(skipped).toHaveLength(4);
    expect(claims!.why).toContain("found a field score");
    expect(edited!.why).toContain("The signature of the file is not that of its owner");
    expect(half!.why).toContain("The file is not JSON, or not all of it is there");
    expect(torn!.why).toContain("is not JSON");
    for (const { file } of skipped) {
      expect((await itemsOf()).out).toContain(`Left out: ${file}: `);
      expect(readFileSync(html, "utf8")).toContain(file);
    }
  });

  test("without a sitting of this quiz is refused, with what was found instead", async () => {
    const before = { ...motor, quiz: { ...motor.quiz!, digest: motor.run!.digest } };
    await writeRecordFile(records, "kit", kit, [sittingAt("2026-02-01T10:00:00Z", kit, before)]);
    writeFileSync(join(records, "empty.record.json"), "");
    const { code, out, err } = await itemsOf();
    expect({ code, out }).toEqual({ code: 1, out: "" });
    expect(err).toContain("there is no sitting of this quiz in it");
    expect(err).toContain("1 sitting of another quiz, or of this one before it was changed");
    expect(err).toContain("empty.record.json: ");
  });
});

describe("papers that ask different questions", () => {
  const people = [jo, sam, kit, lee, ...["Max", "Ros", "Tim", "Una"].map(person)];

  test("from records: what was not asked is not missed, and alpha is left out with a word", async () => {
    content = writeFolder(
      changed("modules/motor/quiz.yaml", "pass: 80 %", "pass: 80 %\npaper: 1", clubFiles),
    );
    motor = releasesIn(content).get("motor")!;
    const quiz = motor.quiz!.quiz!;
    // Everyone knows the first and nothing of the second.
    for (const one of people)
      await writeRecordFile(records, one.name, one, [
        sittingAt("2026-03-01T10:00:00Z", one, motor, { first: 1 }),
      ]);
    const drawn = people.map(({ did }) => paperSeed(did, motor.quiz!.digest, 1, portable));
    const askedFirst = drawn.filter((seed) => drawPaper(quiz, seed).questions[0]!.id === "first").length;
    expect(askedFirst).toBeGreaterThan(0);
    expect(askedFirst).toBeLessThan(people.length);
    const { code, out } = await itemsOf("--json");
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      persons: 8,
      alpha: null,
      papers: { length: 1, pairs: 1, apart: 1, noAlpha: "never-together" },
      items: [
        { id: "first", asked: askedFirst, difficulty: 1 },
        { id: "second", asked: 8 - askedFirst, difficulty: 0 },
      ],
    });
    expect((await itemsOf()).out).toContain("There is no alpha: no two questions were asked together");
  });

  test("from lines with seeds", async () => {
    content = writeFolder(
      changed("modules/motor/quiz.yaml", "pass: 80 %", "pass: 80 %\npaper: 1", clubFiles),
    );
    const quiz = releasesIn(content).get("motor")!.quiz!.quiz!;
    const seeds = ["a", "b", "c", "d", "e", "f"];
    const lines = seeds.map((seed) => JSON.stringify({ seed, answers: { first: 1, second: 1 } }));
    const file = join(records, "s.jsonl");
    writeFileSync(file, lines.join("\n"));
    const { out } = await callCommand("items", file, "--quiz", quizIn(content), "--json");
    const asked = (id: string) =>
      seeds.filter((seed) => drawPaper(quiz, seed).questions[0]!.id === id).length;
    expect(JSON.parse(out).items.map((one: { asked: number }) => one.asked)).toEqual([
      asked("first"),
      asked("second"),
    ]);
  });

  test("from a table with empty cells, where the call says so; all three reports say how many were asked", async () => {
    const table = join(records, "t.csv");
    // Worked by hand in tests/engine/quiz/statistics/papers.test.ts.
    writeFileSync(table, "a,b,c\n1,1,\n1,,1\n0,0,\n0,,0\n,1,0\n,0,1\n,,\n");
    const [html, csv] = [join(records, "r.html"), join(records, "r.csv")];
    const { code, out } = await callCommand(
      "items",
      table,
      "--papers",
      "--json",
      "--html",
      html,
      "--csv",
      csv,
    );
    expect(code).toBe(0);
    const found = JSON.parse(out);
    expect(found).toMatchObject({ persons: 6, incomplete: 1 });
    expect(found.alpha).toBeCloseTo(0.75, 12);
    expect(found.items.map((one: { asked: number }) => one.asked)).toEqual([4, 4, 4]);
    expect(readFileSync(csv, "utf8")).toMatch(/^id,asked,difficulty,[^\n]*\na,4,0\.5,/);
    const page = readFileSync(html, "utf8");
    expect(page).toContain('<th scope="col">Asked</th>');
    expect(page).toContain('<th scope="row">a</th><td>4</td>');
    expect(page).toContain("pairwise deletion");
    const without = await callCommand("items", table);
    expect(without).toMatchObject({ code: 1, err: expect.stringContaining("no complete row") });
    const both = await callCommand("items", table, "--papers", "--quiz", quizIn(content));
    expect(both).toMatchObject({ code: 2, err: expect.stringContaining("--papers is for scores") });
  });
});
