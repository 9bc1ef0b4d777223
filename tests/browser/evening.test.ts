/** The whole evening, from the trainee's first page to the coordinator's roster; and the evening sheet with many trainees. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { person, recordText } from "../support/competency.ts";
import { runTool } from "../support/run-command.ts";
import { axeViolations } from "./site/axe.ts";
import { type Visit, withBrowser } from "./site/browser.ts";
import { checkedByTool } from "./site/checked-by-tool.ts";
import { give, useKey } from "./site/desk-steps.ts";
import { withRecordSite } from "./site/record-site.ts";
import { addFile, cellText, doingsOn, savedBy, savedRecord } from "./site/record-steps.ts";

const site = withRecordSite();
const visitor = withBrowser(() => site.url("localhost"));
const folder = mkdtempSync(join(tmpdir(), "benchwright-evening-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("a whole evening", () => {
  let trainee: Visit;
  let mentor: Visit;
  let handedIn: string;
  let handedBack: string;
  let final: string;

  test("a trainee reads, passes, practises, performs, and saves the file", async () => {
    trainee = await visitor.open("record/index.html");
    const { page } = trainee;
    const doings = doingsOn(page, site, site.url("localhost"));
    await doings.read();
    await doings.acknowledge();
    await doings.sitQuiz();
    await doings.practise();
    await doings.perform();
    await doings.openRecord();
    await page.getByLabel("Name, as your mentor knows you").fill("Jo");
    await page.keyboard.press("Enter");
    await page.getByText("Kept. Your file will say Jo.").waitFor();
    expect(await cellText(page, "Next")).toMatch(/^Ready to be watched/);
    handedIn = (await savedRecord(page)).text;
  });

  test("a mentor opens it, sees it marked again, observes and signs, and hands a file back", async () => {
    mentor = await visitor.open("desk/index.html");
    const { page } = mentor;
    await useKey(page, "Ada");
    await give(page, "Open trainees’ files", handedIn, "jo.record.json");
    await page.getByText("All of the file adds up.").waitFor();
    expect(await page.getByRole("row", { name: /^Quiz, sitting 1: Open the box/ }).innerText()).toMatch(
      /passed\s+yes$/,
    );
    for (const box of await page.locator(".desk-trainee").getByRole("checkbox").all()) await box.check();
    await page.getByLabel(/^unaided:/).check();
    await page.getByLabel("In words", { exact: true }).fill("Calm, and every screw accounted for.");
    await page.getByRole("button", { name: "Sign this observation" }).click();
    await page.getByText("1 statement signed here that the file does not have.").waitFor();
    await page.getByLabel(/^alone:/).check();
    await page.getByRole("button", { name: "Sign this sign-off" }).click();
    await page.getByText("2 statements signed here that the file does not have.").waitFor();
    const { text, name } = await savedBy(page, () =>
      page.getByRole("button", { name: "Save what was signed" }).click(),
    );
    expect(name).toMatch(/^jo-.*\.signed\.json$/);
    handedBack = text;
    expect(mentor.troubles).toEqual([]);
  });

  test("the trainee adds it, and prints the statement", async () => {
    const { page } = trainee;
    expect(await addFile(page, handedBack)).toContain("Added 2 entries");
    expect(await cellText(page, "Signed off")).toMatch(/^alone until /);
    expect(await cellText(page, "Next")).toBe("Signed off.");
    await page.getByRole("button", { name: "Statement of sign-off: Open the box" }).click();
    await page.emulateMedia({ media: "print" });
    await expect
      .poll(() => page.locator(".statement").innerText())
      .toContain("Jo may do this work alone: Open the box.");
    expect((await page.pdf()).subarray(0, 5).toString()).toBe("%PDF-");
    await page.emulateMedia({ media: null });
    final = (await savedRecord(page)).text;
    expect(trainee.troubles).toEqual([]);
  });

  test("record check says ok; of a tampered copy it says why not", async () => {
    expect(await checkedByTool(site, "jo.record.json", final)).toMatchObject({ ok: true });
    const forged = final.replace('"Ada"', '"Eve"');
    expect(forged).not.toBe(final);
    const { ok, files } = await checkedByTool(site, "forged.record.json", forged);
    const codes = files[0]!.problems.map(({ code }) => code);
    expect(ok).toBe(false);
    expect(codes).toContain("owner-signature");
    expect(codes).toContain("event-id");
    expect(files[0]!.problems.map(({ message }) => message).join()).toContain("it was changed after it was");
  });

  test("the roster has Jo working alone on the module", async () => {
    const records = join(folder, "records");
    mkdirSync(records);
    writeFileSync(join(records, "jo.record.json"), final);
    const { code, stdout, stderr } = await runTool(["roster", records, "--site", site.dir, "--json"]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: "" });
    const { people } = JSON.parse(stdout) as { people: { name: string; modules: { box: unknown } }[] };
    expect(people.map(({ name }) => name)).toEqual(["Jo"]);
    expect(people[0]!.modules.box).toMatchObject({ standing: "signed off", level: "alone" });
  });

  test("the page says of both what the tool says", async () => {
    const { page } = await visitor.open("check/index.html");
    await give(page, "Choose a file", final, "jo.record.json");
    await page.getByRole("heading", { name: "All of it adds up: jo.record.json" }).waitFor();
    await give(page, "Choose a file", final.replace('"Ada"', '"Eve"'), "forged.record.json");
    await page.getByRole("heading", { name: "Not all of it adds up: forged.record.json" }).waitFor();
    expect(await page.locator(".problems code").allInnerTexts()).toContain("owner-signature");
  });
});

describe("an evening sheet", () => {
  const people = Array.from({ length: 12 }, (_, at) => person(`Trainee ${String(at + 1).padStart(2, "0")}`));
  let visit: Visit;
  let page: Page;
  beforeAll(async () => {
    visit = await visitor.open("desk/index.html");
    ({ page } = visit);
    await useKey(page, "Ada", true);
    await page.goto(`${site.url("localhost")}desk/evening/index.html`);
    const files = await Promise.all(
      people.map(async (each) => ({
        name: `${each.name}.record.json`,
        mimeType: "application/json",
        buffer: Buffer.from(await recordText(each, [])),
      })),
    );
    await page.getByLabel("Open trainees’ files").setInputFiles(files);
    await page.getByText("12 trainees on the list.").waitFor();
    await page.getByLabel("What is watched").selectOption({ label: "Open the box, whole" });
  });

  const card = (name: string) => page.getByRole("region", { name, exact: true });

  test("keeps what is noted on a reload", async () => {
    await card("Trainee 01")
      .getByLabel(/^unaided/)
      .check();
    await card("Trainee 01").getByRole("checkbox").first().check();
    await card("Trainee 02")
      .getByLabel(/^not yet, because/)
      .check();
    await card("Trainee 02").getByLabel("In words, for Trainee 02").fill("the brake was forgotten");
    await card("Trainee 03")
      .getByLabel(/^stopped for safety/)
      .check();
    for (const name of ["Trainee 01", "Trainee 02", "Trainee 03"])
      await card(name).getByText("Kept on this device.").waitFor();
    await page.reload();
    expect(await page.getByRole("heading", { level: 3 }).count()).toBe(12);
    expect(
      await card("Trainee 01")
        .getByLabel(/^unaided/)
        .isChecked(),
    ).toBe(true);
    expect(await card("Trainee 01").getByRole("checkbox").first().isChecked()).toBe(true);
    expect(await card("Trainee 02").getByLabel("In words, for Trainee 02").inputValue()).toBe(
      "the brake was forgotten",
    );
    expect(
      await card("Trainee 03")
        .getByLabel(/^stopped for safety/)
        .isChecked(),
    ).toBe(true);
  });

  test("prints a row and a code for each, on A4, and nothing else", async () => {
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".evening-row .qr").count()).toBe(12);
    expect(await page.locator(".evening-row").first().isVisible()).toBe(true);
    expect(await page.locator(".evening-card").first().isVisible()).toBe(false);
    expect((await page.pdf({ format: "A4" })).subarray(0, 5).toString()).toBe("%PDF-");
    await page.emulateMedia({ media: null });
  });

  test("keeps the rules of axe and fits a phone", async () => {
    for (const width of [320, 1280])
      for (const colorScheme of ["light", "dark"] as const) {
        await page.setViewportSize({ width, height: 900 });
        await page.emulateMedia({ colorScheme });
        expect(await axeViolations(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
      }
  });

  test("signs what is complete, says what is not, and hands a file to each of those", async () => {
    await page.getByRole("button", { name: "Sign all of it" }).click();
    await page.getByText("2 observations signed.").waitFor();
    expect(await page.locator(".problems").innerText()).toContain("Trainee 03: Write what happened");
    const names: string[] = [];
    page.on("download", (download) => names.push(download.suggestedFilename()));
    await page.getByRole("button", { name: "Save all files, one per trainee" }).click();
    await expect.poll(() => names.length, { timeout: 20_000 }).toBe(2);
    expect(names.sort().join()).toMatch(/^trainee-01-.*\.signed\.json,trainee-02-.*\.signed\.json$/);
    expect(visit.troubles).toEqual([]);
  });

  test("its code opens the desk at the trainee", async () => {
    await page.goto(`${site.url("localhost")}desk/index.html#${people[4]!.did}`);
    const heading = page.getByRole("heading", { level: 2, name: "Trainee 05" });
    await expect.poll(() => heading.evaluate((element) => element === document.activeElement)).toBe(true);
  });
});

describe("over plain http", () => {
  const elsewhere = withBrowser(() => site.url("plain http"));

  test("nothing can be signed; the notes go as a file to an address that can", async () => {
    const jo = await recordText(person("Jo"), []);
    const { page } = await elsewhere.open("desk/evening/index.html");
    expect(await page.locator(".record-here").innerText()).toContain("but nothing signed");
    expect(await page.getByRole("button", { name: "Sign all of it" }).count()).toBe(0);
    await give(page, "Open trainees’ files", jo, "jo.record.json");
    await page.getByLabel(/^unaided/).check();
    await page.getByLabel("In words, for Jo").fill("calm");
    const button = page.getByRole("button", { name: "Save the notes as a file" });
    const { name, text } = await savedBy(page, () => button.click());
    expect(name).toBe("evening.notes.json");
    const other = (await visitor.open("desk/index.html")).page;
    await useKey(other, "Ada", true);
    await other.goto(`${site.url("localhost")}desk/evening/index.html`);
    await give(other, "Open trainees’ files", jo, "jo.record.json");
    await other.getByText("1 trainee on the list.").waitFor();
    await give(other, "Take up notes from a file", '{"hello": 1}', "other.json");
    await other.getByText("This is no file of notes").waitFor();
    await give(other, "Take up notes from a file", text, name);
    await other.getByText("1 note taken up.").waitFor();
    await other.getByRole("button", { name: "Sign all of it" }).click();
    await other.getByText("1 observation signed.").waitFor();
  });
});
