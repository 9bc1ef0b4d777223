/** Pages to be printed: which sheets, and on which paper. */
import { storeAt } from "./page/store.ts";
import { PaperChoice } from "./paper/paper-choice.ts";

const place = document.querySelector<HTMLElement>(".paper-choice");
if (place !== null) new PaperChoice(place, storeAt("paper"));
