/** The page on the order of steps, made from the demo programme. */
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { orderPage } from "../../layouts/pages/order.ts";
import { orderFigures } from "../../layouts/precedence/figures.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { plainBook } from "../render/fixture.ts";
import { projectDir } from "../support/project.ts";
import { wholeSite } from "../support/whole-site.ts";

const site = wholeSite(validate(read(join(projectDir, "content")).reading).content);
const assets = { style: "assets/main.css", furtherStyle: "assets/further.css", scripts: new Map() };
const book = plainBook(site, assets);
const views = site.modules.filter(({ steps }) => steps.length > 1);
const readable = (html: string) => html.replace(/<[^>]*>/g, "").replace(/\s+/g, " ");

test("the demo has what is tested here", () => {
  expect(views.filter(({ steps }) => steps.length === 32)).toHaveLength(2);
  expect(views.some(({ swaps }) => swaps.length > 2)).toBe(true);
});

describe.each(views.map((view) => [view.module.id, view] as const))(
  "the order of steps of %s",
  (id, view) => {
    const page = orderPage(view, book);
    const cut = page.indexOf('id="s_words"');
    const [drawn, words] = [page.slice(page.indexOf('class="drawing"'), cut), page.slice(cut)];
    const { pairs } = view.precedence;

    test("has each step once as a box that leads to it, with its number and title", () => {
      const boxes = [...drawn.matchAll(/<a href="([^"]*)"[^>]*>(.*?)<\/a>/gs)];
      expect(boxes.map(([, href]) => href).sort()).toEqual(
        view.steps.map(({ step }) => `../../../modules/${id}/index.html#${step.id}`).sort(),
      );
      for (const { step, number } of view.steps) {
        const box = boxes.find(([, href]) => href!.endsWith(`#${step.id}`))![2]!;
        // What it is called: its own title where there is one, else its text.
        const name = readable(/<title>(.*?)<\/title>/.exec(box)?.[1] ?? box);
        expect(name).toContain(readable(`${number} ${step.title}`).replaceAll("'", "&#39;"));
        expect(name.includes("(critical)")).toBe(step.critical);
      }
    });

    test("has a line with a tip for each pair, a heavy one for each critical one, and a dashed one to swap", () => {
      const ends = [...drawn.matchAll(/<path class="([^"]*)tip"/g)].map(([, kind]) => kind!);
      expect(ends).toHaveLength(pairs.length);
      expect(ends.filter((kind) => kind.includes("critical"))).toHaveLength(
        pairs.filter(({ critical }) => critical).length,
      );
      expect(drawn.includes('class="swap"')).toBe(view.swaps.length > 0);
      expect(page.slice(0, page.indexOf('class="drawing"')).includes("May change places")).toBe(
        view.swaps.length > 0,
      );
    });

    test("says in words which pairs there are, which are critical, and why", () => {
      const text = readable(words);
      expect(words.match(/<li>after /g) ?? []).toHaveLength(pairs.length);
      expect(words.match(/<strong>\(critical\)/g) ?? []).toHaveLength(
        pairs.filter(({ critical }) => critical).length,
      );
      // Told at both steps.
      expect(words.match(/<li>may change places with /g) ?? []).toHaveLength(2 * view.swaps.length);
      const written = (reason: string) => reason.slice(1).replaceAll("'", "&#39;");
      for (const { because } of pairs) for (const reason of because) expect(text).toContain(written(reason));
      for (const { because } of view.swaps) expect(text).toContain(written(because));
    });

    test("has a title for each phase, drawn and in words", () => {
      for (const [phase, title] of view.module.phases) {
        if (!view.steps.some(({ step }) => step.phase === phase)) continue;
        for (const part of [drawn, words]) expect(part).toContain(`<h3>${title}`);
      }
    });
  },
);

describe("figures in words", () => {
  const figures = { steps: 12, width: 3, height: 5, chance: null, reason: null };
  const textOf = (orders: bigint | null, more = {}) =>
    readable(orderFigures({ ...figures, ...more, orders }).text);

  test("numbers in threes, as far as anybody reads them", () => {
    expect(textOf(2626560n)).toContain("2,626,560, the written one among them");
    expect(textOf(10n ** 44n)).toContain(`100${",000".repeat(14)}, the written`);
    expect(textOf(10n ** 45n)).toContain("A number of 46 digits, the written");
  });

  test("one order only, and too many to count", () => {
    expect(textOf(1n)).toContain("Only one: the written one.");
    expect(textOf(null)).toContain(
      "Too many to count: the work can stand half done in more than 20,000 ways.",
    );
  });

  test("width and height", () => {
    expect(textOf(1n)).toContain("At most 3 steps could be done side by side");
    expect(textOf(1n)).toContain("The longest chain is 5 steps: each");
    expect(textOf(1n, { width: 1, height: 12 })).toContain("No two steps could be done side by side.");
    expect(textOf(1n, { width: 1, height: 12 })).toContain("12 steps, which is all of them");
    expect(textOf(1n, { width: 12, height: 1 })).toContain("No step has to wait for another.");
  });
});
