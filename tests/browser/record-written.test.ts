/** What the pages write into the record: seen on "My record", in its file, and by whoever reads that. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, test, vi } from "vitest";
import { dayOf } from "../../src/engine/competency/calendar.ts";
import { checkFile } from "../../src/engine/competency/check-record.ts";
import { portable } from "../../src/engine/competency/libraries.ts";
import { readRecord } from "../../src/engine/competency/record-file.ts";
import { Releases } from "../../src/engine/competency/releases.ts";
import { stateOf } from "../../src/engine/competency/standing.ts";
import { type Visit, withBrowser } from "./site/browser.ts";
import { type Way, withRecordSite } from "./site/record-site.ts";
import { cellText, doingsOn, savedRecord } from "./site/record-steps.ts";

// Each of these goes over several pages.
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const site = withRecordSite();
/** Today, by the programme's own rules. */
function situation() {
  const { rules, modules } = site.programme();
  const on = dayOf(Date.now(), rules.timeZone);
  return { rules, releases: new Releases(modules, [site.release()]), statuses: [], on };
}

const ways: readonly Way[] = ["localhost", "plain http", "disk"];

describe.each(ways)("opened by %s", (way) => {
  const visitor = withBrowser(() => site.url(way));
  let visit: Visit;
  beforeAll(async () => {
    visit = await visitor.open("record/index.html");
  });

  test("all that is done goes into the record, and stays there", async () => {
    const { page, troubles } = visit;
    const doings = doingsOn(page, site, site.url(way));
    expect(await page.evaluate(() => globalThis.isSecureContext)).toBe(way !== "plain http");
    const links = await page
      .locator(".log .next a")
      .evaluateAll((all) => all.map((it) => it.getAttribute("href")));
    expect(links.length).toBeGreaterThan(3);
    expect(links.filter((link) => !existsSync(join(site.dir, "record", link!.replace(/#.*/, ""))))).toEqual(
      [],
    );
    await doings.read();
    await doings.acknowledge();
    await doings.sitQuiz();
    await doings.practise();
    await doings.perform();
    await doings.openRecord();
    expect(await cellText(page, "Read")).toMatch(/^\d+ \w+ \d{4} hazards 1 of 1$/);
    expect(await cellText(page, "Quiz")).toMatch(/^passed, 100 % \d/);
    expect(await cellText(page, "Practice")).toMatch(/^1 of 1 \d/);
    expect(await cellText(page, "On paper")).toMatch(/^done \d/);
    expect(await cellText(page, "Next")).toMatch(/^Ready to be watched/);
    expect(troubles).toEqual([]);
  });

  test("its file stands up to whoever reads it", async () => {
    const { page } = visit;
    await page.reload();
    const { text, file } = await savedRecord(page);
    expect(file.events.map(({ kind }) => kind).sort()).toEqual(["hazard", "practice", "quiz", "read", "run"]);
    expect(checkFile(text, { ...situation(), primitives: portable })).toEqual([]);
    const { record } = readRecord(text, portable);
    const state = stateOf({ ...situation(), record: record!, primitives: portable }).get("box");
    expect(state).toMatchObject({ standing: "ready to be watched" });
  });

  test("the page says what works there", async () => {
    const { page } = visit;
    const said = await page.locator(".record-here").innerText();
    const wanted = { localhost: "at a secure address", "plain http": "over plain http", disk: "from a disk" };
    expect(said).toContain(wanted[way]);
    const keyForm = page.getByRole("button", { name: "Save my key as a file" });
    expect(await keyForm.count()).toBe(way === "plain http" ? 0 : 1);
    expect(said.includes("can’t be taken along")).toBe(way === "plain http");
  });
});

describe("a sitting", () => {
  const visitor = withBrowser(() => site.url("localhost"));

  test("that was failed is kept too; the next follows from it, each is kept once, and the file is offered on the spot", async () => {
    const { page } = await visitor.open("record/index.html");
    const doings = doingsOn(page, site, site.url("localhost"));
    await doings.sitQuiz(false);
    await page.getByRole("button", { name: "Sit again" }).first().click();
    await doings.sitQuiz(true);
    await page.reload();
    await page.reload();
    const { text, file } = await savedRecord(page);
    expect(await page.getByText(/^Saved as .*\.record\.json/).count()).toBe(1);
    const sittings = file.events.flatMap((event) => (event.kind === "quiz" ? [event] : []));
    expect(sittings.map(({ attempt, claimed }) => [attempt, claimed?.passed])).toEqual([
      [1, false],
      [2, true],
    ]);
    expect(new Set(sittings.map(({ seed }) => seed)).size).toBe(2);
    expect(checkFile(text, { ...situation(), primitives: portable })).toEqual([]);
  });
});

describe("a reading page", () => {
  const visitor = withBrowser(() => site.url("localhost"));

  test("leaves nothing behind while its button is not used", async () => {
    const { page } = await visitor.open("modules/box/index.html");
    await page.getByRole("button", { name: "I have read this sheet" }).waitFor();
    expect(await page.evaluate(() => indexedDB.databases())).toEqual([]);
    expect(await page.evaluate(() => [...document.scripts].map(({ src }) => src).join())).not.toContain(
      "recorder",
    );
  });

  test("says when it was read, and has nothing without script", async () => {
    const { page } = await visitor.open("modules/box/index.html");
    await page.getByRole("button", { name: "I have read this sheet" }).click();
    const said = page.getByText(/^Read on .* in your record/);
    await said.waitFor();
    await page.reload();
    await said.waitFor();
    expect(await page.getByRole("button", { name: "I have read this sheet" }).count()).toBe(0);
    await said.getByRole("link").click();
    await page.getByRole("heading", { level: 1, name: "My record" }).waitFor();
    const plain = await visitor.open("modules/box/index.html", { javaScriptEnabled: false });
    expect(await plain.page.locator(".note-place").isVisible()).toBe(false);
  });
});
