/** Signal words in the language of the site. In English they are those that content is written with. */
import { tIn } from "./words.ts";

/** Signal words of safety messages (ANSI Z535.6, ISO 3864-2). */
export const signalWordNames: Readonly<Record<"danger" | "warning" | "caution" | "notice", string>> = {
  danger: tIn("signal word of a safety message")`Danger`,
  warning: tIn("signal word of a safety message")`Warning`,
  caution: tIn("signal word of a safety message")`Caution`,
  notice: tIn("signal word of a safety message")`Notice`,
};
