/** A QR code (ISO/IEC 18004) as a drawing. */
import { encode } from "uqr";

const svg = "http://www.w3.org/2000/svg";
/** Modules of quiet zone that the standard asks for on each side. */
const quiet = 4;

/** Level M mends 15 % of the code: sheets get oily. Throws a RangeError where the text is too long for any code. */
export function qrCode(text: string, label: string): SVGSVGElement {
  const { data, size } = encode(text, { ecc: "M", border: quiet });
  const drawing = document.createElementNS(svg, "svg");
  drawing.setAttribute("viewBox", `0 0 ${size} ${size}`);
  drawing.setAttribute("role", "img");
  drawing.setAttribute("aria-label", label);
  drawing.setAttribute("class", "qr");
  const ground = document.createElementNS(svg, "rect");
  for (const [name, value] of [
    ["width", `${size}`],
    ["height", `${size}`],
    ["fill", "#fff"],
  ] as const)
    ground.setAttribute(name, value);
  const dark = document.createElementNS(svg, "path");
  dark.setAttribute("d", pathOf(data));
  dark.setAttribute("fill", "#000");
  drawing.append(ground, dark);
  return drawing;
}

/** Squares, row by row. */
export const pathOf = (data: readonly (readonly boolean[])[]): string =>
  data.map((row, y) => row.map((isDark, x) => (isDark ? `M${x} ${y}h1v1h-1z` : "")).join("")).join("");
