/** The figure of a question that asks for a place on it; the places themselves are listed below it. */
import type { QuestionOf } from "../../src/engine/quiz/kinds.ts";
import { type Html, html } from "../html.ts";

/** How the page shows a picture of the content, and what leads to it enlarged. */
export type Drawn = (figure: { readonly file: string; readonly alt: string }) => {
  readonly picture: Html;
  readonly enlarge: Html | undefined;
};

export function pointField({ figure }: QuestionOf<"point">, drawn: Drawn): Html {
  const { picture, enlarge } = drawn(figure);
  return html`<div class="pointing">${picture}</div>${enlarge}
<p class="pointing-note" role="status">Point at the figure, or choose from the list.</p>
`;
}
