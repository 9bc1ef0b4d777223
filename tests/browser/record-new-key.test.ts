/** A lost phone: a mentor signs the new key over, and with that statement what was done under the old one counts. */
import { expect, test, vi } from "vitest";
import { withBrowser } from "./site/browser.ts";
import { checkedByTool } from "./site/checked-by-tool.ts";
import { give, handedBack, useKey } from "./site/desk-steps.ts";
import { withRecordSite } from "./site/record-site.ts";
import { addFile, cellText, doingsOn, savedRecord } from "./site/record-steps.ts";

// Three browsers, and several pages in each.
vi.setConfig({ testTimeout: 240_000 });

const site = withRecordSite();
const visitor = withBrowser(() => site.url("localhost"));
const cells = ["Read", "Quiz", "Practice", "Next"];

test("the log on the new phone stands as it stood on the old one", async () => {
  const old = (await visitor.open("record/index.html")).page;
  const doings = doingsOn(old, site, site.url("localhost"));
  await doings.read();
  await doings.acknowledge();
  await doings.sitQuiz();
  await doings.practise();
  await doings.openRecord();
  await expect.poll(() => cellText(old, "Quiz")).toMatch(/^passed, 100 %/);
  const before = [];
  for (const cell of cells) before.push(await cellText(old, cell));
  const lost = await savedRecord(old);

  const { page, troubles } = await visitor.open("record/index.html");
  const fresh = await savedRecord(page);
  expect(fresh.file.owner).not.toBe(lost.file.owner);
  expect(await addFile(page, lost.text, "old.record.json")).toContain("subject-mismatch");

  const desk = (await visitor.open("desk/index.html")).page;
  await useKey(desk, "Ada");
  await give(desk, "Open trainees’ files", fresh.text, "new.record.json");
  await desk.getByText("They have lost their key").click();
  await desk.getByLabel("Their old key").fill(lost.file.owner);
  await desk.getByRole("button", { name: /^Sign: old key/ }).click();
  await desk.getByText("1 statement signed here that the file does not have.").waitFor();

  expect(await addFile(page, (await handedBack(desk)).text, "new-key.json")).toContain("Added 1 entr");
  expect(await addFile(page, lost.text, "old.record.json")).toContain("Added 4 entries");
  for (const [at, cell] of cells.entries()) await expect.poll(() => cellText(page, cell)).toBe(before[at]);
  const { ok, files } = await checkedByTool(site, "new.record.json", (await savedRecord(page)).text);
  expect(files[0]!.problems).toEqual([]);
  expect(ok).toBe(true);
  expect(troubles).toEqual([]);
});
