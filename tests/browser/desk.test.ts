/** The mentor's desk: keys, what is signed and what is refused, and what works at which address. */
import type { Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { gunzip } from "../../src/cli/gzip.ts";
import { portable } from "../../src/engine/competency/libraries.ts";
import { placesIn, readStatusList } from "../../src/engine/competency/status-list.ts";
import { observationAt, person, recordText, statementEvent } from "../support/competency.ts";
import { axeViolations } from "./site/axe.ts";
import { withBrowser } from "./site/browser.ts";
import { give, useKey } from "./site/desk-steps.ts";
import { ada, bert, withRecordSite } from "./site/record-site.ts";
import { savedBy } from "./site/record-steps.ts";

const site = withRecordSite();
const visitor = withBrowser(() => site.url("localhost"));
const jo = person("Jo");
async function openJo(page: Page, text: string): Promise<void> {
  await give(page, "Open trainees’ files", text, "jo.record.json");
  await page.getByRole("heading", { level: 2, name: "Jo" }).waitFor();
}

const said = (page: Page) => page.locator(".desk-trainee .file-said");

let watched: string;
beforeAll(async () => {
  const observation = observationAt("2026-03-10T19:00:00Z", ada, jo, site.release());
  watched = await recordText(jo, [await statementEvent(observation, ada)]);
});

describe("a key made in the browser", () => {
  test("is kept, can't be read out, says its name for the coordinator, and is forgotten when asked twice", async () => {
    const { page, troubles } = await visitor.open("desk/index.html");
    await page.getByRole("button", { name: "Make a key in this browser" }).click();
    await page.getByText("The programme does not list this key yet").waitFor();
    const did = await page.locator(".did").innerText();
    expect(did).toMatch(/^did:key:z6Mk\w{44}$/);
    await page.reload();
    expect(await page.locator(".did").innerText()).toBe(did);
    const isLocked = await page.evaluate(async () => {
      const [{ name }] = (await indexedDB.databases()).filter(({ name }) =>
        name?.startsWith("benchwright-desk"),
      ) as [{ name: string }];
      const database = await new Promise<IDBDatabase>((resolve) => {
        const asked = indexedDB.open(name);
        asked.onsuccess = () => resolve(asked.result);
      });
      const kept = await new Promise<{ key: CryptoKey }>((resolve) => {
        const asked = database.transaction("key").objectStore("key").get("mine");
        asked.onsuccess = () => resolve(asked.result);
      });
      const refused = await crypto.subtle.exportKey("pkcs8", kept.key).then(
        () => false,
        () => true,
      );
      database.close();
      return refused && !kept.key.extractable;
    });
    expect(isLocked).toBe(true);
    await page.getByRole("button", { name: "Forget the key" }).click();
    await page.getByRole("button", { name: "Forget it" }).click();
    await page.getByText("This browser signs nothing any more.").waitFor();
    await page.reload();
    expect(await page.getByRole("button", { name: "Make a key in this browser" }).count()).toBe(1);
    expect(troubles).toEqual([]);
  });
});

describe("what a mentor may not sign", () => {
  test("a level above theirs can't be chosen, and it is said beside it why", async () => {
    const { page, troubles } = await visitor.open("desk/index.html");
    await useKey(page, "Bert");
    await openJo(page, watched);
    expect(await page.getByLabel(/^under eye:/).isEnabled()).toBe(true);
    for (const level of ["alone", "may teach"]) {
      const choice = page.getByLabel(new RegExp(`^${level}:`));
      expect(await choice.isDisabled()).toBe(true);
      const why = page.locator(`[id="${await choice.getAttribute("aria-describedby")}"]`);
      expect(await why.innerText()).toBe(`Bert may sign up to "under eye", not "${level}".`);
    }
    expect(await axeViolations(page)).toEqual([]);
    expect(troubles).toEqual([]);
  });

  test("with the highest level every one can be chosen", async () => {
    const { page } = await visitor.open("desk/index.html");
    await useKey(page, "Ada");
    await openJo(page, watched);
    for (const level of ["under eye", "alone", "may teach"])
      expect(await page.getByLabel(new RegExp(`^${level}:`)).isEnabled()).toBe(true);
    expect(await page.locator(".desk-trainee .choice small").count()).toBe(0);
  });

  test("with a key that the programme does not list there is nothing to sign", async () => {
    const { page } = await visitor.open("desk/index.html");
    await page.getByRole("button", { name: "Make a key in this browser" }).click();
    await page.getByText("The programme does not list this key yet").waitFor();
    await openJo(page, watched);
    await page.getByText("Nothing can be signed yet").waitFor();
    expect(await page.getByRole("button", { name: /^Sign this/ }).count()).toBe(0);
  });
});

describe("what is refused", () => {
  const cases: readonly (readonly [
    what: string,
    mentor: string,
    level: string,
    code: string,
    text: () => Promise<string>,
  ])[] = [
    ["evidence that is missing", "Ada", "alone", "evidence", () => recordText(jo, [])],
    [
      "the mentor's own record",
      "Ada",
      "under eye",
      "self-signed",
      () => recordText({ ...ada, name: "Jo" }, []),
    ],
    [
      "a file that was edited",
      "Ada",
      "under eye",
      "owner-signature",
      async () => (await recordText({ ...jo, name: "Joe" }, [])).replace('"Joe"', '"Jo"'),
    ],
  ];
  test.each(cases)("%s", async (_, mentor, level, code, text) => {
    const { page } = await visitor.open("desk/index.html");
    await useKey(page, mentor);
    await openJo(page, await text());
    await page.getByLabel(new RegExp(`^${level}:`)).check();
    await page.getByRole("button", { name: "Sign this sign-off" }).click();
    await expect.poll(() => said(page).innerText()).toContain("Nothing was signed.");
    expect(await said(page).locator("code").allInnerTexts()).toContain(code);
    expect(await page.getByRole("button", { name: "Save what was signed" }).count()).toBe(0);
  });

  test("what the trainee has still to do by themself, in words", async () => {
    const { page } = await visitor.open("desk/index.html");
    await useKey(page, "Ada");
    await openJo(page, watched);
    await page.getByLabel(/^alone:/).check();
    await page.getByRole("button", { name: "Sign this sign-off" }).click();
    await expect.poll(() => said(page).innerText()).toContain("For the trainee to do: Read the sheet.");
  });

  test("an outcome without its reason", async () => {
    const { page } = await visitor.open("desk/index.html");
    await useKey(page, "Bert");
    await openJo(page, watched);
    for (const box of await page.getByLabel(/^I have watched/).all()) await box.check();
    await page.getByLabel(/^not yet, because/).check();
    await page.getByRole("button", { name: "Sign this observation" }).click();
    await expect.poll(() => said(page).innerText()).toContain("ends in a reason");
  });
});

describe("a lost phone and a list of withdrawals", () => {
  test("old key → new key is signed; the list is renewed with what is withdrawn", async () => {
    const { page } = await visitor.open("desk/index.html");
    await useKey(page, "Ada");
    await openJo(page, watched);
    await page.getByText("They have lost their key").click();
    await page.getByLabel("Their old key").fill(bert.did);
    await page.getByRole("button", { name: /^Sign: old key/ }).click();
    const save = page.getByRole("button", { name: "Save what was signed" });
    await save.waitFor();
    const { name, text } = await savedBy(page, () => save.click());
    expect(name).toMatch(/^jo-\d{4}-\d\d-\d\d\.signed\.json$/);
    const [statement] = JSON.parse(text) as [{ credentialStatus: { statusListIndex: string } }];
    await give(page, "Withdraw what is in a file", text, name);
    await page.getByText("To be withdrawn with the next list").waitFor();
    const list = await savedBy(page, () =>
      page.getByRole("button", { name: "Save the list, renewed" }).click(),
    );
    expect(list.name).toBe("ada.json");
    const read = await readStatusList(JSON.parse(list.text), { primitives: portable, gunzip });
    expect(read.ok && placesIn(read.list.bits)).toEqual([Number(statement.credentialStatus.statusListIndex)]);
    expect(read.ok && read.list.issuer).toBe(ada.did);
  });
});

test("the desk keeps the rules of axe and fits a phone, light and dark, with a file open", async () => {
  const { page, troubles } = await visitor.open("desk/index.html");
  await useKey(page, "Ada");
  await openJo(page, watched);
  for (const width of [320, 768, 1280])
    for (const colorScheme of ["light", "dark"] as const) {
      await page.setViewportSize({ width, height: 900 });
      await page.emulateMedia({ colorScheme });
      expect(await axeViolations(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
  expect(troubles).toEqual([]);
});

describe.each(["plain http", "disk"] as const)("opened by %s", (way) => {
  const elsewhere = withBrowser(() => site.url(way));

  test("the page says what works there, and it does", async () => {
    const { page, troubles } = await elsewhere.open("desk/index.html");
    const signs = way === "disk";
    expect(await page.locator(".record-here").innerText()).toContain(
      signs ? "Everything on it works here." : "but nothing signed",
    );
    expect(await page.getByRole("button", { name: "Make a key in this browser" }).count()).toBe(
      signs ? 1 : 0,
    );
    await openJo(page, watched);
    expect(await page.getByRole("row", { name: /^Observation, unaided/ }).count()).toBe(1);
    await page.reload();
    await page.getByRole("button", { name: "Jo", exact: true }).waitFor();
    if (signs) await useKey(page, "Ada");
    expect(troubles).toEqual([]);
  });
});
