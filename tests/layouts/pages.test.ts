/** Pages of the whole programme. */
import { expect, test } from "vitest";
import { aboutPage } from "../../layouts/pages/about.ts";
import { homePage } from "../../layouts/pages/home.ts";
import { millSite, plainBook } from "../render/fixture.ts";

const book = plainBook(millSite().site);

test("who works alone is led from the first page to what that asks", () => {
  const [, at] = /href="about\/index\.html#([^"]+)"/.exec(homePage(book)) ?? [];
  const [, told = ""] = RegExp(`<h2 id="${at}">([\\s\\S]*?)<h2`).exec(aboutPage(book)) ?? [];
  expect(told).toMatch(/machines of your own/);
  expect(told).toMatch(/High-energy steps are never done alone/);
});
