/** Pages of the whole programme. */
import { expect, test } from "vitest";
import { bookOf } from "../../layouts/book.ts";
import { raw } from "../../layouts/html.ts";
import { aboutPage } from "../../layouts/pages/about.ts";
import { homePage } from "../../layouts/pages/home.ts";
import { millSite } from "../render/fixture.ts";

const assets = { style: "main.css", furtherStyle: "further.css", scripts: new Map() };
const book = bookOf(
  millSite().site,
  assets,
  () => raw(""),
  () => undefined,
);

test("who works alone is led from the first page to what that asks", () => {
  const [, at] = /href="about\/index\.html#([^"]+)"/.exec(homePage(book)) ?? [];
  const [, told = ""] = RegExp(`<h2 id="${at}">([\\s\\S]*?)<h2`).exec(aboutPage(book)) ?? [];
  expect(told).toMatch(/machines of your own/);
  expect(told).toMatch(/High-energy steps are never done alone/);
});
