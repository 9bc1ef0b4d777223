/** Faults to go over: the rule, and what sittings, orders and runs come to as goes. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { explainOrder } from "../../../src/engine/procedure/explain-order.ts";
import { graphOf } from "../../../src/engine/procedure/graph.ts";
import { performSteps } from "../../../src/engine/procedure/perform.ts";
import { scoreQuiz } from "../../../src/engine/quiz/score.ts";
import { faultsIn, type Go } from "../../../src/engine/review/faults.ts";
import { goOfOrder, goOfRun, goOfSitting, joinedGoes } from "../../../src/engine/review/goes.ts";
import { listToGoOver } from "../../../src/engine/review/to-go-over.ts";
import { one, quiz } from "../quiz/questions.ts";

/** Letters asked, of which those of the second word were missed, capitals critically. */
const go = (asked: string, missed = ""): Go => ({
  asked: [...asked],
  missed: [...missed.toLowerCase()],
  critical: [...missed].filter((id) => id !== id.toLowerCase()).map((id) => id.toLowerCase()),
});
const open = (...goes: Go[]) => faultsIn(goes).map(({ id, missed, rightSince }) => [id, missed, rightSince]);

describe("the rule", () => {
  test("what is missed is listed until it was right once more", () => {
    expect(open()).toEqual([]);
    expect(open(go("ab"))).toEqual([]);
    expect(open(go("ab", "b"))).toEqual([["b", 1, 0]]);
    expect(open(go("ab", "b"), go("a"))).toEqual([["b", 1, 0]]);
    expect(open(go("ab", "b"), go("b", "b"))).toEqual([["b", 2, 0]]);
    expect(open(go("ab", "b"), go("b"))).toEqual([]);
  });

  test("where a miss was critical, until it was right twice running", () => {
    expect(open(go("a", "A"), go("a"))).toEqual([["a", 1, 1]]);
    expect(open(go("a", "A"), go("a"), go("a"))).toEqual([]);
    expect(open(go("a", "A"), go("a"), go("a", "a"), go("a"))).toEqual([["a", 2, 1]]);
    expect(open(go("a", "A"), go("a"), go("a", "a"), go("a"), go("a"))).toEqual([]);
  });

  test("what has left the list begins anew", () => {
    expect(open(go("a", "A"), go("a"), go("a"), go("a", "a"))).toEqual([["a", 1, 0]]);
    expect(open(go("a", "A"), go("a"), go("a"), go("a", "a"), go("a"))).toEqual([]);
  });

  test("for any goes: what was missed last is listed, and what was right twice since is not", () => {
    const ids = fc.subarray(["a", "b", "c", "constructor", "__proto__"]);
    const goes = fc.array(
      fc.tuple(ids, ids, ids).map(([asked, wrong, grave]) => ({
        asked,
        missed: wrong.filter((id) => asked.includes(id)),
        critical: grave.filter((id) => asked.includes(id) && wrong.includes(id)),
      })),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(goes, (made) => {
        const listed = new Set(faultsIn(made).map(({ id }) => id));
        for (const id of ["a", "b", "c", "constructor", "__proto__"]) {
          const verdicts = made
            .filter(({ asked }) => asked.includes(id))
            .map(({ missed }) => missed.includes(id));
          if (verdicts.at(-1) === true) expect(listed).toContain(id);
          if (!verdicts.includes(true) || verdicts.slice(-2).join() === "false,false")
            expect(listed).not.toContain(id);
        }
      }),
    );
  });
});

describe("the list over all modules", () => {
  test("a step that went wrong in two places stands once and must be right in both; critical ones stand first", () => {
    const steps = (where: string, ...goes: Go[]) => ({
      module: "motor",
      where,
      about: "step" as const,
      goes,
    });
    const list = listToGoOver([
      { module: "box", where: "quiz", about: "question", goes: [go("ab", "ab"), go("b", "b")] },
      { module: "motor", where: "quiz", about: "question", goes: [go("x", "x")] },
      steps("practice:strip", go("xyz", "xy")),
      steps("dry-run", go("xz", "xZ"), go("x")),
    ]);
    const told = list.map(({ module, faults }) => [
      module,
      faults.map(({ about, id, critical, missed, in: places }) => [
        about === "step" ? `${id} step` : id,
        critical,
        missed,
        places.map(({ where }) => where).join(),
      ]),
    ]);
    // The dry run's x was right since; the practice's was not.
    expect(told).toEqual([
      [
        "motor",
        [
          ["z step", true, 1, "dry-run"],
          ["x", false, 1, "quiz"],
          ["x step", false, 1, "practice:strip"],
          ["y step", false, 1, "practice:strip"],
        ],
      ],
      [
        "box",
        [
          ["b", false, 2, "quiz"],
          ["a", false, 1, "quiz"],
        ],
      ],
    ]);
  });

  test("is empty where everything was put right", () => {
    expect(listToGoOver([])).toEqual([]);
    const goes = [go("a", "a"), go("a")];
    expect(listToGoOver([{ module: "box", where: "quiz", about: "question", goes }])).toEqual([]);
  });
});

describe("goes", () => {
  test("of a sitting: what was checked and did not earn everything", () => {
    const paper = quiz(0.5, one("a", "rw"), one("b", "rw", { critical: true }), one("c", "rw"));
    const score = scoreQuiz(paper, new Map([["a", 0]]));
    expect(goOfSitting(score, new Set(["a", "b"]))).toEqual({
      asked: ["a", "b"],
      missed: ["b"],
      critical: ["b"],
    });
  });

  const { graph } = graphOf({
    steps: ["a", "b", "c", "d"],
    pairs: ["ab!", "bc", "cd"].map((pair) => ({
      first: pair[0]!,
      then: pair[1]!,
      because: ["so"],
      critical: pair.endsWith("!"),
    })),
  });

  test("of an order: a step that stands too late is one fault, and critical where its pair is", () => {
    const shown = ["a", "b", "c", "d", "stray"];
    expect(goOfOrder(explainOrder(graph!, ["a", "b", "c", "d"]), shown)).toEqual({
      asked: shown,
      missed: [],
      critical: [],
    });
    expect(goOfOrder(explainOrder(graph!, ["b", "c", "d", "a"]), shown)).toMatchObject({
      missed: ["a"],
      critical: ["a"],
    });
    expect(goOfOrder(explainOrder(graph!, ["a", "c", "stray"]), shown)).toMatchObject({
      missed: ["b", "d", "stray"],
      critical: [],
    });
  });

  test("of any order, each pair that is told as broken has a step on the list, a critical one a critical one", () => {
    const orders = fc.shuffledSubarray(["a", "b", "c", "d"], { minLength: 1 });
    const pairs = fc.subarray(["ab", "ac", "ad", "bc", "bd", "cd"]);
    fc.assert(
      fc.property(orders, pairs, fc.nat(5), (given, bound, grave) => {
        const { graph: any } = graphOf({
          steps: ["a", "b", "c", "d"],
          pairs: bound.map((pair, at) => ({
            first: pair[0]!,
            then: pair[1]!,
            because: ["so"],
            critical: at === grave,
          })),
        });
        const answer = explainOrder(any!, given);
        const { missed, critical } = goOfOrder(answer, ["a", "b", "c", "d"]);
        expect(missed.length).toBe(answer.moves);
        for (const { first, then, critical: isGrave } of answer.told) {
          expect(missed.includes(first) || missed.includes(then)).toBe(true);
          if (isGrave) expect(critical.includes(first) || critical.includes(then)).toBe(true);
        }
      }),
    );
  });

  test("of a run: what was tried too early, though it was done later", () => {
    const tries = performSteps(graph!, ["b", "a", "d", "b", "c", "d"])!;
    expect(goOfRun(tries)).toEqual({ asked: ["b", "a", "d", "c"], missed: ["b", "d"], critical: ["b"] });
  });

  test("joined: what was missed stays missed", () => {
    expect(joinedGoes(go("ab", "B"), go("bc", "c"))).toEqual({
      asked: ["a", "b", "c"],
      missed: ["b", "c"],
      critical: ["b"],
    });
  });
});
