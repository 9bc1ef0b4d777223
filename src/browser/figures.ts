/** Pages with figures: what a number is in the work and on the tray, and the figure enlarged. */

import { watchEnlarge } from "./figures/enlarge.ts";
import { watchItems } from "./figures/items.ts";
import { loadScript } from "./page/load-script.ts";

watchItems(document);
watchEnlarge(document, loadScript);
