/**
 * What no drawing of the site may hold: what could run, ask for something elsewhere, or be put in from elsewhere (SVG 2, 2.5
 * "Processing modes"; a drawing opened by itself is not held back as one in an <img> is). Each row says what was found.
 */
import type { XmlAttribute } from "./tokens.ts";

/** Elements of SVG that are refused, with what they do. */
export const dangerousElements: ReadonlyMap<string, string> = new Map([
  ["script", "it runs a script"],
  ["handler", "it runs a script"],
  ["listener", "it runs a script"],
  ["foreignObject", "it holds other things than a drawing"],
  ["iframe", "it holds another page"],
  ["embed", "it holds another document"],
  ["object", "it holds another document"],
  ["audio", "it plays another file"],
  ["video", "it plays another file"],
  ["link", "it loads another file"],
]);

/** What an attribute of an element does that is refused; undefined where it is harmless. `name` is without its prefix. */
export function attributeDanger(
  element: string,
  name: string,
  { name: written, value }: XmlAttribute,
): string | undefined {
  if (/^on/i.test(name)) return "it runs a script when something happens";
  if (written === "xml:base") return "it makes the drawing's references lead elsewhere";
  if ((name === "href" || name === "src") && !isOwn(element, value))
    return `it leads to "${shortened(value)}", outside the drawing`;
  if (name === "attributeName" && /^(?:.*:)?(?:href|src|on.*)$/i.test(value.trim()))
    return `it changes "${value.trim()}" while the drawing is shown`;
  return cssDanger(value);
}

/** The pictures that a drawing may hold in itself; they are made anew. */
export const embedded = /^\s*data:image\/(png|jpe?g|webp);base64,([\sA-Za-z0-9+/=]*)$/i;

const isOwn = (element: string, value: string): boolean =>
  value.trim().startsWith("#") || value.trim() === "" || (element === "image" && embedded.test(value));

/** What a piece of CSS does that is refused. A backslash can spell any of it another way. */
export function cssDanger(css: string): string | undefined {
  const bare = css.replace(/\/\*[\s\S]*?\*\//g, "");
  if (/@import/i.test(bare)) return "its style takes in another style sheet";
  if (/\burl\(/i.test(bare) && bare.includes("\\")) return "its style hides an address behind backslashes";
  if (/\\[0-9a-f]/i.test(bare))
    return "its style spells letters by their numbers, behind which anything can hide";
  for (const [, address = ""] of bare.matchAll(/\b(?:url|src)\(\s*["']?([^"')]*)/gi)) {
    if (!address.trim().startsWith("#"))
      return `its style asks for "${shortened(address)}", outside the drawing`;
  }
  if (/\bimage-set\(|\bexpression\(|-moz-binding|javascript:/i.test(bare))
    return "its style asks for something outside the drawing";
  return undefined;
}

const shortened = (text: string): string =>
  text.trim().length > 60 ? `${text.trim().slice(0, 57)}…` : text.trim();
