/** A quiz of two kinds of question, and the wrong options that the module itself tells of. */

/** What people do wrong in a step, and what comes of it. */
export interface StepMistake {
  readonly step: string;
  readonly mistake: string;
  readonly result: string;
}

/** `see` is where to read again: a step, or a page. */
export const quizText = (see: string, mistakes: readonly StepMistake[] = []): string => `pass: 80 %
questions:
  - id: first-question
    kind: choose-one
    ask: What is asked, in one sentence?
    options:
      - {text: The right answer, right: true}
      - {text: A wrong answer, why: What is wrong with it.}
      - {text: Another wrong answer, why: What is wrong with that.}
    why: Why the right answer is right.
    see: "${see}"
  - id: second-question
    kind: choose-several
    ask: Which of these hold?
    options:
      - {text: One that holds, right: true}
      - {text: Another that holds, right: true}
      - {text: One that does not, why: What is wrong with it.}
      - {text: Another that does not, why: What is wrong with that.}
    why: Why these hold and the others do not.
    see: "${see}"
${offered(mistakes)}`;

/** As comments, for only the author knows which question each answers wrongly. */
function offered(mistakes: readonly StepMistake[]): string {
  if (mistakes.length === 0) return "";
  const lines = mistakes.map(
    ({ step, mistake, result }) =>
      `#     - {text: ${JSON.stringify(mistake)}, why: ${JSON.stringify(result)}}   # ${step}\n`,
  );
  return `\n# Wrong options, from the mistakes that the module's steps tell of. Move them to the question that they answer wrongly:\n${lines.join("")}`;
}

/** The mistakes of steps as written, before anything was checked; what is not of their form is left out. */
export function mistakesIn(steps: readonly { readonly value: unknown }[]): StepMistake[] {
  return steps.flatMap(({ value }) => {
    const { id, mistakes } = fieldsOf(value);
    if (typeof id !== "string" || !Array.isArray(mistakes)) return [];
    return mistakes.flatMap((one: unknown) => {
      const { mistake, result } = fieldsOf(one);
      if (typeof mistake !== "string" || typeof result !== "string") return [];
      return [{ step: id, mistake: onOneLine(mistake), result: onOneLine(result) }];
    });
  });
}

const onOneLine = (text: string): string => text.replace(/\s+/g, " ").trim();

const fieldsOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
