/** Signal words of labels in the language of the site. */
import { tIn } from "./words.ts";

/** Signal words of labels under GHS, which some languages do not share with those of safety messages. */
export const labelWordNames: Readonly<Record<"danger" | "warning", string>> = {
  danger: tIn("signal word of a label under GHS")`danger`,
  warning: tIn("signal word of a label under GHS")`warning`,
};
