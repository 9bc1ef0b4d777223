/** The page of bench sums and the thread chart. */
import { describe, expect, test } from "vitest";
import { bookOf } from "../../layouts/book.ts";
import { raw } from "../../layouts/html.ts";
import { sumForms, sumsPage } from "../../layouts/interactive/sums.ts";
import { threadsPage } from "../../layouts/pages/threads.ts";
import { sums } from "../../src/browser/sums/table.ts";
import { Fields } from "../../src/engine/workshop/asked/fields.ts";
import { materialNamed } from "../../src/engine/workshop/bolts/materials.ts";
import { allSeries } from "../../src/engine/workshop/threads/series.ts";
import { figure, readTable } from "../engine/workshop/table.ts";
import { millSite } from "../render/fixture.ts";

const { site } = millSite();
const assets = { style: "main.css", furtherStyle: "further.css", scripts: new Map() };
const bookIn = (units: "metric" | "inch") =>
  bookOf(
    { ...site, programme: { ...site.programme, units } },
    assets,
    () => raw(""),
    () => undefined,
  );

/** Values in which every field is asked for by one or the other. */
const asked: Readonly<Record<string, readonly Readonly<Record<string, string>>[]>> = {
  convert: [{ quantity: "1 in", unit: "mm" }],
  thread: [{ thread: "M6" }],
  identify: [
    { diameter: "6 mm", pitch: "1 mm" },
    { diameter: "6 mm", tpi: "20" },
  ],
  torque: [
    { thread: "M6", class: "8.8", friction: "0.1" },
    { thread: "M6", class: "8.8", "nut-factor": "0.2" },
  ],
  strip: [
    { thread: "M6", class: "8.8", engagement: "8 mm", material: "brass" },
    { thread: "M6", class: "8.8", engagement: "8 mm", shear: "200 MPa" },
  ],
  vapour: [
    { substance: "acetone", amount: "1 L", room: "30 m³", flash: "-20 °C", "figures-from": "its data sheet" },
  ],
  air: [{ substance: "acetone", rate: "1 L/h", flash: "-20 °C", "figures-from": "its data sheet" }],
};

/** The fields that a sum looks at. */
class Watched extends Map<string, string> {
  readonly seen = new Set<string>();
  override get(name: string): string | undefined {
    this.seen.add(name);
    return super.get(name);
  }
}

describe("forms and sums", () => {
  test("are the same ones", () => {
    expect(sumForms.map(({ id }) => id)).toEqual(sums.map(({ id }) => id));
  });

  test.each(sumForms)("$id has exactly the fields that its sum reads", ({ id, fields, more }) => {
    const seen = asked[id]!.flatMap((values) => {
      const watched = new Watched(Object.entries(values));
      expect(sums.find((sum) => sum.id === id)!.reckon(new Fields(watched), "metric")).toBeDefined();
      return [...watched.seen];
    });
    const names = [...fields, ...(more?.fields ?? [])].map(({ name }) => name);
    expect(new Set(names)).toEqual(new Set(seen));
    expect(new Set(names).size).toBe(names.length);
  });

  test("every material that can be chosen is known", () => {
    const choices = sumForms.flatMap(({ fields }) => fields).find(({ name }) => name === "material")!
      .choices!;
    expect(choices.length).toBeGreaterThan(10);
    for (const { value } of choices) expect(materialNamed(value).ok).toBe(true);
  });

  test("every substance that can be chosen is known, but for that of one's own", () => {
    const choices = sumForms.flatMap(({ fields }) => fields).find(({ name }) => name === "substance")!
      .choices!;
    const vapour = sums.find(({ id }) => id === "vapour")!;
    const known = choices.filter(({ value }) => {
      const fields = new Fields(
        new Map([
          ["substance", value],
          ["amount", "1 L"],
          ["room", "30 m³"],
        ]),
      );
      return vapour.reckon(fields, "metric") !== undefined;
    });
    expect(known).toEqual(choices.slice(0, -1));
  });

  test("the programme's unit stands first", () => {
    const [metric, inch] = [sumsPage(bookIn("metric")), sumsPage(bookIn("inch"))];
    expect(metric).toContain("such as 5.95 mm or 15/64 in");
    expect(inch).toContain("such as 15/64 in or 5.95 mm");
    expect(metric).toMatch(/value="metric" checked/);
    expect(inch).toMatch(/value="inch" checked/);
  });

  test("vapour: the safer way comes before the sum, and who decides after it", () => {
    const [, section = ""] = /<section class="sum group" id="vapour"([\s\S]*?)<\/section>/.exec(
      sumsPage(bookIn("metric")),
    )!;
    const places = ["safer substance", "<form", "An estimate", "never clears the air"].map((text) =>
      section.indexOf(text),
    );
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });
});

type ChartRow = ReadonlyMap<string, string>;

/** The rows of a table of the chart, by what stands at the head of their columns. */
function chartRows(id: string): ChartRow[] {
  const [, table = ""] = RegExp(`<h2 id="${id}">[\\s\\S]*?<table[^>]*>([\\s\\S]*?)</table>`).exec(chart)!;
  const [head = [], ...rows] = [...table.matchAll(/<tr>(.*?)<\/tr>/g)].map(([, row]) =>
    [...row!.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, cell]) =>
      cell!.replaceAll("\u00ad", "").replaceAll("&shy;", ""),
    ),
  );
  return rows.map((row) => new Map(head.map((name, column) => [name, row[column]!])));
}

const chart = threadsPage(bookIn("metric"));
const withName = (rows: readonly ChartRow[], name: string) => rows.find((row) => row.get("Thread") === name)!;
const inches = 25.4;

describe("the thread chart", () => {
  test("has every size that is known, once", () => {
    const ids = ["metric-coarse", "metric-fine", "unc", "unf", "ba", "bsw", "bsf"];
    const sizes = allSeries().flatMap((series) => series.sizes);
    expect(ids.flatMap(chartRows)).toHaveLength(sizes.length);
  });

  test.each(["coarse", "fine"])("ISO metric, %s: ISO 724, ISO 2306", (kind) => {
    const rows = chartRows(`metric-${kind}`);
    const wanted = readTable("threads_iso_metric.csv").filter((row) => row.get("series") === kind);
    expect(wanted.length).toBeGreaterThan(10);
    for (const row of wanted) {
      const found = withName(rows, row.get("designation")!);
      expect(Number(found.get("Diameter"))).toBe(figure(row, "d"));
      expect(Number(found.get("Pitch"))).toBe(figure(row, "P"));
      expect(Number(found.get("Minor"))).toBe(figure(row, "d1_D1"));
      expect(Number(found.get("Tap drill"))).toBe(figure(row, "tap_drill"));
    }
  });

  test("clearance holes: ISO 273, medium", () => {
    const rows = chartRows("metric-coarse");
    const known = readTable("iso273_clearance.csv").flatMap((row) => {
      const found = withName(rows, row.get("size")!);
      return found === undefined ? [] : [[Number(found.get("Hole")), figure(row, "medium")]];
    });
    expect(known.length).toBeGreaterThan(15);
    for (const [found, wanted] of known) expect(found).toBe(wanted);
  });

  test.each(["UNC", "UNF"])("%s: ASME B1.1", (series) => {
    const rows = chartRows(series.toLowerCase());
    const wanted = readTable("threads_unified.csv").filter((row) => row.get("series") === series);
    expect(wanted).toHaveLength(rows.length);
    for (const row of wanted) {
      const found = withName(rows, `${row.get("size")}-${row.get("tpi")}`);
      expect(Number(found.get("Per inch"))).toBe(figure(row, "tpi"));
      // Half of the last figures: 0.001 mm here, 0.0001 in there.
      expect(Math.abs(Number(found.get("Diameter")) - figure(row, "major_in") * inches)).toBeLessThan(0.0018);
      expect(Math.abs(Number(found.get("Minor")) - figure(row, "D1_in") * inches)).toBeLessThan(0.0018);
    }
  });

  test("BA: BS 93", () => {
    const rows = chartRows("ba");
    for (const row of readTable("threads_ba.csv")) {
      const found = withName(rows, `${row.get("ba")} BA`);
      expect(Number(found.get("Diameter"))).toBe(figure(row, "D"));
      expect(Number(found.get("Pitch"))).toBe(figure(row, "p"));
      expect(Number(found.get("Minor"))).toBeCloseTo(figure(row, "minor"), 6);
    }
  });

  test.each(["BSW", "BSF"])("%s: BS 84", (series) => {
    const rows = chartRows(series.toLowerCase());
    const wanted = readTable("threads_whitworth.csv")
      .filter((row) => row.get("series") === series)
      .filter((row) => withName(rows, row.get("size")!) !== undefined);
    expect(wanted).toHaveLength(rows.length);
    for (const row of wanted) {
      const found = withName(rows, row.get("size")!);
      expect(Number(found.get("Per inch"))).toBe(figure(row, "tpi"));
      expect(Math.abs(Number(found.get("Diameter")) - figure(row, "major_in") * inches)).toBeLessThan(0.0018);
      expect(Math.abs(Number(found.get("Minor")) - figure(row, "minor_in") * inches)).toBeLessThan(0.0018);
    }
  });

  test("points stand below one another", () => {
    for (const column of ["Diameter", "Pitch", "Minor", "Tap drill"]) {
      const decimals = chartRows("bsw").map((row) => row.get(column)!.split(".")[1]?.length ?? 0);
      expect(new Set(decimals).size).toBe(1);
    }
    expect(withName(chartRows("bsw"), "1/16").get("Diameter")).toBe("1.588");
  });
});
