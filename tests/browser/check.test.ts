/** "Check a sign-off": what holds, what does not and why, and files that nobody should have to read. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  observationAt,
  person,
  recordText,
  signed,
  signOffAt,
  statementEvent,
  theoryAt,
} from "../support/competency.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { ada, bert, withRecordSite } from "./site/record-site.ts";

const site = withRecordSite();
const visitor = withBrowser(() => site.url("localhost"));
const jo = person("Jo");

/** Chooses a file and gives what the page says of it. */
async function checked(page: Page, text: string | Buffer, name = "jo.record.json"): Promise<string> {
  const path = join(folder, name);
  writeFileSync(path, text);
  await page.getByLabel("Choose a file").setInputFiles(path);
  const verdict = page.locator(".check-found").filter({ hasText: name });
  await verdict.waitFor();
  return verdict.innerText();
}

const folder = mkdtempSync(join(tmpdir(), "benchwright-check-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let whole: string;
let signOff: string;
beforeAll(async () => {
  const release = site.release();
  const observation = observationAt("2026-03-10T19:00:00Z", ada, jo, release);
  const statement = signOffAt("2026-03-17T19:00:00Z", ada, jo, release);
  const events = [
    ...theoryOf(),
    await statementEvent(observation, ada),
    await statementEvent(statement, ada),
  ];
  whole = await recordText(jo, events);
  signOff = JSON.stringify(await signed(statement, ada));
});

/** Of the test programme's own module what needs no answers. */
const theoryOf = () =>
  theoryAt("2026-03-03T19:00:00Z", jo, { ...site.release(), quiz: undefined, practices: [], run: undefined });

describe("a record that holds", () => {
  let page: Page;
  let said: string;
  beforeAll(async () => {
    ({ page } = await visitor.open("check/index.html"));
    said = await checked(page, whole);
  });

  test("says who signed, for whom, which module at which revision, until when", async () => {
    expect(said).toContain("All of it adds up: jo.record.json");
    const row = page.getByRole("row", { name: /^Sign-off, alone/ });
    const cells = (await row.innerText()).replace(/\s+/g, " ");
    // 24 months after 17 March 2026, by the test programme's rule.
    expect(cells).toBe("Sign-off, alone Open the box, revision 1 Jo Ada, 17 Mar 2026 17 Mar 2028 yes");
    expect(await page.getByRole("row", { name: /^Observation, unaided/ }).count()).toBe(1);
  });

  test("has the focus on the verdict, keeps the rules of axe, and fits a phone", async () => {
    const heading = page.locator(".check-found h2");
    expect(await heading.evaluate((element) => element === document.activeElement)).toBe(true);
    for (const width of [320, 768, 1280])
      for (const colorScheme of ["light", "dark"] as const) {
        await page.setViewportSize({ width, height: 900 });
        await page.emulateMedia({ colorScheme });
        expect(await axeViolations(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      }
  });

  test("prints the verdict, and nothing to press", async () => {
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".verdict-of-file").isVisible()).toBe(true);
    expect(await page.locator(".check-tool").isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
  });
});

test("a statement by itself is checked too, and what it rests on is said to be elsewhere", async () => {
  const { page } = await visitor.open("check/index.html");
  const said = await checked(page, signOff, "sign-off.json");
  expect(said).toContain("It holds: sign-off.json");
  expect(said).toContain("lies in the trainee’s record, which was not given");
  expect(said).toMatch(/Holds until\s+17 Mar 2028/);
});

test("a file that is dropped on the page has the verdict of one that is chosen", async () => {
  const forged = whole.replace('"name": "Jo"', '"name": "Di"');
  const { page, troubles } = await visitor.open("check/index.html");
  for (const [text, begins] of [
    [whole, "All of it adds up"],
    [forged, "Not all of it adds up"],
  ] as const) {
    const chosen = await checked(page, text);
    expect(chosen).toContain(`${begins}: jo.record.json`);
    await page.reload();
    expect(await page.locator(".verdict-of-file").count()).toBe(0);
    const dataTransfer = await page.evaluateHandle((content) => {
      const carried = new DataTransfer();
      carried.items.add(new File([content], "jo.record.json", { type: "application/json" }));
      return carried;
    }, text);
    await page.locator(".check-tool").dispatchEvent("drop", { dataTransfer });
    await expect.poll(() => page.locator(".check-found").innerText()).toBe(chosen);
  }
  expect(troubles).toEqual([]);
});

const credentialBy = async (mentor: typeof ada) =>
  JSON.stringify(await signed(signOffAt("2026-03-17T19:00:00Z", mentor, jo, site.release()), mentor));

const bad: readonly (readonly [what: string, code: string, text: () => string | Buffer | Promise<string>])[] =
  [
    ["of 100 MB", "too-large", () => Buffer.alloc(100_000_000, "x")],
    ["cut off", "not-json", () => whole.slice(0, -40)],
    ["with __proto__", "not-json", () => whole.replace('"record"', '"__proto__": {}, "record"')],
    ["of a name twice", "not-json", () => whole.replace('"record": 1', '"record": 1, "record": 1')],
    ["nested deep", "too-large", () => "[".repeat(100_000)],
    ["that is a picture", "not-json", () => Buffer.from([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe])],
    ["that is something else", "schema", () => '{"hello": 1}'],
    ["with another name in it", "owner-signature", () => whole.replace('"name": "Jo"', '"name": "Di"')],
    [
      "with an event edited",
      "event-id",
      () => whole.replace('"kind": "read"', '"kind": "read" ').replace('"revision": 1', '"revision": 2'),
    ],
    ["signed by nobody listed", "issuer-unlisted", () => credentialBy(person("Eve"))],
    ["beyond the mentor's level", "not-allowed", () => credentialBy(bert)],
    ["changed after signing", "signature", () => changed()],
    ["of which one statement was changed", "signature", () => `[${signOff},${changed()}]`],
    ["with a statement and something else", "schema", () => `[${signOff}, 5]`],
  ];

const changed = (): string => signOff.replace(/("proofValue":"z.*?)[1-9]/, "$1");

describe("a list of statements, as the Mentor's desk saves it", () => {
  let observation: string;
  beforeAll(async () => {
    const statement = observationAt("2026-03-10T19:00:00Z", ada, jo, site.release());
    observation = JSON.stringify(await signed(statement, ada));
  });

  test("each is judged and told by what it is; with one alone it is as that one by itself", async () => {
    const { page, troubles } = await visitor.open("check/index.html");
    const said = await checked(page, `[${observation},${signOff}]`, "jo.signed.json");
    expect(said).toContain("All of it holds: jo.signed.json");
    expect(said).toContain("2 signed statements");
    expect(await page.locator(".check-found h3").allInnerTexts()).toEqual([
      "Number 1: Observation, unaided",
      "Number 2: Sign-off, alone",
    ]);
    expect(await axeViolations(page)).toEqual([]);
    const alone = await checked(page, `[${signOff}]`, "one.signed.json");
    const bare = await checked(page, signOff, "one.json");
    expect(alone.replace("one.signed.json", "one.json")).toBe(bare);
    expect(bare).toContain("It holds: one.json");
    expect(troubles).toEqual([]);
  });

  test("one that does not hold takes nothing from the other", async () => {
    const { page } = await visitor.open("check/index.html");
    const said = await checked(page, `[${signOff},${changed()}]`, "jo.signed.json");
    expect(said).toContain("Not all of it holds");
    expect(await page.locator(".check-found h3").allInnerTexts()).toEqual([
      "Number 1: Sign-off, alone",
      "Number 2: this can’t be relied on",
    ]);
    expect(await page.locator(".check-found dl").innerText()).toContain("it holds");
    expect(said).not.toContain("Nothing of this file counts");
    // Under the statement that it is about, and nowhere else.
    expect(await page.locator(".check-found h3:last-of-type + .problems code").allInnerTexts()).toEqual([
      "signature",
    ]);
    expect(await page.locator(".check-found .problems").count()).toBe(1);
  });
});

describe("a file that does not hold", () => {
  let page: Page;
  let troubles: readonly string[];
  beforeAll(async () => {
    ({ page, troubles } = await visitor.open("check/index.html"));
  });

  test.each(bad)("%s: %s", async (what, code, text) => {
    const said = await checked(page, await text(), `${what.replaceAll(" ", "-")}.json`);
    expect(await page.locator(".problems code").allInnerTexts()).toContain(code);
    expect(said).toMatch(/can’t be relied on|does not hold|Not all of it (adds up|holds)/);
    expect(troubles).toEqual([]);
  });
});

describe.each(["localhost", "plain http", "disk"] as const)("opened by %s", (way) => {
  const elsewhere = withBrowser(() => site.url(way));

  test("it checks by keyboard alone, sends nothing, and says that all works", async () => {
    const { page, troubles } = await elsewhere.open("check/index.html");
    expect(await page.locator(".record-here").innerText()).toContain("Everything on it works here.");
    const field = page.getByLabel("Choose a file");
    await page.getByRole("heading", { level: 1 }).click();
    await page.keyboard.press("Tab");
    expect(await field.evaluate((element) => element.matches(":focus-visible"))).toBe(true);
    await field.setInputFiles({ name: "a.json", mimeType: "application/json", buffer: Buffer.from(whole) });
    await page.getByRole("heading", { name: "All of it adds up: a.json" }).waitFor();
    expect(troubles).toEqual([]);
  });
});
