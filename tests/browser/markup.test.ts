import { HtmlValidate } from "html-validate";
import { expect, test } from "vitest";
import { sitePages } from "./site/pages.ts";

const validator = new HtmlValidate({ extends: ["html-validate:recommended"] });

async function faultsOf(html: string): Promise<string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ line, column, ruleId, message }) => `${line}:${column} ${ruleId}: ${message}`),
  );
}

test.each(sitePages())("$file is valid HTML", async ({ html }) => {
  expect(await faultsOf(html)).toEqual([]);
});

test("a planted fault is found", async () => {
  const { html } = sitePages()[0]!;
  expect(await faultsOf(html.replace("<h1", "<p><div></div></p><h1"))).not.toEqual([]);
});
