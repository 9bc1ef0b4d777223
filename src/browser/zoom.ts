/** Loaded when a figure is first enlarged. */
import { showLarge } from "./zoom/dialog.ts";

globalThis.benchwrightZoom = showLarge;
