/** What the marks of the drawing mean, and how they are drawn. */
import { t } from "../../src/engine/words.ts";
import type { ModuleView } from "../../src/model/site.ts";
import { type Html, html, raw } from "../html.ts";

/** The critical mark is a triangle with an exclamation mark, so that colour and weight are not all that tells. */
export const markers = raw(`<defs>
<marker id="s_arrow" viewBox="0 0 8 8" refX="7.5" refY="4" markerWidth="8" markerHeight="8" markerUnits="userSpaceOnUse" orient="90"><path d="M0 .5 8 4 0 7.5z"/></marker>
<marker id="s_alert" class="critical" viewBox="0 0 20 20" refX="10" refY="18.5" markerWidth="20" markerHeight="20" markerUnits="userSpaceOnUse"><path d="M.5 1.5h19L10 18.5z"/><path class="mark" d="M9 3.5h2l-.3 5.5H9.3zM9 10.5h2v2H9z"/></marker>
</defs>
`);

interface Mark {
  readonly sample: string;
  readonly meaning: string;
  readonly isIn: (view: ModuleView) => boolean;
}

const marks: readonly Mark[] = [
  {
    sample: '<path class="tip" d="M32 4v30"/>',
    meaning: t`The lower step can only come after the upper one.`,
    isIn: ({ precedence }) => precedence.pairs.some(({ critical }) => !critical),
  },
  {
    sample: '<path class="critical tip" d="M32 4v30"/>',
    meaning: t`The same, and critical: the wrong way round ruins something or hurts someone.`,
    isIn: ({ precedence }) => precedence.pairs.some(({ critical }) => critical),
  },
  {
    sample: '<path class="swap" d="M32 2v36"/>',
    meaning: t`May change places: the author says so, and why in the words below.`,
    isIn: ({ swaps }) => swaps.length > 0,
  },
  {
    sample: '<rect class="critical" x="4" y="8" width="56" height="24"/>',
    meaning: t`A critical step: a mistake in it ruins something or hurts someone.`,
    isIn: ({ steps }) => steps.some(({ step }) => step.critical),
  },
];

/** Only of the marks that the drawing has. */
export function key(view: ModuleView): Html {
  const used = marks.filter(({ isIn }) => isIn(view));
  return html`<ul class="key">
${used.map(({ sample, meaning }) => html`<li><svg width="64" height="40" viewBox="0 0 64 40" aria-hidden="true" focusable="false">${raw(sample)}</svg> ${meaning}</li>\n`)}</ul>
`;
}
