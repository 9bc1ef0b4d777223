/** The page about the site: what of it is kept on this device, why not, and a button to keep all of it. */
import { KeptView } from "./offline/kept-view.ts";

const place = document.querySelector<HTMLElement>(".kept-here");
const script = document.currentScript as HTMLScriptElement | null;
if (place !== null && script !== null) new KeptView(place, new URL("../", script.src).href);
