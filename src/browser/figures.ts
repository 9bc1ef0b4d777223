/** Pages with figures: what a number is in the work and on the tray, and the figure enlarged. */

import { watchEnlarge } from "./figures/enlarge.ts";
import { watchItems } from "./figures/items.ts";
import { loadScript } from "./page/load-script.ts";

// In a module's one file each page that was one brings it along.
const { dataset } = document.documentElement;
if (dataset.figures === undefined) {
  dataset.figures = "watched";
  watchItems(document);
  watchEnlarge(document, loadScript);
}
