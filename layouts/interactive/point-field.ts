/** The figure of a question that asks for a place on it; the places themselves are listed below it. */
import type { QuestionOf } from "../../src/engine/quiz/kinds.ts";
import { attribute, type Html, html } from "../html.ts";

/** How the page shows a picture of the content. */
export type Drawn = (file: string) => {
  readonly src: string;
  readonly size: { readonly width: number; readonly height: number } | undefined;
};

export function pointField({ figure: { file, alt } }: QuestionOf<"point">, drawn: Drawn): Html {
  const { src, size } = drawn(file);
  return html`<div class="pointing"><img src="${src}" alt="${alt}"${attribute("width", size?.width)}${attribute("height", size?.height)}></div>
<p class="pointing-note" role="status">Point at the figure, or choose from the list.</p>
`;
}
