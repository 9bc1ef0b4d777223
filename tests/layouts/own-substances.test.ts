/** A programme's own substances: what its sums offer, and what its sheets say of them. */
import { describe, expect, test } from "vitest";
import { bookOf } from "../../layouts/book.ts";
import { raw } from "../../layouts/html.ts";
import { figuresToBring, figureWords, formValue } from "../../layouts/interactive/sums/own-substances.ts";
import { sumsPage } from "../../layouts/interactive/sums.ts";
import { sheetPage } from "../../layouts/pages/sheet.ts";
import { sums } from "../../src/browser/sums/table.ts";
import { withOwnFigures } from "../../src/engine/workshop/air/substance.ts";
import { vapourOf } from "../../src/engine/workshop/air/vapour.ts";
import { Fields, type Trouble } from "../../src/engine/workshop/asked/fields.ts";
import type { Substance } from "../../src/model/sheet.ts";
import type { SheetView, Site } from "../../src/model/site.ts";
import { millSite } from "../render/fixture.ts";

const { site } = millSite();
const assets = { style: "main.css", furtherStyle: "further.css", scripts: new Map() };
const spirit = site.sheets.find(({ sheet }) => sheet.kind === "substance")!.sheet as Substance;

const figures = {
  molarMass: 142.3,
  gravity: 0.77,
  lowerLimit: 0.007,
  exposure: { amount: 300, unit: "mg/m³", name: "the supplier" },
  flashC: 41.5,
  source: "data sheet of the supplier, 3 May, section 9",
} as const;
const own: Substance = { ...spirit, id: "citrus", title: "Citrus & <co>", air: figures };

function bookWith(...substances: readonly Substance[]) {
  const views: SheetView[] = substances.map((sheet) => ({ sheet, usedBy: [] }));
  const others = site.sheets.filter(({ sheet }) => sheet.kind !== "substance");
  const changed: Site = { ...site, sheets: [...others, ...views] };
  return bookOf(
    changed,
    assets,
    () => raw(""),
    () => undefined,
  );
}

const selects = (page: string): string[] =>
  [...page.matchAll(/<select id="(?:vapour|air)-substance".*?<\/select>/g)].map(([all]) => all);

describe("the forms offer", () => {
  test("what has figures, first and as the programme names it; what the table knows by the same id stands there once", () => {
    const known: Substance = {
      ...spirit,
      id: "white-spirit",
      title: "White spirit of the shed",
      air: undefined,
    };
    const both = selects(sumsPage(bookWith(own, known, spirit)));
    expect(both).toHaveLength(2);
    for (const select of both) {
      expect(select).toContain(
        '<optgroup label="Of this programme"><option value="Citrus &amp; &lt;co&gt;">Citrus &amp; &lt;co&gt;</option><option value="white-spirit">White spirit of the shed</option></optgroup>',
      );
      expect(select).not.toContain(">Spirit<");
      expect(select.match(/value="white-spirit"/g)).toHaveLength(1);
      expect(select).toMatch(/value="acetone".*value="another substance".*<\/select>/s);
    }
  });

  test("the table alone where the programme has nothing to reckon with", () => {
    for (const select of selects(sumsPage(bookWith(spirit)))) expect(select).not.toContain("optgroup");
  });
});

describe("figures that are brought into the form", () => {
  const brought = figuresToBring([own])[formValue(own)]!;

  function reckoned(id: string, values: Readonly<Record<string, string>>) {
    const fields = new Fields(new Map(Object.entries(values)));
    const answer = sums.find((sum) => sum.id === id)!.reckon(fields, "metric");
    return { answer, troubles: fields.troubles as readonly Trouble[] };
  }

  test("give what the engine gives for the sheet itself", () => {
    const values = { substance: formValue(own), amount: "100 mL", room: "30 m³", ...brought };
    const { answer, troubles } = reckoned("vapour", values);
    expect(troubles).toEqual([]);
    const substance = withOwnFigures(own.title, undefined, figures);
    if ("missing" in substance) throw new Error("the sheet lacks figures");
    const direct = vapourOf({ substance, litres: 0.1, roomM3: 30, celsius: 20 });
    if (!direct.ok) throw new Error(direct.problem.found);
    const { ppm, shareOfExposureLimit } = direct.value;
    const shown = answer!.figures.map(({ value }) => Number.parseFloat(value));
    expect(shown[0]).toBeCloseTo(ppm, -1);
    expect(shown[2]).toBeCloseTo(shareOfExposureLimit!, 1);
    expect(answer!.headline).toContain("Citrus & <co>");
    expect(answer!.grounds.sources.join()).toContain(
      "data sheet of the supplier, 3 May, section 9; limit: the supplier",
    );
    expect(answer!.grounds.assumptions.join()).toContain("142.3 g/mol");
  });

  test("by hand: 100 mL · 0.77 kg/L · 24.06 L/mol / 142.3 g/mol = 13.02 L, in 30 m³ 434 ppm", () => {
    const { answer } = reckoned("vapour", { substance: "x", amount: "100 mL", room: "30 m³", ...brought });
    expect(answer!.figures[0]!.value).toBe("434 ppm");
  });

  test("what the sheet leaves out is asked for, unless the table knows it", () => {
    const flash = { flashC: 35, source: "its label" };
    const unknown = figuresToBring([{ ...own, air: flash }]);
    const asked = reckoned("vapour", {
      substance: own.title,
      amount: "1 L",
      room: "30 m³",
      ...unknown[own.title],
    });
    expect(asked.troubles.map(({ field }) => field)).toEqual(["molar-mass", "gravity", "lower-limit"]);
    const known = figuresToBring([{ ...own, id: "white-spirit", air: flash }]);
    const values = { substance: "white-spirit", amount: "1 L", room: "30 m³", ...known["white-spirit"] };
    expect(reckoned("vapour", values).answer).toBeDefined();
  });
});

describe("the sheet of a substance", () => {
  const page = (sheet: Substance): string => sheetPage({ sheet, usedBy: [] }, bookWith(sheet));

  test("says its figures with their source, and leads to their sum", () => {
    expect(figureWords(figures)).toBe(
      "flash point 41.5 °C, lower flammable limit 0.7 %, exposure limit 300 mg/m³ (the supplier), molar mass 142.3 g/mol, specific gravity 0.77",
    );
    expect(page(own)).toContain(
      "(the supplier), molar mass 142.3 g/mol, specific gravity 0.77. Source: data sheet of the supplier, 3 May, section 9.",
    );
    expect(page(own)).toContain(
      'href="../../sums/index.html?vapour.substance=Citrus%20%26%20%3Cco%3E#vapour"',
    );
  });

  test("with no figures leads nowhere", () => {
    expect(page(spirit)).not.toContain("<dt>Vapour</dt>");
  });
});
