/** Offers a file for download. Nothing leaves the device but what a person then hands over. */
import { element } from "./element.ts";

/** Some browsers begin to read only when the click is over; milliseconds. */
const stay = 10_000;

export function saveFile(name: string, text: string, type = "application/json"): void {
  const href = URL.createObjectURL(new Blob([text], { type }));
  element("a", { href, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(href), stay);
}
