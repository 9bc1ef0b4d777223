/** The choice among phases: one is shown, the others hidden; the address and the links say which. */
export function chooseAmong(sections: readonly HTMLElement[], links: readonly HTMLAnchorElement[]): void {
  let chosen = sections[0];
  const show = (): void => {
    chosen = sections.find(({ id }) => `#${id}` === location.hash) ?? chosen;
    for (const section of sections) section.hidden = section !== chosen;
    for (const link of links) {
      if (link.hash === `#${chosen?.id}`) link.setAttribute("aria-current", "true");
      else link.removeAttribute("aria-current");
    }
  };
  addEventListener("hashchange", show);
  show();
}
