/** Pages with pictures that have no numbers: each can be enlarged. */
import { watchEnlarge } from "./figures/enlarge.ts";
import { loadScript } from "./page/load-script.ts";

watchEnlarge(document, loadScript);
