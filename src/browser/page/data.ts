import { part } from "./part.ts";

/** The data block of the page, written by the build; undefined where there is none. */
export function pageData<Data>(): Data | undefined {
  const block = part.querySelector("script[id$=page-data]");
  return block === null ? undefined : (JSON.parse(block.textContent ?? "") as Data);
}

/** Takes away what the page says to those whose browser runs no script. */
export function scriptIsHere(): void {
  for (const note of part.querySelectorAll(".needs-script")) note.remove();
}
