/** What a mentor does at the desk of the small programme that keeps records. */
import { createHash } from "node:crypto";
import type { Page } from "playwright-core";
import { webCipher } from "../../../src/engine/competency/key-cipher.ts";
import { lockKey } from "../../../src/engine/competency/key-file.ts";

const passphrase = "four words of mine";

/** As `person` makes it. */
const secretOf = (name: string) => new Uint8Array(createHash("sha256").update(`key of ${name}`).digest());

async function keyFile(name: string): Promise<string> {
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

/** Opens the key file of a mentor of the programme. */
export async function useKey(page: Page, name: string, isKept = false): Promise<void> {
  await give(page, "Key file", await keyFile(name), `${name}.key.json`);
  await page.getByLabel("Its passphrase").fill(passphrase);
  if (isKept) await page.getByLabel(/^keep it in this browser/).check();
  await page.getByRole("button", { name: "Use this key" }).click();
  await page.getByText(`The programme lists it as that of ${name}`).waitFor();
}
