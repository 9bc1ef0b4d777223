/** The page of faults to go over. */
import type { FaultsData } from "../model/page-data.ts";
import { listView } from "./faults/list-view.ts";
import { pageData, scriptIsHere } from "./page/data.ts";

const data = pageData<FaultsData>();
const place = document.querySelector<HTMLElement>(".faults-list");
const printButton = document.querySelector<HTMLButtonElement>(".faults-print");

if (data !== undefined && place !== null) {
  const show = (): void => {
    place.replaceChildren(...listView(data));
    if (printButton !== null) printButton.hidden = place.querySelector(".faults") === null;
  };
  show();
  // Another window has kept something, or the page comes back as it was left.
  window.addEventListener("storage", show);
  window.addEventListener("pageshow", ({ persisted }) => {
    if (persisted) show();
  });
  printButton?.addEventListener("click", () => print());
  scriptIsHere();
}
