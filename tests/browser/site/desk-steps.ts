/** What a mentor does at the desk of the small programme that keeps records. */
import { createHash } from "node:crypto";
import type { Page } from "playwright-core";
import { webCipher } from "../../../src/engine/competency/key-cipher.ts";
import { lockKey } from "../../../src/engine/competency/key-file.ts";
import { savedBy } from "./record-steps.ts";

export const passphrase = "four words of mine";

/** As `person` makes it. */
const secretOf = (name: string) => new Uint8Array(createHash("sha256").update(`key of ${name}`).digest());

/** The key file of a mentor of the programme, under `passphrase`. */
export async function keyFile(name: string): Promise<string> {
  const bytes = { salt: new Uint8Array(16), iv: new Uint8Array(12) };
  return JSON.stringify(
    await lockKey({ secret: secretOf(name), passphrase, ...bytes }, webCipher(crypto.subtle)),
  );
}

/** Gives a file to the field with this label. */
export const give = (page: Page, label: string, text: string, name: string) =>
  page
    .getByLabel(label, { exact: true })
    .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });

/** Gives a key file and its passphrase, and asks for the key to be used. */
export async function tryKey(page: Page, text: string, words: string): Promise<void> {
  await give(page, "Key file", text, "mentor.key.json");
  await page.getByLabel("Its passphrase").fill(words);
  await page.getByRole("button", { name: "Use this key" }).click();
}

/** Opens the key file of a mentor of the programme. */
export async function useKey(page: Page, name: string, isKept = false): Promise<void> {
  if (isKept) await page.getByLabel(/^keep it in this browser/).check();
  await tryKey(page, await keyFile(name), passphrase);
  await page.getByText(`The programme lists it as that of ${name}`).waitFor();
}

/** Watches everything unaided and signs it. */
export async function signObservation(page: Page): Promise<void> {
  for (const box of await page.locator(".desk-trainee").getByRole("checkbox").all()) await box.check();
  await page.getByLabel(/^unaided:/).check();
  await page.getByRole("button", { name: "Sign this observation" }).click();
  await page.getByText("1 statement signed here that the file does not have.").waitFor();
}

/** What was signed, as it is handed back. */
export const handedBack = (page: Page): Promise<{ name: string; text: string }> =>
  savedBy(page, () => page.getByRole("button", { name: "Save what was signed" }).click());
