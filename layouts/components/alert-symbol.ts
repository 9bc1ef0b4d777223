/** The safety alert symbol: an exclamation mark in a triangle, as ISO 3864-2 and ANSI Z535.6 want it before a signal word. */
import { raw } from "../html.ts";

export const alertSymbol = raw(
  '<svg class="alert" viewBox="0 0 24 22" aria-hidden="true"><path d="M12 0 24 22H0z"/><path class="mark" d="M10.4 7h3.200l-.7 7.200h-1.800zM10.500 15.800h3v3h-3z"/></svg>'.replace(
    /(\.\d)00/g,
    "$1",
  ),
);
