/** A quiz of two kinds of question. `see` is where to read again: a step, or a page. */
export const quizText = (see: string): string => `pass: 80 %
questions:
  - id: first-question
    kind: choose-one
    ask: What is asked, in one sentence?
    options:
      - {text: The right answer, right: true}
      - {text: A wrong answer, why: What is wrong with it.}
    why: Why the right answer is right.
    see: "${see}"
  - id: second-question
    kind: choose-several
    ask: Which of these hold?
    options:
      - {text: One that holds, right: true}
      - {text: Another that holds, right: true}
      - {text: One that does not, why: What is wrong with it.}
    why: Why these hold and the other does not.
    see: "${see}"
`;
