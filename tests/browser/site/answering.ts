/** How each kind of question is answered on a quiz page, right or wrong, by whatever hands. */
import type { Locator, Page } from "playwright-core";
import type { Question, QuestionKind, QuestionOf } from "../../../src/engine/quiz/kinds.ts";
import type { Hands } from "./hands.ts";

type Answer<Kind extends QuestionKind> = (
  root: Locator,
  question: QuestionOf<Kind>,
  right: boolean,
  hands: Hands,
) => Promise<void>;

const radio = (field: Locator, name: string): Locator => field.getByRole("radio", { name, exact: true });

const answers: { readonly [Kind in QuestionKind]: Answer<Kind> } = {
  "choose-one": (root, { options }, right, hands) =>
    hands.pick(radio(root, options.find((option) => option.right === right)!.text)),
  async "choose-several"(root, { options }, right, hands) {
    const wanted = new Set(options.filter((option) => option.right === right).map(({ text }) => text));
    // Keys go down the page, so that boxes are ticked in the order shown.
    for (const row of await root.locator(".options li").all()) {
      if (wanted.has((await row.innerText()).trim())) await hands.tick(row.getByRole("checkbox"));
    }
  },
  number: (root, { answer }, right, hands) =>
    hands.write(root.getByRole("textbox"), figure(answer.amount, right)),
  arrange(root, { steps }, right, hands) {
    const titles = steps.map(({ title }) => title);
    return hands.arrange(listIn(root), right ? titles : titles.toReversed());
  },
  async match(root, { items, choices }, right, hands) {
    for (const [item, { text, choice }] of items.entries()) {
      const label = choices[right ? choice : (item + 1) % items.length]!;
      await hands.choose(root.getByLabel(text, { exact: true }), label);
    }
  },
  text: (root, question, right, hands) =>
    hands.write(root.getByRole("textbox"), right ? question.answers[0]!.toUpperCase() : "something else"),
  point(root, { places }, right, hands) {
    const { text, shape } = places.find((place) => place.right === right)!;
    return hands.point(root.locator(".pointing"), shape, radio(root, text));
  },
  async sort(root, { items, groups }, right, hands) {
    for (const row of await root.locator("[data-item]").all()) {
      const { group } = items[Number(await row.getAttribute("data-item"))]!;
      await hands.pick(radio(row, groups[right ? group : (group + 1) % groups.length]!));
    }
  },
  async worked(root, { cases }, right, hands) {
    const asked = folded(await root.locator(".question-ask").innerText());
    const { answer } = cases.find(({ ask }) => folded(ask) === asked)!;
    await hands.write(root.getByRole("textbox"), figure(answer.amount, right));
  },
};

export const kindsAnswered = Object.keys(answers) as readonly QuestionKind[];

/** Answers a question where it stands on the page, and does not have it checked. */
export function answerQuestion(page: Page, question: Question, right: boolean, hands: Hands): Promise<void> {
  const answer = answers[question.kind] as Answer<QuestionKind>;
  return answer(rootOf(page, question), question as QuestionOf<QuestionKind>, right, hands);
}

/** Found by its id, for a worked question asks another case each time. */
export const rootOf = (page: Page, { id }: Question): Locator => page.locator(`[data-question="${id}"]`);

/** The list in which steps are put in order. */
export const listIn = (root: Locator): Locator => root.locator(".arrange");

const figure = (amount: number, right: boolean): string => String(right ? amount : amount * 3 + 7);
const folded = (text: string): string => text.replace(/\s+/g, " ").trim();
