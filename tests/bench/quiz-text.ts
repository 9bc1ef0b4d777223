/** A quiz of a made-up programme: eight questions of four kinds. */
import type { Random } from "./random.ts";
import { sentence } from "./words.ts";

const kinds = [
  "choose-one",
  "choose-one",
  "choose-several",
  "choose-one",
  "number",
  "choose-one",
  "arrange",
  "choose-one",
] as const;

const options = (right: number, random: Random): string =>
  `options:
${Array.from({ length: 4 }, (_, i) => {
  const text = `Answer ${i + 1}. ${sentence(random.pick)}`;
  return i < right
    ? `      - {text: "${text}", right: true}`
    : `      - {text: "${text}", why: "${sentence(random.pick)}"}`;
}).join("\n")}`;

/** The first two steps are bound, so that an arrangement can be wrong. */
const bodies: Record<(typeof kinds)[number], (steps: readonly string[], random: Random) => string> = {
  "choose-one": (_, random) => options(1, random),
  "choose-several": (_, random) => options(2, random),
  number: (_, random) => `answer: "${random.whole(2, 9)} mm"\n    tolerance: "5 %"`,
  arrange: (steps) => `steps: [${[0, 1, 7, 13, 19].map((i) => steps[i]).join(", ")}]`,
};

/** `steps` are the ids of the module's steps in the written order. */
export function quizText(steps: readonly string[], random: Random): string {
  const questions = kinds.map(
    (kind, i) => `  - id: question-${i + 1}
    kind: ${kind}
    ask: "${sentence(random.pick).slice(0, -1)}?"
    ${bodies[kind](steps, random)}
    why: "${sentence(random.pick)}"
    see: "#${random.pick(steps)}"
${i === 0 ? "    critical: true\n" : ""}`,
  );
  return `pass: 80 %\nquestions:\n${questions.join("")}`;
}
