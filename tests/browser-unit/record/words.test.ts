import { describe, expect, test } from "vitest";
import { dayWords } from "../../../src/browser/record/day-words.ts";
import { fileName, slug } from "../../../src/browser/record/file-name.ts";
import { nextWords, standingSentence } from "../../../src/browser/record/next-words.ts";
import { stayWords } from "../../../src/browser/record/stay-words.ts";
import { type ModuleState, standings } from "../../../src/engine/competency/state.ts";
import { cardOf, releaseOf } from "../../support/competency.ts";

const card = cardOf(
  releaseOf("motor", {
    revision: 3,
    hazards: [{ id: "spring", title: "A wound spring" }],
    phases: [{ id: "strip", title: "Taking apart" }],
  }),
);
const other = cardOf(releaseOf("screws"));
const naming = { day: dayWords("en"), cards: new Map([card, other].map((each) => [each.module, each])) };

const state: ModuleState = {
  module: "motor",
  standing: "not begun",
  missing: [],
  level: undefined,
  revision: 2,
  until: "2027-05-12",
  stopped: undefined,
  mentors: [],
};

describe("what comes next", () => {
  test.each([
    [{ kind: "module", module: "screws" }, /The screws/, "modules/screws/index.html"],
    [{ kind: "reading" }, /sheet/, "modules/motor/index.html"],
    [{ kind: "hazard", hazard: "spring" }, /A wound spring/, "hazards/spring/index.html"],
    [{ kind: "quiz", best: undefined, pass: 0.8 }, /80 %/, "modules/motor/quiz/index.html"],
    // 79.96 % must not read as the 80 % that would pass.
    [{ kind: "quiz", best: 0.7996, pass: 0.8 }, /79\.9 % so far, 80 %/, "modules/motor/quiz/index.html"],
    // As the quiz page itself shows six points of seven.
    [{ kind: "quiz", best: 6 / 7, pass: 0.9 }, /85\.7 % so far, 90 %/, "modules/motor/quiz/index.html"],
    [{ kind: "supervised-quiz", sat: false }, /mentor/, "modules/motor/quiz/index.html"],
    [{ kind: "supervised-quiz", sat: true }, /mentor/, undefined],
    [{ kind: "practice", practice: "order" }, /Order/, "modules/motor/practice/index.html#practice-order"],
    [{ kind: "dry-run" }, /paper/, "modules/motor/dry-run/index.html"],
    [{ kind: "watched", has: 1, needs: 2 }, /1 of 2/, undefined],
    [{ kind: "unaided", has: 0, needs: 1 }, /unaided.*0 of 1/, undefined],
    [{ kind: "occasions", has: 1, needs: 2 }, /days.*1 of 2/, undefined],
    [{ kind: "mentors", has: 1, needs: 2 }, /mentors.*1 of 2/, undefined],
    [{ kind: "phase", phase: "strip" }, /Taking apart/, undefined],
  ] as const)("%o", (missing, text, file) => {
    const next = nextWords(missing, card, naming);
    expect(next.text).toMatch(text);
    expect(next.file).toBe(file);
  });

  test("who does not hold a sign-off that counts is told not to work alone", () => {
    const told = standings.filter((standing) =>
      /Don’t work alone/.test(standingSentence({ ...state, standing }, card, naming.day)),
    );
    expect(told).toEqual(["lapsed", "withdrawn", "earlier revision", "suspended"]);
  });

  test("dates and revisions are named", () => {
    const say = (standing: ModuleState["standing"]) =>
      standingSentence({ ...state, standing }, card, naming.day);
    expect(say("lapses soon")).toContain("12 May 2027");
    expect(say("earlier revision")).toMatch(/revision 2.*revision 3/);
  });
});

describe("the name of a file", () => {
  test("has the name, the day and the ending", () => {
    expect(fileName("Jo M.", "2026-11-27T19:30:00.000Z")).toBe("jo-m-2026-11-27.record.json");
    expect(fileName("", "2026-11-27T19:30:00.000Z")).toBe("2026-11-27.record.json");
  });

  test("keeps letters of any script, and nothing that a file system refuses or takes for a folder", () => {
    expect(slug("Žofie Nováková")).toBe("žofie-nováková");
    expect(slug("山田")).toBe("山田");
    // Reserved by Windows (Microsoft, "Naming Files, Paths, and Namespaces"), and the separators and dots of others.
    expect(slug(' ../a<b>c:d"e/f\\g|h?i*j. ')).toBe("a-b-c-d-e-f-g-h-i-j");
    expect([...slug("x".repeat(500))].length).toBeLessThanOrEqual(40);
  });
});

test("what is in no file is counted", () => {
  expect(stayWords(true, 0, 0)).toMatch(/promised.*nothing in it/);
  expect(stayWords(undefined, 1, 4)).toMatch(/may clear.*One entry is in no file/);
  expect(stayWords(false, 3, 4)).toMatch(/3 entries are in no file/);
  expect(stayWords(false, 0, 4)).toMatch(/All of it is in a file/);
});
