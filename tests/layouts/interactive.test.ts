/** Pages on which one does something, made from the demo programme. */
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { benchPage } from "../../layouts/interactive/bench.ts";
import { dryRunPage } from "../../layouts/interactive/dry-run.ts";
import { practicePage } from "../../layouts/interactive/practice.ts";
import { quizPage } from "../../layouts/interactive/quiz.ts";
import { searchPage } from "../../layouts/interactive/search.ts";
import { answerOrder } from "../../src/engine/procedure/answer-order.ts";
import { performingGraph } from "../../src/engine/procedure/performing-graph.ts";
import type { DryRunData, PracticeData, QuizData } from "../../src/model/page-data.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import { plainBook } from "../render/fixture.ts";
import { projectDir } from "../support/project.ts";
import { wholeSite } from "../support/whole-site.ts";

const site = wholeSite(validate(read(join(projectDir, "content")).reading).content);
const assets = { style: "assets/main.css", furtherStyle: "assets/further.css", scripts: new Map() };
const book = plainBook(site, assets);
const quizzed = site.modules.filter((view) => view.quiz !== undefined);
const practised = site.modules.filter((view) => view.practices.length > 0);

const dataBlock = /<script type="application\/json" id="page-data">([\s\S]*?)<\/script>/;
const dataOf = <Data>(page: string) => JSON.parse(dataBlock.exec(page)![1]!) as Data;
/** What can be read on the page: its text without the data block. */
const readable = (page: string) =>
  page
    .replace(dataBlock, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");
const escaped = (text: string) =>
  readable(
    text.replace(
      /[&<>"']/g,
      (sign) => `&${{ "&": "amp", "<": "lt", ">": "gt", '"': "quot", "'": "#39" }[sign]};`,
    ),
  );

test("the demo programme has what is tested here", () => {
  expect(quizzed.length).toBeGreaterThan(1);
  expect(practised.length).toBeGreaterThan(1);
});

describe.each(quizzed.map((view) => [view.module.id, view] as const))("the quiz of %s", (_id, view) => {
  const page = quizPage(view, book);
  const text = readable(page);
  const { items } = dataOf<QuizData>(page);

  test("asks every question", () => {
    expect(items.length).toBe(view.quiz!.quiz.questions.length);
    for (const { question } of items) {
      const asked = question.kind === "worked" ? question.cases.map(({ ask }) => ask) : [question.ask];
      expect(asked.filter((ask) => text.includes(escaped(ask)))).toHaveLength(1);
    }
  });

  test("does not say why an answer is right or wrong before it is given", () => {
    for (const { question } of items) {
      const whys = "options" in question ? question.options.map(({ why }) => why) : [];
      for (const why of [question.why, ...whys])
        if (why !== undefined) expect(text).not.toContain(escaped(why));
    }
    expect(page).not.toMatch(/<input[^>]*\bchecked\b/);
  });

  test("sends back to a page of the site for every question", () => {
    for (const { see } of items) expect(see?.href).toMatch(/^(\.\.\/)+[a-z0-9/-]+\/index\.html(#.+)?$/);
    for (const { see } of items) expect(see?.text).not.toBe("");
  });
});

test("on paper the right options do not all stand in the place where they were written", () => {
  const places = quizzed.flatMap((view) => {
    const page = quizPage(view, book);
    return dataOf<QuizData>(page).items.flatMap(({ question }) => {
      if (question.kind !== "choose-one") return [];
      const values = [...page.matchAll(RegExp(`type="radio" name="${question.id}" value="(\\d+)"`, "g"))].map(
        ([, value]) => Number(value),
      );
      return [values.indexOf(question.options.findIndex(({ right }) => right))];
    });
  });
  expect(new Set(places).size).toBeGreaterThan(2);
});

describe.each(practised.map((view) => [view.module.id, view] as const))("the practice of %s", (_id, view) => {
  const page = practicePage(view, book);
  const { practices } = dataOf<PracticeData>(page);

  test("gives the steps of each job, with those mixed in, in alphabetical order", () => {
    for (const task of practices) {
      const section = page.slice(page.indexOf(`data-practice="${task.id}"`));
      const shown = [
        ...section.slice(0, section.indexOf("</section>")).matchAll(/<li>.*?<\/span>(.*?)<\/li>/g),
      ].map(([, title]) => title);
      const all = [...task.steps, ...task.mixedIn];
      const titles = all.map(({ title }) => title).sort(new Intl.Collator("en").compare);
      expect(shown.map((title) => readable(title!))).toEqual(titles.map(escaped));
      const says = section.slice(0, section.indexOf("</section>")).includes("Some may not belong");
      expect(says).toBe(task.mixedIn.length > 0);
    }
  });
});

describe.each(practised.map((view) => [view.module.id, view] as const))("the dry run of %s", (_id, view) => {
  const page = dryRunPage(view, book);
  const data = dataOf<DryRunData>(page);
  const titles = data.steps.map(({ title }) => title);

  test("is on paper a slip for each step, in an order that gives no right one away", () => {
    const shown = [...page.matchAll(/<li><span class="paper-number"[^>]*><\/span>(.*?)<\/li>/g)].map(
      ([, title]) => readable(title!),
    );
    expect(shown.toSorted()).toEqual(titles.map(escaped).toSorted());
    const ids = shown.map((title) => data.steps[titles.map(escaped).indexOf(title)]!.id);
    expect(answerOrder(performingGraph(data.precedence), ids).valid).toBe(false);
  });

  test("does not say in words what comes before what", () => {
    const text = readable(page);
    for (const reason of data.precedence.pairs.flatMap(({ because }) => because))
      expect(text).not.toContain(escaped(reason));
  });

  test("leads to the step on the operation sheet and to the sheet of each hazard", () => {
    for (const { id, href } of data.steps)
      expect(href).toBe(`../../../modules/${view.module.id}/index.html#${id}`);
    const known = new Set(data.hazards.map(({ id }) => id));
    expect(known.size).toBeGreaterThan(0);
    for (const { hazards } of data.steps) for (const id of hazards) expect(known).toContain(id);
    for (const { id, href } of data.hazards) expect(href).toBe(`../../../hazards/${id}/index.html`);
  });
});

test("the bench view has every step, each with its tray, and what stands before and after", () => {
  for (const view of site.modules.filter(({ steps }) => steps.length > 0)) {
    const page = benchPage(view, book);
    for (const { step } of view.steps) expect(page).toContain(`id="${step.id}"`);
    expect(page.match(/class="tray"/g)).toHaveLength(view.steps.length);
    expect(page.indexOf('id="s_before"')).toBeLessThan(page.indexOf(`id="${view.steps[0]!.step.id}"`));
    expect(page.indexOf('id="s_after"')).toBeGreaterThan(page.indexOf(`id="${view.steps.at(-1)!.step.id}"`));
  }
});

test("the search page lists every module and sheet by title, and the bench sums", () => {
  const page = searchPage(book);
  const index = page.slice(page.indexOf('class="index"'));
  const entries = [...index.matchAll(/<li><a[^>]*>(.*?)<\/a> <span>(.*?)<\/span>/g)];
  const titles = entries.map(([, title]) => title!);
  const ofContent = entries.filter(([, , kind]) => kind !== "page");
  expect(ofContent).toHaveLength(site.modules.length + site.sheets.length);
  expect(titles).toEqual(expect.arrayContaining(["Bench sums", "Thread chart"]));
  expect(titles).toEqual([...titles].sort(new Intl.Collator(site.programme.language).compare));
});
