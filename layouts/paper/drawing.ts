/** Drawings in millimetres: side and end of a screw, thin lines at the root of the thread (after ISO 6410-1), and the bar. */
import { t } from "../../src/engine/words.ts";
import type { ThreadSizes, TrueSize } from "../../src/engine/workshop/true-size.ts";
import type { FastenerKind } from "../../src/model/module.ts";
import { type Html, html } from "../html.ts";
import { capital } from "../words.ts";

export interface Drawing {
  readonly picture: Html | undefined;
  /** "Diameter 3.6 mm, length 9.525 mm": as thick and as long as it is drawn; undefined where nothing is. */
  readonly figures: string | undefined;
  /** What is not known and so not drawn, in sentences. */
  readonly missing: readonly string[];
}

/** Wider ones would not fit on either paper beside their words. */
const longestMm = 120;
const withoutHead: ReadonlySet<FastenerKind> = new Set(["set screw", "taper pin", "nut"]);
/** Room around a drawing, and between its parts. */
const marginMm = 1.5;
const gapMm = 5;
const dimensionMm = 3;

/** As much as is known is drawn; what is not is said. */
export function drawingOf({ thread, lengthMm }: TrueSize, kind: FastenerKind): Drawing {
  const length = kind === "nut" ? undefined : lengthMm;
  const fits = length === undefined || length <= longestMm;
  const drawn = fits ? length : undefined;
  const missing = [
    kind === "nut" ? unknownNut(thread) : unknownWords(thread === undefined, length === undefined),
    fits ? undefined : t`Its length is not drawn: it is longer than the sheet has room for.`,
  ].filter((each) => each !== undefined);
  const isDrawn = drawn !== undefined || thread !== undefined;
  if (!isDrawn) return { missing, picture: undefined, figures: undefined };
  return { missing, picture: picture(thread, drawn, kind), figures: capital(describe(thread, drawn)) };
}

function unknownWords(thread: boolean, length: boolean): string | undefined {
  if (thread && length) return t`Not drawn: thread and length are not known.`;
  if (thread) return t`Only the length is drawn: the thread is not known.`;
  return length ? t`Only the diameter is drawn: the length is not known.` : undefined;
}

const unknownNut = (thread: ThreadSizes | undefined): string | undefined =>
  thread === undefined ? t`Not drawn: its thread is not known.` : undefined;

function picture(thread: ThreadSizes | undefined, length: number | undefined, kind: FastenerKind): Html {
  const diameter = thread?.diameterMm ?? 0;
  const hasHead = !withoutHead.has(kind) && thread !== undefined && length !== undefined;
  const headLength = hasHead ? 0.65 * diameter : 0;
  const headHeight = hasHead ? 1.7 * diameter : diameter;
  const left = marginMm + headLength;
  const right = left + (length ?? 0);
  const middle = marginMm + headHeight / 2;
  const endMiddle = right + (length === undefined ? 0 : gapMm) + diameter / 2;
  const width = thread === undefined ? right + marginMm : endMiddle + diameter / 2 + marginMm;
  const height = marginMm * 2 + headHeight + (length === undefined ? 0 : dimensionMm);
  const side =
    length === undefined
      ? undefined
      : html`${hasHead ? head(marginMm, middle, headLength, headHeight) : undefined}${thread === undefined ? undefined : shaft(left, middle, length, thread)}${dimension(left, right, middle + headHeight / 2 + dimensionMm / 2)}`;
  return html`<svg class="true-size" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}" role="img" aria-label="Drawn at true size">${side}${thread === undefined ? undefined : end(endMiddle, middle, thread)}</svg>
`;
}

/** "diameter 3.6 mm, length 9.525 mm": as thick and as long as they are drawn. */
function describe(thread: ThreadSizes | undefined, length: number | undefined): string {
  return [
    thread === undefined ? undefined : t`diameter ${mm(thread.diameterMm)} mm`,
    length === undefined ? undefined : t`length ${mm(length)} mm`,
  ]
    .filter((each) => each !== undefined)
    .join(", ");
}

/** Dashed, because its shape is not known. */
const head = (x: number, middle: number, length: number, height: number): Html =>
  html`<rect class="drawn-head" x="${mm(x)}" y="${mm(middle - height / 2)}" width="${mm(length)}" height="${mm(height)}"/>`;

function shaft(x: number, middle: number, length: number, { diameterMm, rootMm }: ThreadSizes): Html {
  const [top, bottom] = [mm(middle - rootMm / 2), mm(middle + rootMm / 2)];
  const right = mm(x + length);
  return html`<rect class="drawn-shaft" x="${mm(x)}" y="${mm(middle - diameterMm / 2)}" width="${mm(length)}" height="${mm(diameterMm)}"/><path class="drawn-thin" d="M${mm(x)} ${top}H${right}M${mm(x)} ${bottom}H${right}"/>`;
}

/** Seen from its end, the root as three quarters of a circle. */
const end = (x: number, middle: number, { diameterMm, rootMm }: ThreadSizes): Html =>
  html`<circle class="drawn-end" cx="${mm(x)}" cy="${mm(middle)}" r="${mm(diameterMm / 2)}"/><circle class="drawn-thin" cx="${mm(x)}" cy="${mm(middle)}" r="${mm(rootMm / 2)}" pathLength="4" stroke-dasharray="3 1"/>`;

function dimension(from: number, to: number, y: number): Html {
  const [top, bottom] = [mm(y - 1), mm(y + 1)];
  return html`<path class="drawn-thin" d="M${mm(from)} ${top}V${bottom}M${mm(to)} ${top}V${bottom}"/><path class="drawn-length" d="M${mm(from)} ${mm(y)}H${mm(to)}"/>`;
}

const barMm = 100;

/** The bar of 100 mm, a tick each 10 mm. */
export const scaleBar: Html = html`<svg class="true-size" width="${barMm + 4}mm" height="9mm" viewBox="-2 0 ${barMm + 4} 9" role="img" aria-label="A bar 100 mm long">
<rect class="scale-bar" x="0" y="1" width="${barMm}" height="3"/>
${Array.from({ length: 9 }, (_, tick) => html`<path class="drawn-thin" d="M${(tick + 1) * 10} 1v3"/>`)}
<text x="0" y="8">0</text><text x="50" y="8" text-anchor="middle">50</text><text x="${barMm}" y="8" text-anchor="end">100 mm</text>
</svg>
`;

/** To a ten-thousandth of a millimetre, without the noise of binary fractions. */
const mm = (value: number): number => Number(value.toFixed(4));
