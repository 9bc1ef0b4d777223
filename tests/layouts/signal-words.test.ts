/** The signal word of the work and that of a label are two things: neither is shown as the other, nor follows from it. */
import { expect, test } from "vitest";
import { bookOf } from "../../layouts/book.ts";
import { raw } from "../../layouts/html.ts";
import { modulePage } from "../../layouts/pages/module.ts";
import { sheetPage } from "../../layouts/pages/sheet.ts";
import { sheetListPage, sheetLists } from "../../layouts/pages/sheets.ts";
import type { Sheet } from "../../src/model/sheet.ts";
import { millSite } from "../render/fixture.ts";

const { site, mill } = millSite();
const assets = { style: "main.css", furtherStyle: "further.css", scripts: new Map() };
const [spirit, vapour] = [["substance", "spirit"] as const, ["hazard", "vapour"] as const].map(
  ([kind, id]) => site.sheets.find(({ sheet }) => sheet.kind === kind && sheet.id === id)!.sheet,
);

/** The mill's book with other words on the label of its spirit and in the message on its vapour. */
function bookWith(label: "danger" | "warning" | "none", signal: "danger" | "warning" | "caution") {
  const changed = new Map<Sheet, Sheet>([
    [spirit!, { ...spirit, signal: label } as Sheet],
    [vapour!, { ...vapour, signal } as Sheet],
  ]);
  const sheets = site.sheets.map((view) => ({ ...view, sheet: changed.get(view.sheet) ?? view.sheet }));
  return bookOf(
    { ...site, sheets },
    assets,
    () => raw(""),
    () => undefined,
  );
}

const labels = (page: string): string[] =>
  [...page.matchAll(/<span class="label-word">(.*?)<\/span>/g)].map(([, said]) => said!);
const messages = (page: string): string[] =>
  [...page.matchAll(/<b class="signal signal-\w+">(\w+)<\/b> (?:<a[^>]*>)?([^<\n]+)/g)]
    .filter(([, , title]) => title!.trim() === vapour!.title)
    .map(([, word]) => word!);

test.each([
  ["danger", "caution", "Label says <b>danger</b>", "Caution"],
  ["none", "danger", "No signal word on the label", "Danger"],
  ["warning", "warning", "Label says <b>warning</b>", "Warning"],
] as const)("label %s, work %s", (label, signal, onLabel, inMessage) => {
  const book = bookWith(label, signal);
  const sheet = modulePage(mill, book);
  expect(labels(sheet)).toEqual([onLabel]);
  expect(messages(sheet).length).toBeGreaterThan(1);
  expect(new Set(messages(sheet))).toEqual(new Set([inMessage]));
  expect(sheet).toContain(
    "What the label says is about the substance; the safety messages above are about the work.",
  );
  const ofSubstance = sheetPage(book.site.sheets.find(({ sheet }) => sheet.kind === "substance")!, book);
  const list = sheetListPage(sheetLists.find(({ id }) => id === "substances")!, book);
  for (const page of [ofSubstance, list]) {
    expect(labels(page)).toEqual([onLabel]);
    expect(page).not.toMatch(/class="signal /);
  }
});
