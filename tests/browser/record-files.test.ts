/** Files added to the record: copies of it, what mentors signed, and what is to be refused. */
import { truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test, vi } from "vitest";
import type { JsonObject } from "../../src/engine/competency/json.ts";
import { eventAt, observationAt, person, recordText, signed, signOffAt } from "../support/competency.ts";
import { axeViolations } from "./site/axe.ts";
import { type Visit, withBrowser } from "./site/browser.ts";
import { ada, bert, withRecordSite } from "./site/record-site.ts";
import { addFile, cellText, doingsOn, savedBy, savedRecord } from "./site/record-steps.ts";

// Each of these goes over several pages.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const site = withRecordSite();
const visitor = withBrowser(() => site.url("localhost"));

/** The trainee whose key the page has made: mentors know no more than its public part. */
async function traineeOn({ page }: Visit) {
  const { file } = await savedRecord(page);
  return { ...person("nobody"), did: file.owner, name: "Jo" };
}

const now = () => new Date().toISOString();

describe("a file that is refused changes nothing, and says why", () => {
  let visit: Visit;
  let before: string;
  let mine: string;
  beforeAll(async () => {
    visit = await visitor.open("record/index.html");
    await doingsOn(visit.page, site, site.url("localhost")).read();
    await doingsOn(visit.page, site, site.url("localhost")).openRecord();
    const { text, file } = await savedRecord(visit.page);
    mine = text;
    before = JSON.stringify(file.events);
  });

  const files: readonly (readonly [what: string, code: string, text: () => string | Promise<string>])[] = [
    ["no JSON", "not-json", () => "Dear mentor,"],
    ["cut off", "not-json", () => mine.slice(0, -40)],
    ["of a name twice", "not-json", () => mine.replace('"record": 1', '"record": 1, "record": 1')],
    ["something else", "schema", () => '{"hello": 1}'],
    ["edited", "owner-signature", () => mine.replace('"name": "', '"name": "Dr ')],
    ["with an event edited", "event-id", () => mine.replace('"revision": 1', '"revision": 2')],
    ["of another person", "subject-mismatch", () => recordText(person("Eve"), [])],
    ["a sign-off for another person", "subject-mismatch", () => forEve()],
    ["a sign-off by nobody listed", "issuer-unlisted", async () => credential(person("Eve"))],
    ["a sign-off beyond the mentor's level", "not-allowed", async () => credential(bert)],
    [
      "a sign-off changed after signing",
      "signature",
      async () => (await credential(ada)).replace('"Jo"', '"Joe"'),
    ],
  ];

  async function credential(mentor: typeof ada): Promise<string> {
    const jo = await traineeOn(visit);
    return JSON.stringify(await signed(signOffAt(now(), mentor, jo, site.release()), mentor));
  }

  async function forEve(): Promise<string> {
    return JSON.stringify(await signed(signOffAt(now(), ada, person("Eve"), site.release()), ada));
  }

  test.each(files)("%s: %s", async (_, code, text) => {
    const { page } = visit;
    const said = await addFile(page, await text(), "given.json");
    expect(said).toContain("given.json was not added: nothing of your record was changed.");
    expect(said).toContain(code);
    const { file } = await savedRecord(page);
    expect(JSON.stringify(file.events)).toBe(before);
  });
});

test("a file of 100 MB is refused before it is read whole", async () => {
  const { page } = await visitor.open("record/index.html");
  const file = join(site.dir, "..", "large.json");
  writeFileSync(file, "[");
  truncateSync(file, 100 * 1024 * 1024);
  await page.getByLabel("Add a file to it").setInputFiles(file);
  await expect.poll(() => page.locator(".file-said").innerText()).toContain("too-large");
});

describe("what a mentor signed", () => {
  let visit: Visit;
  let credentials: JsonObject[];
  beforeAll(async () => {
    visit = await visitor.open("record/index.html");
    const jo = await traineeOn(visit);
    const observed = await signed(observationAt(now(), ada, jo, site.release()), ada);
    credentials = [observed, await signed(signOffAt(now(), ada, jo, site.release()), ada)];
  });

  test("is added once, and shows in the log and among the sign-offs", async () => {
    const { page, troubles } = visit;
    expect(await addFile(page, JSON.stringify(credentials))).toContain("Added 2 entries from file.json.");
    expect(await addFile(page, JSON.stringify(credentials[1]))).toContain("Your record had everything");
    expect(await cellText(page, "At the bench")).toMatch(/^unaided, \d/);
    expect(await cellText(page, "Signed off")).toMatch(/^alone until \d/);
    expect(await cellText(page, "Next")).toBe("Signed off.");
    const row = page.getByRole("row", { name: /^Open the box revision 1 alone Ada/ });
    expect(await row.innerText()).toMatch(/yes/);
    expect(await axeViolations(page)).toEqual([]);
    expect(troubles).toEqual([]);
  });

  test("is printed as a statement by itself, without the rest of the page", async () => {
    const { page } = visit;
    await page.getByRole("button", { name: "Statement of sign-off: Open the box" }).click();
    const heading = page.getByRole("heading", { name: "Statement of sign-off" });
    await expect.poll(() => heading.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await page.locator(".statement").innerText()).toMatch(/Jo may do this work alone: Open the box\./);
    expect(await axeViolations(page)).toEqual([]);
    await page.emulateMedia({ media: "print" });
    expect(await heading.isVisible()).toBe(true);
    for (const hidden of [
      page.locator(".log"),
      page.getByRole("heading", { level: 1 }),
      page.locator(".sign-offs"),
    ])
      expect(await hidden.isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
    await page.getByRole("button", { name: "Close" }).click();
    await expect.poll(() => page.locator(".statement").count()).toBe(0);
  });

  test("goes into a calendar", async () => {
    const { page } = visit;
    const button = page.getByRole("button", { name: "What lapses, for a calendar" });
    const { name, text } = await savedBy(page, () => button.click());
    expect(name).toBe("sign-offs.ics");
    // RFC 5545: the day two years from now (24 months), as eight figures.
    const year = new Date().getUTCFullYear() + 2;
    expect(text).toMatch(new RegExp(`DTSTART;VALUE=DATE:${year}\\d{4}\r\n`));
    expect(text.match(/BEGIN:VEVENT/g)).toHaveLength(1);
  });

  test("on paper the log and the sign-offs stay, and nothing to press", async () => {
    const { page } = visit;
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".log").isVisible()).toBe(true);
    expect(await page.locator(".sign-offs").isVisible()).toBe(true);
    for (const button of await page.getByRole("button").all()) expect(await button.isVisible()).toBe(false);
    await page.emulateMedia({ media: null });
  });
});

test("two copies come together: nothing is lost, nothing stands twice, the later name holds", async () => {
  const { page } = await visitor.open("record/index.html");
  const doings = doingsOn(page, site, site.url("localhost"));
  await doings.read();
  await doings.openRecord();
  const early = await savedRecord(page);
  await doings.acknowledge();
  await doings.openRecord();
  await page.getByLabel("Name, as your mentor knows you").fill("Jo");
  await page.keyboard.press("Enter");
  await page.getByText("Kept. Your file will say Jo.").waitFor();
  expect(await addFile(page, early.text)).toContain("Your record had everything");
  const { file } = await savedRecord(page);
  expect(file.events.map(({ kind }) => kind).sort()).toEqual(["hazard", "read"]);
  expect(file.name).toBe("Jo");
  expect(file.events).toEqual(expect.arrayContaining([...early.file.events]));
});

test("a record of another programme is not taken", async () => {
  const { page } = await visitor.open("record/index.html");
  const eve = person("Eve");
  const text = await recordText(eve, [eventAt(now(), { kind: "hazard", hazard: "vapour" })]);
  const other = JSON.parse(text) as { programme: string };
  expect(
    await addFile(page, JSON.stringify({ ...other, programme: "tag:elsewhere.example,2026:x" })),
  ).toContain("was not added");
});
