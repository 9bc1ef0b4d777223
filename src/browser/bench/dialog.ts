/** A panel before the page: the focus stays in it, Escape closes it, and goes back to where it was. */
import { type Content, element } from "../page/element.ts";

/** It is gone when it is closed; `onClose` is called then. */
export function openDialog(title: string, onClose: () => void, ...content: Content[]): HTMLDialogElement {
  const heading = element("h2", { id: "s_bench-dialog", tabindex: "-1" }, title);
  const dialog = element(
    "dialog",
    { class: "bench-dialog", "aria-labelledby": heading.id },
    heading,
    ...content,
  );
  dialog.addEventListener("close", () => {
    dialog.remove();
    onClose();
  });
  document.querySelector(".bench")!.append(dialog);
  dialog.showModal();
  heading.focus();
  return dialog;
}
