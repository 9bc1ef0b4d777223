/** The mentor's desk with nothing but keys: from a trainee's file to a signed observation that is handed back. */
import type { Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import { person, recordText } from "../support/competency.ts";
import { withBrowser } from "./site/browser.ts";
import { checkedByTool } from "./site/checked-by-tool.ts";
import { give, keyFile, passphrase } from "./site/desk-steps.ts";
import { keysOf } from "./site/hands.ts";
import { hasFocus, pressByKey, tabTo } from "./site/keyboard.ts";
import { withRecordSite } from "./site/record-site.ts";
import { savedBy } from "./site/record-steps.ts";

// Hundreds of keys are pressed.
vi.setConfig({ testTimeout: 240_000 });

const site = withRecordSite();
const visitor = withBrowser(() => site.url("localhost"));

/** The system's own dialog lies outside the page: the field has the focus, and then the file. */
async function giveByKey(page: Page, label: string, text: string, name: string): Promise<void> {
  await tabTo(page, page.getByLabel(label, { exact: true }));
  await give(page, label, text, name);
}

test("a file is opened, an observation signed and handed back by keys alone", async () => {
  const { page, troubles } = await visitor.open("desk/index.html");
  const keys = keysOf(page);
  await giveByKey(page, "Key file", await keyFile("Ada"), "ada.key.json");
  await keys.write(page.getByLabel("Its passphrase"), passphrase);
  await page.keyboard.press("Enter");
  await page.getByText("The programme lists it as that of Ada").waitFor();

  await giveByKey(page, "Open trainees’ files", await recordText(person("Jo"), []), "jo.record.json");
  const heading = page.getByRole("heading", { level: 2, name: "Jo" });
  await expect.poll(() => hasFocus(heading)).toBe(true);

  for (const box of await page.locator(".desk-trainee").getByRole("checkbox").all())
    if (!(await box.isChecked())) await keys.tick(box);
  await keys.pick(page.getByLabel(/^not yet, because/));
  await pressByKey(page, page.getByRole("button", { name: "Sign this observation" }));
  const said = page.locator(".desk-trainee .file-said");
  await expect.poll(() => said.innerText()).toContain("ends in a reason");
  await expect.poll(() => hasFocus(said)).toBe(true);

  const words = page.getByLabel("In words", { exact: true });
  await tabTo(page, words, "Shift+Tab");
  await page.keyboard.type("the brake was forgotten");
  await pressByKey(page, page.getByRole("button", { name: "Sign this observation" }));
  await page.getByText("1 statement signed here that the file does not have.").waitFor();
  const save = page.getByRole("button", { name: "Save what was signed" });
  const { text } = await savedBy(page, () => pressByKey(page, save));
  const [statement] = JSON.parse(text) as [object];
  expect(text).toContain("the brake was forgotten");
  const { files } = await checkedByTool(site, "signed.json", JSON.stringify(statement));
  expect(files).toMatchObject([{ what: "a signed statement", problems: [] }]);
  expect(troubles).toEqual([]);
});
