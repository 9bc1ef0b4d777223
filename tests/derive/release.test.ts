/** Modules as releases: their digests by another hand, what is kept of them, and what the site gives of it. */
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { runInNewContext } from "node:vm";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { buildSite } from "../../src/build.ts";
import { derive } from "../../src/derive/derive.ts";
import { marksAlike, moduleData } from "../../src/derive/record-data.ts";
import { releaseCard, releaseOf } from "../../src/derive/release.ts";
import type { Release } from "../../src/engine/competency/release.ts";
import type { Content } from "../../src/model/content.ts";
import type { ModuleData, ProgrammeData } from "../../src/model/record-data.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { callCommand } from "../support/call-command.ts";
import { changed, type Files, soundFiles, temporaryFolder, writeFolder } from "../support/content-folder.ts";
import { didOf, identifier, signedList } from "../support/mentors.ts";

const module = "modules/box/module.md";

/** The sound programme with a mentor and rules for sign-offs. */
const recording: Files = new Map([
  ...changed(
    "programme.yaml",
    "name: Test bench\n",
    `name: Test bench\nidentifier: ${identifier}\ntime-zone: Europe/Paris\nsign-off: {unaided: 2, months: 24, lapsed-needs: keep}\nmentors:\n  - {id: ada, name: Ada, key: "${didOf(1)}", from: 2026-01-01}\n`,
  ),
  ["withdrawals/ada.json", JSON.stringify(signedList({ key: 1 }))],
]);

function contentOf(files: Files): Content {
  const { reading, diagnostics } = read(writeFolder(files));
  const { content, diagnostics: found } = validate(reading);
  expect([...diagnostics, ...found].filter(({ severity }) => severity === "error")).toEqual([]);
  return content;
}

function releaseIn(files: Files): Release {
  const content = contentOf(files);
  return releaseOf(derive(content).views[0]!, content);
}

/** RFC 8785 for ids and plain text: fields by their names, otherwise as JSON writes them. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === "object" && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  );
}

/** Multihash and multibase by their registries: sha2-256 is 0x12, 32 bytes are 0x20, base64url without padding is `u`. */
const digestBy = (value: unknown): string =>
  `u${Buffer.concat([Buffer.of(0x12, 0x20), createHash("sha256").update(canonical(value)).digest()]).toString("base64url")}`;

describe("the release of a module", () => {
  const release = () => releaseIn(recording);

  test("names the module, its steps and what is asked for", () => {
    const made = release();
    expect(made).toMatchObject({
      module: "box",
      title: "Open the box",
      revision: 1,
      needs: [],
      hazards: [{ id: "vapour", title: "Vapour" }],
      phases: [
        { id: "strip", title: "Taking apart" },
        { id: "build", title: "Putting together" },
      ],
    });
    expect(made.steps.map(({ id }) => id)).toEqual([
      "lid-off",
      "brake-off",
      "wheel-off",
      "clean",
      "wheel-on",
      "brake-on",
      "lid-on",
    ]);
    expect(made.rules).toMatchObject({ unaided: 2, months: 24, watched: 1, pass: 0.8 });
  });

  test("has digests that anyone can work out from what it holds", () => {
    const { quiz, practices, run, content, steps } = release();
    expect(quiz!.digest).toBe(digestBy(quiz!.quiz));
    const [{ id: _, digest, ...practice }] = practices as [Release["practices"][number]];
    const shown = steps.filter(({ id }) => practice.graph.steps.includes(id));
    expect(digest).toBe(digestBy({ ...practice, titles: shown.map(({ id, title }) => [id, title]) }));
    const { digest: ofRun, ...performed } = run!;
    expect(ofRun).toBe(digestBy(performed));
    expect(content).toBe(digestBy({ module: soundFiles.get(module), quiz: quiz!.digest }));
  });

  test("a module's stricter rule holds, a quiz's own pass mark too", () => {
    const stricter = changed(
      module,
      "revision: 1\n",
      "revision: 1\nsign-off: {months: 12, mentors: 2}\n",
      recording,
    );
    const marked = changed(
      "modules/box/quiz.yaml",
      "questions:\n  - id: first",
      "pass: 90 %\nquestions:\n  - id: first",
      stricter,
    );
    expect(releaseIn(marked).rules).toMatchObject({ months: 12, mentors: 2, unaided: 2, pass: 0.9 });
  });

  test("lines that end in another way make no other content, a word does", () => {
    const text = soundFiles.get(module) as string;
    const crlf = new Map([...recording, [module, text.replaceAll("\n", "\r\n")]]);
    expect(releaseIn(crlf).content).toBe(release().content);
    const worded = changed(module, "A heading without", "Another without", recording);
    expect(releaseIn(worded).content).not.toBe(release().content);
    expect(marksAlike(releaseIn(worded), release())).toBe(false);
  });

  test("of a supervised quiz it holds the digest of what may be seen, which the key does not change", () => {
    const supervised = changed(
      "modules/box/quiz.yaml",
      "questions:\n  - id: first",
      "supervised: true\nquestions:\n  - id: first",
      recording,
    );
    const other = changed("modules/box/quiz.yaml", "answer: 50 mL", "answer: 60 mL", supervised);
    const made = releaseIn(supervised);
    expect(made.quiz).toEqual({ digest: made.quiz!.digest, supervised: true });
    expect(releaseIn(other).quiz!.digest).toBe(made.quiz!.digest);
    expect(releaseIn(other).content).toBe(made.content);
  });
});

test("a card has what all pages need, and lists the present content among the revisions", () => {
  const release = releaseIn(recording);
  const older = { revision: 1, content: ["uEiCJU4jdx6eEEZMLG-nPFjrKFhTgmDn4QFs6haVqGap1IQ"] };
  const card = releaseCard(release, { module: "box", path: "", revisions: [older] });
  expect(card.revisions).toEqual([{ revision: 1, content: [...older.content, release.content] }]);
  expect(releaseCard(release, undefined).revisions).toEqual([{ revision: 1, content: [release.content] }]);
  expect(JSON.stringify(card)).not.toContain("questions");
  expect(card.quiz).toEqual({ digest: release.quiz!.digest, supervised: false });
});

describe("what the site holds for records", () => {
  let folder: string;
  let site: string;
  beforeEach(() => {
    folder = writeFolder(recording);
    site = join(temporaryFolder(), "site");
  });
  const built = async (contentDir = folder) => {
    const { diagnostics } = await buildSite({ contentDir, siteDir: site, cacheDir: undefined });
    expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
  };
  /** What the script hands over when a page runs it. */
  function data<Data>(file: string): Data {
    const heard: unknown[] = [];
    const benchwrightData = (...given: unknown[]) => heard.push(...given);
    runInNewContext(readFileSync(join(site, "record/data", `${file}.js`), "utf8"), { benchwrightData });
    expect(heard).toHaveLength(2);
    expect(heard[0]).toBe(file);
    return JSON.parse(JSON.stringify(heard[1])) as Data;
  }

  test("the programme's rules, cards and lists, and each module's release", async () => {
    await built();
    const { rules, modules, withdrawals } = data<ProgrammeData>("programme");
    expect(rules).toMatchObject({
      identifier,
      programme: "Test bench",
      timeZone: "Europe/Paris",
      lapsedNeeds: "keep",
      soonDays: 60,
      mentors: [{ id: "ada", key: didOf(1), maySign: "all", highestLevel: "alone" }],
    });
    expect(modules.map(({ module: id }) => id)).toEqual(["box"]);
    expect(withdrawals).toEqual([["ada", signedList({ key: 1 })]]);
    expect(JSON.parse(readFileSync(join(site, "withdrawals/ada.json"), "utf8"))).toEqual(
      signedList({ key: 1 }),
    );
    const { release, earlier } = data<ModuleData>("box");
    expect(release).toEqual(releaseIn(recording));
    expect(earlier).toEqual([]);
  });

  test("a release that was kept goes with it once the content is another", async () => {
    expect((await callCommand("record", "release", "--content", folder)).code).toBe(0);
    await built();
    expect(data<ModuleData>("box").earlier).toEqual([]);
    const before = data<ModuleData>("box").release;
    const file = join(folder, module);
    writeFileSync(
      file,
      readFileSync(file, "utf8")
        .replace("revision: 1", "revision: 2")
        .replace("title: The whole box", "title: All of the box"),
    );
    await built();
    const { release, earlier } = data<ModuleData>("box");
    expect(release.revision).toBe(2);
    expect(earlier).toEqual([before]);
    expect(release.practices[0]!.digest).not.toBe(before.practices[0]!.digest);
  });

  test("a list that runs out is told, although nothing was changed and the site was kept", async () => {
    const cacheDir = join(temporaryFolder(), "cache");
    const codesOn = async (day: string) => {
      vi.useFakeTimers({ toFake: ["Date"], now: new Date(`${day}T12:00:00Z`) });
      const { diagnostics } = await buildSite({ contentDir: folder, siteDir: site, cacheDir });
      return diagnostics.map(({ code }) => code);
    };
    try {
      expect(await codesOn("2036-12-30")).not.toContain("withdrawals-expired");
      expect(await codesOn("2037-01-02")).toContain("withdrawals-expired");
      expect(await codesOn("2036-12-30")).not.toContain("withdrawals-expired");
    } finally {
      vi.useRealTimers();
    }
  });

  test("a programme without an identifier has none of it", async () => {
    await built(writeFolder(soundFiles));
    expect(existsSync(join(site, "record/data"))).toBe(false);
    expect(existsSync(join(site, "withdrawals"))).toBe(false);
  });
});

test("an earlier release does not give away what a supervised quiz asks now", () => {
  const before = releaseIn(recording);
  const supervised = changed(
    "modules/box/quiz.yaml",
    "questions:\n  - id: first",
    "supervised: true\nquestions:\n  - id: first",
    recording,
  );
  const { earlier } = moduleData(releaseIn(supervised), [{ path: "", text: "", release: before }]);
  expect(earlier).toHaveLength(1);
  expect(earlier[0]!.quiz).toEqual({ digest: before.quiz!.digest, supervised: false, quiz: undefined });
});
