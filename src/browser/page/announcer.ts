/** Says things to those who hear the page. */
import { element } from "./element.ts";

export type Announce = (text: string) => void;

/** Screen readers miss a text that is set in the same turn in which the region was emptied. */
const pause = 60;

/** Puts a live region on the page. Of several texts in quick succession the last one is said. */
export function announcer(): Announce {
  const region = element("div", { class: "announcer", "aria-live": "polite" });
  document.body.append(region);
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return (text) => {
    region.textContent = "";
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      region.textContent = text;
    }, pause);
  };
}
