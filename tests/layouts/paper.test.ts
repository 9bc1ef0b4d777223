import { describe, expect, test } from "vitest";
import { modulePages } from "../../layouts/module-pages.ts";
import { paperPage } from "../../layouts/pages/paper.ts";
import { posterPage } from "../../layouts/pages/poster.ts";
import { drawingOf } from "../../layouts/paper/drawing.ts";
import { trueSize } from "../../src/engine/workshop/true-size.ts";
import { millSite, plainBook } from "../render/fixture.ts";

const { site, mill } = millSite();
const assets = { style: "m.css", furtherStyle: "f.css", paperStyle: "paper.css", scripts: new Map() };
const book = plainBook(site, assets);
const page = paperPage(mill, book);
/** What one sheet says, without its tags. */
const sheet = (id: string): string => {
  const rest = page.slice(page.indexOf(`id="s_${id}"`));
  const end = rest.indexOf('<section class="paper-sheet"');
  return rest
    .slice(0, end === -1 ? undefined : end)
    .replaceAll(/<[^>]*>/g, " ")
    .replaceAll("&#39;", "'")
    .replaceAll(/\s+/g, " ");
};

test("a module with steps has the page, one without has not", () => {
  const paper = modulePages.find(({ kind }) => kind === "paper")!;
  expect(paper.has(mill.card)).toBe(true);
  expect(paper.has({ ...mill.card, steps: [] })).toBe(false);
});

test("it loads its own style sheet besides the two of every page", () => {
  expect(page).toContain('href="../../../paper.css"');
});

describe("the bench sheet", () => {
  const rows = [
    ...page.matchAll(
      /<li class="bench-row" id="([^"]+)">\s*<b class="row-number">(\d+)<\/b>([\s\S]*?)<\/li>\n/g,
    ),
  ];

  test("has a row with number and box for every step, in the written order", () => {
    expect(rows.map(([, id, number]) => [id, Number(number)])).toEqual(
      mill.steps.map(({ step, number }) => [step.id, number]),
    );
    expect(rows.every(([row]) => row.includes("row-box"))).toBe(true);
  });

  test("puts signal words before the title, the gravest first", () => {
    const row = rows[2]![0];
    const places = ["signal-danger", "signal-warning", "Take the shaft out"].map((each) => row.indexOf(each));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(places).not.toContain(-1);
  });

  test("has each hazard in full at its head, and a line to write on for each record", () => {
    expect(page.match(/<div class="message" id="s_hazard-/g)).toHaveLength(2);
    expect(rows[1]![0]).toMatch(/Turns of each screw <i class="blank-line"/);
    expect(rows[5]![0]).toMatch(/turns of each screw, from step 2 <i class="blank-line"/);
  });

  test("marks the place where work may be left off", () => {
    expect(sheet("bench")).toContain("Then wait 12 h. Safe to leave off.");
  });
});

describe("tray labels", () => {
  test("say what lies there, its thread and length, and from which step to which", () => {
    expect(sheet("labels")).toContain(
      "Tray 1 2 guard screws 4 BA × 1/2 in, slotted. On a card. Off at step 2, on again at step 6.",
    );
    expect(sheet("labels")).toContain("1 old felt Off at step 4, stays off.");
  });

  test("have a numbered place for each matched screw", () => {
    expect(page).toContain('<ol class="label-places"><li>1</li><li>2</li><li>3</li></ol>');
  });
});

describe("the demonstration sheet", () => {
  test("gives mistakes with what comes of them, and the author's reasons for the order", () => {
    expect(sheet("demonstration")).toContain("Not: Letting go. It spins.");
    expect(sheet("demonstration")).toContain(
      "Order: Not before step 2. Because &lt;i&gt;I&lt;/i&gt; say so.",
    );
  });

  test("tells a hazard's way to avoid it with the first step that names it, its signal word with each", () => {
    expect(sheet("demonstration").match(/Keep away\./g)).toHaveLength(2);
    expect(sheet("demonstration").match(/Danger Pinch point/g)).toHaveLength(2);
  });
});

describe("the owner's sheet", () => {
  test("names what was replaced and what became of the old part", () => {
    expect(sheet("owner")).toContain("New felt, in place of: old felt; what was there is handed back");
  });

  test("warns of the machine's own hazards, not of those that a substance brings along", () => {
    expect(sheet("owner")).toContain("Pinch point.");
    expect(sheet("owner")).not.toContain("Vapour");
  });

  test("lists lubricants with what they went on, and no cleaning substance", () => {
    expect(sheet("owner")).not.toContain("Lubricants");
    const oil = { ...book.substances.get("spirit")! };
    const substances = new Map([
      ["spirit", { ...oil, sheet: { ...oil.sheet, uses: ["lubricating" as const] } }],
    ]);
    expect(paperPage(mill, { ...book, substances })).toMatch(
      /<th scope="row">Spirit<\/th><td[^>]*>At “Take the shaft out”\.<\/td>/,
    );
  });
});

describe("drawings", () => {
  test("a set whose thread and length are known is drawn as long as its figure: 1/2 in is 12.7 mm", () => {
    const [, from, to] = /class="drawn-length" d="M([\d.]+) [\d.]+H([\d.]+)"/.exec(page)!;
    expect(Number(to) - Number(from)).toBeCloseTo(12.7, 3);
    expect(sheet("drawings")).toContain("Diameter 3.6 mm, length 12.7 mm.");
  });

  test("a set of which nothing is known is not drawn, and says so", () => {
    expect(sheet("drawings")).toContain("1 pin Taper pin. Not drawn: thread and length are not known.");
    expect(page.match(/<svg class="true-size"/g)).toHaveLength(2);
  });

  test.each([
    ["M6", undefined, "machine screw", "Only the diameter is drawn: the length is not known."],
    [undefined, "9 mm", "makers own", "Only the length is drawn: the thread is not known."],
    ["M6", "200 mm", "machine screw", "Its length is not drawn: it is longer than the sheet has room for."],
    [undefined, undefined, "nut", "Not drawn: its thread is not known."],
  ] as const)("%s, %s, %s: %s", (thread, length, kind, words) => {
    expect(drawingOf(trueSize(thread, length), kind).missing).toEqual([words]);
  });

  test("a nut is drawn by its thread alone, and nothing is missing", () => {
    const { picture, missing } = drawingOf(trueSize("M6", "5 mm"), "nut");
    expect(missing).toEqual([]);
    expect(picture!.text).not.toContain("drawn-length");
  });
});

test("slips and their key use the same letters", () => {
  const slips = new Map(
    [...page.matchAll(/sort-slip"><b>(\w+)<\/b><span>([^<]*)<\/span><small>1</g)].map(([, letter, title]) => [
      letter,
      title,
    ]),
  );
  const order = /<b class="slip-order">([^<]+)<\/b>/.exec(page)![1]!.split(" ");
  const titles = new Map(mill.steps.map(({ step }) => [step.id, step.title]));
  expect(order.map((letter) => slips.get(letter))).toEqual(
    mill.practices[0]!.graph.steps.map((step) => titles.get(step)),
  );
});

test("the author's slip stands there twice, and says where it is handed in", () => {
  expect(sheet("author").match(/Hand it in at Mill &amp; &lt;club&gt;, The shed\./g)).toHaveLength(2);
});

test("the poster has the hazards that are used, gravest first", () => {
  const titles = [...posterPage(book).matchAll(/<section class="panel"[\s\S]*?<h2[^>]*>([^<]*)</g)].map(
    ([, title]) => title,
  );
  expect(titles).toEqual(["Pinch point", "Vapour"]);
  const unused = new Map([...book.hazards].map(([id, view]) => [id, { ...view, usedBy: [] }]));
  expect(posterPage({ ...book, hazards: unused })).toContain("No module names a hazard yet.");
});
