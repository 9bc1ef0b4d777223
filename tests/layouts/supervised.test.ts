/** A supervised quiz: whatever would give an answer away stays out of the built site. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { run } from "../../src/cli/run.ts";
import { changed, temporaryFolder, withFile, writeFolder } from "../support/content-folder.ts";

const keyed = `pass: 75 %
SUPERVISED
questions:
  - id: one
    kind: choose-one
    ask: Which?
    options: [{text: aaa, right: true}, {text: bbb, why: secretwhy1}]
    why: secretwhy2
    see: "#lid-off"
  - id: several
    kind: choose-several
    ask: Which ones?
    options: [{text: ccc, right: true}, {text: ddd, right: true}, {text: eee, why: secretwhy3}]
    why: secretwhy4
    see: "#lid-off"
  - id: amount
    kind: number
    ask: How much?
    answer: 48611 mL
    tolerance: 733 mL
    why: secretwhy5
    see: "#lid-off"
  - id: order
    kind: arrange
    ask: In which order?
    steps: [lid-off, wheel-off, wheel-on, lid-on]
    why: secretwhy6
    see: "#lid-off"
  - id: pairs
    kind: match
    ask: What belongs to what?
    pairs:
      - {item: iii, with: zzz, why: secretwhy7}
      - {item: jjj, with: yyy}
      - {item: kkk, with: xxx}
    others: [{text: www, why: secretwhy8}]
    why: secretwhy9
    see: "#lid-off"
  - id: word
    kind: text
    ask: What word?
    answers: [secretword, secretsynonym]
    slips: 2
    mistakes: [{text: secretmistake, why: secretwhy10}]
    why: secretwhy11
    see: "#lid-off"
  - id: where
    kind: point
    ask: Where?
    figure: {file: figures/box.svg, alt: The box}
    places:
      - {where: right hand, circle: [80, 50, 5], right: true}
      - {where: left hand, circle: [20, 50, 5], why: secretwhy12}
    why: secretwhy13
    see: "#lid-off"
  - id: groups
    kind: sort
    ask: Into which?
    groups: [ggg, hhh]
    items: [{text: i1, group: ggg, why: secretwhy14}, {text: i2, group: hhh}, {text: i3, group: ggg}, {text: i4, group: hhh}]
    why: secretwhy15
    see: "#lid-off"
  - id: far
    kind: worked
    ask: How far do {turns} turns of {thread} go?
    sum: advance
    cases: [{thread: 4 BA, turns: 7311}, {thread: M3, turns: 9173}]
    tolerance: 0.7719 mm
    why: secretwhy16
    see: "#lid-off"
`;

/** 48611 mL, 7311 turns of 0.66 mm (BS 93, 4 BA), 9173 turns of 0.5 mm, and the tolerances. */
const secrets = [/secret(why|word|synonym|mistake)/, /48611/, /733/, /4825\.26/, /4586\.5/, /7719/];

/** A programme that keeps records, whose site holds what they need of each quiz. */
const recording = changed(
  "programme.yaml",
  "name: Test bench\n",
  "name: Test bench\nidentifier: tag:bench.example,2026:test\n",
);

async function build(supervised: boolean): Promise<Map<string, string>> {
  const text = keyed.replace("SUPERVISED", supervised ? "supervised: true" : "supervised: false");
  const content = writeFolder(withFile("modules/box/quiz.yaml", text, recording));
  const site = join(temporaryFolder(), "site");
  const printed: string[] = [];
  const output = { out: (line: string) => printed.push(line), err: (line: string) => printed.push(line) };
  expect(await run(["build", "--fresh", "--content", content, "--to", site], output), printed.join("")).toBe(
    0,
  );
  const names = readdirSync(site, { recursive: true, encoding: "utf8" });
  const files = names.filter((name) => statSync(join(site, name)).isFile() && !name.endsWith(".woff2"));
  return new Map(files.map((name) => [name, readFileSync(join(site, name), "utf8")]));
}

const keyPage = "modules/box/quiz/key/index.html";
const pageData = (site: ReadonlyMap<string, string>) =>
  JSON.parse(
    /id="page-data">([\s\S]*?)<\/script>/.exec(site.get("modules/box/quiz/index.html")!)![1]!,
  ) as unknown;

test("the site of a quiz that is not supervised holds its key: the search below finds it", async () => {
  const site = await build(false);
  const all = [...site.values()].join("\n");
  for (const secret of secrets) expect(all).toMatch(secret);
  expect(site.has(keyPage)).toBe(true);
  expect(site.get("modules/box/quiz/index.html")).toContain(keyPage);
});

test("no file of the site of a supervised one holds a key, a reason or a tolerance, and there is no key sheet", async () => {
  const site = await build(true);
  for (const [name, text] of site) for (const secret of secrets) expect(text, name).not.toMatch(secret);
  expect(site.has(keyPage)).toBe(false);
  const data = JSON.stringify(pageData(site));
  expect(data).not.toContain('"right":true');
  // In the order of the alphabet, not in that of the author, which is the key of pairs.
  expect(data).toContain('"choices":["www","xxx","yyy","zzz"]');
  expect(data).toContain('"pairs":[]');
  expect(data).not.toMatch(/"(choice|group)":[0-9]/);
  for (const ask of ["Which?", "What word?", "turns of 4 BA"]) expect(data).toContain(ask);
});
