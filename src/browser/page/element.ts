/** Makes elements. Content is always text or elements, never markup. */

export type Content = Node | string | undefined;
export type Attributes = Readonly<Record<string, string | boolean | undefined>>;

/** Undefined and false leave an attribute out; true gives it without a value. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...content: readonly Content[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) made.setAttribute(name, value === true ? "" : value);
  }
  made.append(...content.filter((each) => each !== undefined));
  return made;
}

/** A button that does something on this page. */
export function button(text: string, press: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const made = element("button", { type: "button", ...attributes }, text);
  made.addEventListener("click", press);
  return made;
}

/** Brings an element into view and moves the focus to it, so that reading goes on there. */
export function goTo(target: HTMLElement): void {
  if (!target.hasAttribute("tabindex")) target.tabIndex = -1;
  target.focus({ preventScroll: true });
  target.scrollIntoView({ block: "start" });
}
