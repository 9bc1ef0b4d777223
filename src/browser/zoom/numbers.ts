/** The numbers of the enlarged figure: their links would lead behind the dialog, so each says what its item is. */

/** Makes buttons of them, for pointer and keys. `say` gets what a number says, and undefined once none is meant. */
export function sayNumbers(sheet: Element, say: (text: string | undefined) => void): void {
  const links = [...sheet.querySelectorAll<SVGAElement>("a[data-item]")];
  let pressed: Element | undefined;
  const show = (shown: Element | undefined): void => {
    for (const link of links) link.classList.toggle("is-shown", link === shown);
    say(shown?.querySelector("title")?.textContent ?? undefined);
  };
  for (const link of links) {
    for (const name of ["id", "href"]) link.removeAttribute(name);
    link.setAttribute("role", "button");
    link.setAttribute("tabindex", "0");
    const press = () => {
      pressed = link;
      show(link);
    };
    link.addEventListener("click", press);
    link.addEventListener("focus", press);
    link.addEventListener("pointerenter", () => show(link));
    link.addEventListener("pointerleave", () => show(pressed));
    link.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" && event.key !== " ") return;
      event.preventDefault();
      press();
    });
  }
  show(undefined);
}
