/** The vectors of tests/engine/competency once more, in Chromium: on localhost, and on plain http, where Web Crypto is missing. */
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { nodePrimitives } from "../../src/cli/primitives.ts";
import { webCipher } from "../../src/engine/competency/key-cipher.ts";
import { unlockKey } from "../../src/engine/competency/key-file.ts";
import { checkProof } from "../../src/engine/competency/proof.ts";
import {
  canonicalVectors,
  changed,
  eddsaJcs,
  hexOf,
  referenceJson,
  sample,
  signatureVectors,
} from "../engine/competency/reference.ts";
import { mentor, signedBy, statements } from "../engine/competency/statements.ts";
import type { InPage } from "./engine/record-in-page.ts";
import { withBrowser } from "./site/browser.ts";

declare global {
  var inPage: InPage;
}

const { outputFiles } = await build({
  entryPoints: [fileURLToPath(new URL("engine/record-in-page.ts", import.meta.url))],
  bundle: true,
  write: false,
  format: "iife",
  target: "chrome110",
});
const script = outputFiles[0]!.text;

const plainHttp = new URL(inject("siteUrl"));
plainHttp.hostname = "workshop.test";

describe.each([
  ["localhost", inject("siteUrl"), true],
  ["plain http", plainHttp.href, false],
])("on %s", (_, site, hasSubtle) => {
  const visitor = withBrowser(site);
  let opened: Promise<Page> | undefined;
  /** One page for all tests of the place. */
  const open = (): Promise<Page> => {
    opened ??= visitor.open("index.html").then(async ({ page }) => {
      await page.evaluate(script);
      return page;
    });
    return opened;
  };

  test("Web Crypto is there, or is not", async () => {
    const page = await open();
    expect(await page.evaluate(() => inPage.hasSubtle())).toBe(hasSubtle);
  });

  test("RFC 8785 and RFC 8032", async () => {
    const page = await open();
    const inputs = canonicalVectors.map(({ input }) => input);
    expect(await page.evaluate((texts) => texts.map(inPage.canonical), inputs)).toEqual(
      canonicalVectors.map(({ bytes }) => bytes),
    );
    expect(await page.evaluate((vectors) => vectors.map(inPage.signature), signatureVectors)).toEqual(
      signatureVectors.map(({ pub, sig }) => ({ pub, sig, verifies: true, verifiesChanged: false })),
    );
  });

  test("eddsa-jcs-2022, and the sample sign-off", async () => {
    const page = await open();
    const { unsigned, config, keys, text } = eddsaJcs;
    const made = await page.evaluate(
      ([document, proof, secret]) => inPage.eddsaJcs(document, proof, secret),
      [JSON.stringify(unsigned), JSON.stringify(config), keys.privateKeyMultibase] as const,
    );
    expect(made).toEqual({ hash: text("combinedHashJCS"), proofValue: text("sigBTC58JCS") });
    const documents = [
      sample,
      changed(sample, ["validUntil"], "2029-01-10T09:30:00Z"),
      changed(sample, ["@context", 2], "x:y"),
    ].map((document) => JSON.stringify(document));
    expect(await page.evaluate((list) => list.map(inPage.codeOf), documents)).toEqual([
      "sound",
      "signature",
      "context",
    ]);
  });

  test("what the page signs verifies in Node, and the other way round", async () => {
    const page = await open();
    for (const statement of statements) {
      const signed = await page.evaluate(([one, secret]) => inPage.signed(one, secret), [
        statement,
        hexOf(mentor.secret),
      ] as const);
      expect(checkProof(signed, nodePrimitives)).toBeUndefined();
      expect(
        await page.evaluate(
          (document) => inPage.codeOf(document),
          JSON.stringify(await signedBy(mentor.secret, statement)),
        ),
      ).toBe("sound");
    }
  });

  test("the bits of a list of withdrawals", async () => {
    const page = await open();
    const { encodedList, setIndexes } = referenceJson("bitstring-status-list/own-three-bits.json");
    expect(await page.evaluate((list) => inPage.places(list), encodedList as string)).toEqual(setIndexes);
  });
});

describe("a key file", () => {
  const visitor = withBrowser();

  test("that the page locks is unlocked in Node", async () => {
    const { page } = await visitor.open("index.html");
    await page.evaluate(script);
    const passphrase = "governor brake lubber";
    const made = await page.evaluate(([secret, words]) => inPage.keyFile(secret, words), [
      hexOf(mentor.secret),
      passphrase,
    ] as const);
    expect(made.opens).toBe(true);
    const opened = await unlockKey(made.file, passphrase, webCipher(globalThis.crypto.subtle));
    expect(opened).toEqual({ ok: true, key: mentor.key, secret: mentor.secret });
  });
});
