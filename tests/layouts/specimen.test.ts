/** The example of a tray on the home page: of a module that has something to lay into one. */
import { expect, test } from "vitest";
import { specimenModule } from "../../layouts/components/specimen.ts";
import { homePage } from "../../layouts/pages/home.ts";
import { photographedModuleText } from "../../src/cli/starters/photographed-module.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { plainBook } from "../render/fixture.ts";
import { type Files, soundFiles, withFile, writeFolder } from "../support/content-folder.ts";
import { twoModules } from "../support/two-modules.ts";
import { wholeSite } from "../support/whole-site.ts";

/** A draft of as many photographs, before all other modules by its id. */
const withDraft = (photographs: number, files: Files = soundFiles): Files => {
  const pictures = Array.from({ length: photographs }, (_, at) => ({
    figure: "../box/figures/box.svg",
    photograph: `${at}.jpg`,
    taken: null,
  }));
  return withFile("modules/a-draft/module.md", photographedModuleText("a-draft", pictures), files);
};

const siteOf = (files: Files) => wholeSite(validate(read(writeFolder(files)).reading).content);

test("a longer module whose tray is always empty gives way to one that takes something off", () => {
  const site = siteOf(withDraft(12));
  expect(site.cards.map(({ id, fillsTray, steps }) => [id, fillsTray, steps.length])).toEqual([
    ["a-draft", false, 12],
    ["box", true, 7],
  ]);
  expect(specimenModule(site.cards)).toBe("box");
  expect(specimenModule([...site.cards].reverse())).toBe("box");
  const book = plainBook(site);
  const [, shown = ""] =
    /<section class="group specimen"([\s\S]*?)<\/section>\s*<section/.exec(homePage(book)) ?? [];
  expect(shown).toContain("lid screws");
  expect(shown).not.toContain("Empty: everything is on");
});

test("of those that do, the one with most steps, then the first by its id", () => {
  const { cards } = siteOf(withDraft(9, twoModules));
  expect(specimenModule(cards)).toBe("box");
  const pair = cards.filter(({ id }) => id !== "box");
  expect(specimenModule(pair)).toBe("strip");
  const strip = pair.find(({ id }) => id === "strip")!;
  expect(specimenModule([strip, { ...strip, id: "dismantle" }])).toBe("dismantle");
});

test("one whose tray stays empty where there is no other, none where no module has steps", () => {
  const [draft] = siteOf(withDraft(2)).cards;
  expect(specimenModule([draft!])).toBe("a-draft");
  expect(specimenModule([{ ...draft!, steps: [] }])).toBeUndefined();
  expect(specimenModule([])).toBeUndefined();
});
