/** A part of several pieces is counted wherever one looks for it; a substance says what it is taken for. */
import { expect, test } from "vitest";
import { modulePage } from "../../layouts/pages/module.ts";
import { paperPage } from "../../layouts/pages/paper.ts";
import type { SubstanceUse } from "../../src/model/sheet.ts";
import type { ModuleView, StepView } from "../../src/model/site.ts";
import { millSite, plainBook } from "../render/fixture.ts";

const { site, mill } = millSite();
const book = plainBook(site);

const { procedure } = mill.module;
const guards = { ...procedure.parts.get("guard")!, name: "guards", count: 2 };

const taking =
  (purpose: SubstanceUse) =>
  (view: StepView): StepView => ({
    ...view,
    step: { ...view.step, purposes: new Map([["spirit", purpose]]) },
  });

/** The mill with two guards, which steps take off and put back, and with spirit that loosens. */
const pair: ModuleView = {
  ...mill,
  module: {
    ...mill.module,
    procedure: { ...procedure, parts: new Map([...procedure.parts, ["guard", guards]]) },
  },
  steps: mill.steps.map(taking("penetrating")),
};

const page = modulePage(pair, book);
const paper = paperPage(pair, book);

const trayAfter = (step: number, text: string): string =>
  /^.*?<\/figure>/s.exec(text.slice(text.indexOf(`On the tray after step ${step}<`)))?.[0] ?? "";

test("acts name the pieces, the tray counts them, and adds them up", () => {
  expect(page).toMatch(/<dt>Remove<\/dt><dd>guard screws \([^)]*\), guards \(2\)/);
  expect(page).toMatch(/<dt>Leave on<\/dt><dd>guards \(2\)/);
  // Two screws, two guards and the new felt; of one guard, one less.
  expect(trayAfter(2, page)).toMatch(/<b>2<\/b>[^\n]*guards[\s\S]*<b>5<\/b> in all/);
  expect(trayAfter(2, modulePage(mill, book))).toContain("<b>4</b> in all");
});

test("the list of parts and the labels on paper count them too", () => {
  expect(page).toMatch(/<h3>Parts<\/h3>[\s\S]*?guards \(2\)/);
  expect(paper).toContain("<b>2</b> guards");
});

test("what a substance is taken for stands behind it, on the sheet and on paper", () => {
  expect(page).toContain("Spirit</a> (penetrating), outdoors");
  expect(paper).toContain("Spirit (penetrating)");
  expect(modulePage(mill, book)).not.toContain("(penetrating)");
});

test("the owner is told of what lubricates, and not of what loosens", () => {
  const taken = (purpose: SubstanceUse): string => {
    const steps = mill.steps.map(taking(purpose));
    const whole = { ...procedure, steps: steps.map(({ step }) => step) };
    return paperPage({ ...mill, module: { ...mill.module, procedure: whole }, steps }, book);
  };
  expect(taken("lubricating")).toMatch(/<h3>Lubricants<\/h3>[\s\S]*?Spirit/);
  expect(taken("penetrating")).not.toContain("<h3>Lubricants</h3>");
});
