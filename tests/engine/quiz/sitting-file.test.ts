import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawPaper } from "../../../src/engine/quiz/paper.ts";
import { quizDigest } from "../../../src/engine/quiz/quiz-digest.ts";
import { questionProblems } from "../../../src/engine/quiz/quiz-problems.ts";
import { scoreQuiz } from "../../../src/engine/quiz/score.ts";
import { markSitting, readSittingFile, writeSitting } from "../../../src/engine/quiz/sitting-file.ts";
import { namedAnswer, withoutKey } from "../../../src/engine/quiz/without-key.ts";
import {
  anyAnswer,
  anyQuiz,
  cases,
  groups,
  one,
  pairs,
  places,
  quantityQuestion,
  quiz,
  rightAnswer,
  word,
} from "./questions.ts";

const paper = quiz(0.5, one("guard", "rww"), word("oil", ["oil"]), cases("sum", ["3 mm", "4 mm"], "1 %"));
const of = { module: "box", revision: 2 };
const sitting = {
  ...of,
  digest: quizDigest(paper),
  seed: "s",
  preferred: [],
  answers: new Map<string, unknown>([
    ["guard", "option 0"],
    ["oil", "OIL"],
  ]),
};
const written = JSON.parse(writeSitting(sitting));
const marked = (change: object) => {
  const read = readSittingFile(JSON.stringify({ ...written, ...change }));
  return read.ok ? markSitting(paper, of, read.value) : read;
};

test("a sitting is read as it was written", () => {
  expect(readSittingFile(writeSitting(sitting))).toEqual({ ok: true, value: sitting });
});

describe("marking a file", () => {
  test("says what was not answered, and which answers belong to no question", () => {
    const result = marked({ answers: [...written.answers, ["constructor", 1]] });
    expect(result).toMatchObject({
      ok: true,
      value: { unanswered: ["sum"], score: { score: 2, max: 3, unknown: ["constructor"] } },
    });
  });

  test("an answer of the wrong kind earns nothing and is named", () => {
    const result = marked({ answers: [["guard", { right: true }]] });
    expect(result.ok && result.value.score.questions[0]).toMatchObject({
      score: 0,
      problem: { code: "wrong-kind" },
    });
  });

  test("another revision or module is refused, and named", () => {
    expect(marked({ revision: 1 })).toMatchObject({
      ok: false,
      problem: { code: "other-revision", found: "a sitting on revision 1", expected: "one on revision 2" },
    });
    expect(marked({ module: "motor" })).toMatchObject({
      ok: false,
      problem: { code: "other-module", found: "a sitting on motor" },
    });
  });

  test("another wording within the revision is refused, both told by their digests", () => {
    const changed = {
      ...paper,
      questions: paper.questions.map((one) => ({ ...one, ask: `${one.ask} now` })),
    };
    const read = readSittingFile(writeSitting(sitting));
    expect(read.ok && markSitting(changed, of, read.value)).toMatchObject({
      ok: false,
      problem: {
        code: "other-quiz",
        found: `a sitting on the quiz ${quizDigest(paper)}`,
        expected: `one on the quiz ${quizDigest(changed)}`,
      },
    });
  });

  test("a file that claims a score is refused: it earns what its answers earn", () => {
    for (const claim of [{ score: 3 }, { passed: true }, { questions: [{ id: "guard", score: 1 }] }])
      expect(marked(claim)).toMatchObject({
        ok: false,
        problem: { code: "not-a-sitting", found: `a field ${Object.keys(claim)[0]}` },
      });
  });

  /** Figures as people and other programs write them, as answers to 50 mL within 10 % and to 1.5 mm within 1 %. */
  test.each<[string, number, number, string | undefined]>([
    ["1e999", 0, 0, "number"],
    ['"1e999"', 0, 0, "too-large"],
    ['"1e999 mL"', 0, 0, "too-large"],
    ["-0", 0, 0, undefined],
    ['"١٢"', 0, 0, "digits"],
    ['"٥٠ mL"', 0, 0, "digits"],
    ['"1,5"', 0, 1, undefined],
    ['"50,0 mL"', 1, 0, undefined],
    ['"1,234"', 0, 0, "ambiguous-number"],
    ['"1½"', 0, 1, undefined],
    ['"½"', 0, 0, undefined],
    ['"½ dL"', 1, 0, undefined],
    ['"NaN"', 0, 0, "number"],
    ['"0x32"', 0, 0, "unknown-unit"],
    ["50", 1, 0, undefined],
    ["true", 0, 0, "wrong-kind"],
  ])("the figure %s has one meaning, or none", (json, ofVolume, ofLength, code) => {
    const figures = quiz(
      1,
      quantityQuestion("volume", "50 mL", "10 %"),
      quantityQuestion("length", "1.5 mm", "1 %"),
    );
    const text = writeSitting({ ...sitting, digest: quizDigest(figures), answers: new Map() }).replace(
      '"answers": []',
      `"answers": [["volume", ${json}], ["length", ${json}]]`,
    );
    const read = readSittingFile(text);
    const result = read.ok ? markSitting(figures, of, read.value) : read;
    if (!result.ok) throw new Error(result.problem.found);
    const [volume, length] = result.value.score.questions;
    expect([volume!.score, length!.score]).toEqual([ofVolume, ofLength]);
    // Where it can't be read, that is said; it is never taken for another figure.
    expect(volume!.problem?.code).toBe(code);
  });

  test.each([
    ["", "not-json"],
    ["{", "not-json"],
    ["null", "not-a-sitting"],
    ["[]", "not-a-sitting"],
    ["{}", "not-a-sitting"],
    [JSON.stringify({ ...written, seed: 4 }), "not-a-sitting"],
    [JSON.stringify({ ...written, revision: "2" }), "not-a-sitting"],
    [JSON.stringify({ ...written, digest: undefined }), "not-a-sitting"],
    [JSON.stringify({ ...written, preferred: [1] }), "not-a-sitting"],
    [JSON.stringify({ ...written, answers: { guard: 0 } }), "not-a-sitting"],
    [
      JSON.stringify({
        ...written,
        answers: [
          ["a", 1],
          ["a", 2],
        ],
      }),
      "not-a-sitting",
    ],
    [`{"sitting": 1, "revision": 1e999, "module": "box"}`, "not-a-sitting"],
  ])("%.60s is refused as %s", (text, code) => {
    expect(readSittingFile(text)).toMatchObject({ ok: false, problem: { code } });
  });
});

test("ten megabytes are refused unread", () => {
  const text = `{"text": "${"x".repeat(10_000_000)}"}`;
  expect(readSittingFile(text)).toMatchObject({ ok: false, problem: { code: "too-large" } });
});

describe("the digest of a quiz", () => {
  test("is the same for a quiz that came by JSON, its fields in whatever order, and with the keys of a supervised one left out", () => {
    fc.assert(
      fc.property(anyQuiz, fc.boolean(), (whole, supervised) => {
        const asked = { ...whole, supervised };
        const digest = quizDigest(asked);
        expect(digest).toMatch(/^[0-9a-f]{32}$/);
        expect(quizDigest(turned(JSON.parse(JSON.stringify(asked))))).toBe(digest);
        const stripped = { ...asked, questions: whole.questions.map(withoutKey) };
        if (supervised) expect(quizDigest(stripped)).toBe(digest);
      }),
    );
  });

  test("is another for another mark, paper, question or, where keys are open, key", () => {
    const changes = [
      paper,
      { ...paper, pass: 0.6 },
      { ...paper, paper: { kind: "count", count: 2 } as const },
      { ...paper, questions: paper.questions.slice(1) },
      { ...paper, questions: paper.questions.map((one) => ({ ...one, why: "other" })) },
      { ...paper, supervised: true },
    ];
    expect(new Set(changes.map(quizDigest)).size).toBe(changes.length);
  });

  /** The same with fields the other way round. */
  function turned<Value>(value: Value): Value {
    if (Array.isArray(value)) return value.map(turned) as Value;
    if (typeof value !== "object" || value === null) return value;
    const entries = Object.entries(value).map(([name, inner]) => [name, turned(inner)] as const);
    return Object.fromEntries(entries.toReversed()) as Value;
  }
});

describe("a question without its key", () => {
  test("answers named on the page earn with the whole question what they earned, whatever the order", () => {
    fc.assert(
      fc.property(
        anyQuiz,
        fc.array(anyAnswer, { minLength: 6, maxLength: 6 }),
        fc.string(),
        (whole, given, seed) => {
          const open = { ...whole, questions: whole.questions.map(withoutKey) };
          const drawn = drawPaper(open, seed);
          const named = new Map(
            drawn.questions.map((question, at) => [question.id, namedAnswer(question, given[at])]),
          );
          const score = scoreQuiz(drawPaper(whole, seed), named);
          expect(score.score).toBeLessThanOrEqual(score.max);
          expect(score.score).toBeGreaterThanOrEqual(0);
          const right = new Map(
            drawPaper(whole, seed).questions.map((question) => [question.id, rightAnswer(question)]),
          );
          const rightNamed = new Map(
            drawn.questions.map((question) => [
              question.id,
              byWords(question, right.get(question.id), whole),
            ]),
          );
          expect(scoreQuiz(drawPaper(whole, seed), rightNamed).score).toBe(score.max);
        },
      ),
    );
  });

  /** A right answer in words, read by the stripped question and named again. */
  function byWords(
    stripped: Parameters<typeof namedAnswer>[0],
    answer: unknown,
    whole: typeof paper,
  ): unknown {
    const question = whole.questions.find(({ id }) => id === stripped.id)!;
    return namedAnswer(stripped, namedAnswer(question, answer));
  }

  test("says nothing that is right", () => {
    for (const question of [
      one("a", "rww"),
      pairs("b", 3, 1),
      word("c", ["secret"], 1, ["blunder"]),
      places("d", "wrw"),
      groups("e", "0011"),
      cases("f", ["37 mm", "73 mm"], "1 %"),
    ]) {
      const open = JSON.stringify(withoutKey(question));
      expect(open).not.toMatch(/true|because|secret|blunder|37|73|no use/);
      expect(questionProblems(question)).toEqual([]);
    }
  });
});
