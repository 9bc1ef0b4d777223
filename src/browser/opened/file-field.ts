/** A field for files that also takes what is dropped on it. */
import { element } from "../page/element.ts";

export interface FileFieldOptions {
  readonly id: string;
  readonly label: string;
  readonly several?: boolean;
  readonly take: (files: readonly File[]) => void;
}

/** A label that looks like a button: the field itself can't be dressed. The same file can be chosen again. */
export function fileField({ id, label, several = false, take }: FileFieldOptions): HTMLElement {
  const input = element("input", { type: "file", id, accept: ".json,application/json", multiple: several });
  input.addEventListener("change", () => {
    const files = [...(input.files ?? [])];
    if (files.length > 0) take(files);
    input.value = "";
  });
  return element("span", { class: "file-chooser" }, input, element("label", { for: id }, label));
}

/** The element takes files that are dropped on it; a file that misses it does not replace the page. */
export function takeDropped(target: HTMLElement, take: (files: readonly File[]) => void): void {
  target.addEventListener("dragover", (event) => {
    event.preventDefault();
    target.classList.add("is-over");
  });
  target.addEventListener("dragleave", () => target.classList.remove("is-over"));
  target.addEventListener("drop", (event) => {
    event.preventDefault();
    target.classList.remove("is-over");
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length > 0) take(files);
  });
  for (const kind of ["dragover", "drop"] as const)
    document.addEventListener(kind, (event) => event.preventDefault());
}
