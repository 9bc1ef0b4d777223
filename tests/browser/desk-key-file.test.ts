/** A mentor's key in a file: made in the page, listed by the coordinator, opened again, signed with; also where the browser has no Ed25519. */
import { expect, test, vi } from "vitest";
import { person, recordText } from "../support/competency.ts";
import { withBrowser } from "./site/browser.ts";
import { checkedByTool } from "./site/checked-by-tool.ts";
import { give, handedBack, signObservation, tryKey, useKey } from "./site/desk-steps.ts";
import { programmeText, withRecordSite } from "./site/record-site.ts";
import { addFile, savedBy, savedRecord } from "./site/record-steps.ts";

// Builds the site twice more.
vi.setConfig({ testTimeout: 240_000 });

const site = withRecordSite();
const visitor = withBrowser(() => site.url("localhost"));

test("a key file made in the page is listed, opens with its passphrase only, and what it signs is in order", async () => {
  const { page, troubles } = await visitor.open("desk/index.html");
  await page.getByLabel("Passphrase, 12 letters or more").fill("five words of my own");
  await page.getByLabel("The same once more").fill("five words of my own");
  const made = await savedBy(page, () => page.getByRole("button", { name: "Make a key file" }).click());
  expect(made.name).toBe("mentor.key.json");
  await page.getByText("The programme does not list this key yet").waitFor();
  const did = await page.locator(".did").innerText();
  expect(made.text).not.toContain("five words");

  const row = `  - {id: carl, name: Carl, key: "${did}", may-sign: all, from: 2020-01-01}\n`;
  await site.rebuild(new Map([["programme.yaml", programmeText + row]]));
  await page.reload();
  await tryKey(page, made.text, "four words of another");
  await page.getByText("The passphrase does not open this key file").waitFor();
  expect(await page.locator(".did").count()).toBe(0);
  await tryKey(page, made.text, "five words of my own");
  await page.getByText("The programme lists it as that of Carl").waitFor();
  expect(await page.locator(".did").innerText()).toBe(did);

  const renew = page.getByRole("button", { name: "Save the list, renewed" });
  const list = await savedBy(page, () => renew.click());
  await site.rebuild(new Map([[`withdrawals/${list.name}`, list.text]]));
  const trainee = (await visitor.open("record/index.html")).page;
  await page.reload();
  await tryKey(page, made.text, "five words of my own");
  await give(page, "Open trainees’ files", (await savedRecord(trainee)).text, "trainee.record.json");
  await page.getByText("All of the file adds up.").waitFor();
  await signObservation(page);
  expect(await addFile(trainee, (await handedBack(page)).text)).toContain("Added 1 entr");
  const { ok, files } = await checkedByTool(site, "trainee.record.json", (await savedRecord(trainee)).text);
  expect(files[0]).toMatchObject({ what: expect.stringContaining("1 event"), problems: [] });
  expect(ok).toBe(true);
  expect(troubles).toEqual([]);
});

test("a browser without Ed25519 says so, and signs with a key from a file as long as the page is open", async () => {
  const { page, troubles } = await visitor.open("about/index.html");
  await page.addInitScript(() => {
    const missing = () => Promise.reject(new DOMException("Unrecognized name.", "NotSupportedError"));
    const isMissing = (algorithm: unknown) =>
      algorithm === "Ed25519" || Reflect.get(Object(algorithm), "name") === "Ed25519";
    const { generateKey, importKey } = SubtleCrypto.prototype;
    SubtleCrypto.prototype.generateKey = function (...given: unknown[]) {
      return isMissing(given[0]) ? missing() : Reflect.apply(generateKey, this, given);
    };
    SubtleCrypto.prototype.importKey = function (...given: unknown[]) {
      return isMissing(given[2]) ? missing() : Reflect.apply(importKey, this, given);
    };
  });
  await page.goto(`${site.url("localhost")}desk/index.html`);
  await page.getByRole("button", { name: "Make a key in this browser" }).click();
  await page.getByText("This browser has no Ed25519 of its own").waitFor();
  expect(await page.locator(".did").count()).toBe(0);
  await useKey(page, "Ada", true);
  await page.getByText("The browser can’t keep it; it signs until you leave this page.").waitFor();
  await give(page, "Open trainees’ files", await recordText(person("Jo"), []), "jo.record.json");
  await page.getByText("All of the file adds up.").waitFor();
  await signObservation(page);
  const [statement] = JSON.parse((await handedBack(page)).text) as [object];
  const { files } = await checkedByTool(site, "signed.json", JSON.stringify(statement));
  expect(files).toMatchObject([{ what: "a signed statement", problems: [] }]);
  expect(troubles).toEqual([]);
});
