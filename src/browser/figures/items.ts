/** Pointing at a number of a figure shows what its item is, under the figure, and where: in the list, at the steps that move it, and on their trays. */

const shownClass = "is-shown";

/** While a number is pointed at or has the focus; a pressed one stays shown until another is, or Escape is pressed. */
export function watchItems(page: Document): void {
  let pressed: Item | undefined;
  const show = (item: Item | undefined): void => {
    clear(page);
    if (item !== undefined) mark(page, item);
  };
  for (const kind of ["pointerover", "focusin"]) {
    page.addEventListener(kind, (event) => {
      const item = itemOf(event.target);
      if (item !== undefined) show(item);
    });
  }
  for (const kind of ["pointerout", "focusout"]) {
    page.addEventListener(kind, (event) => {
      if (itemOf(event.target) !== undefined) show(pressed);
    });
  }
  page.addEventListener("click", (event) => {
    const item = itemOf(event.target);
    if (item === undefined) return;
    pressed = item;
    show(item);
  });
  page.addEventListener("keydown", (event) => {
    if (event.key !== "Escape" || pressed === undefined) return;
    pressed = undefined;
    show(undefined);
  });
}

interface Item {
  readonly number: string;
  readonly row: HTMLElement;
  /** What holds figure and list. */
  readonly figure: Element | null;
}

/** A number in a figure leads to its line of the list, and the one in the list stands there. */
function itemOf(target: EventTarget | null): Item | undefined {
  const link = target instanceof Element ? target.closest("[data-item]") : null;
  if (link === null) return undefined;
  const own = link.closest<HTMLElement>(".items li");
  const row = own ?? document.getElementById(link.getAttribute("href")?.slice(1) ?? "");
  if (row === null) return undefined;
  return { number: link.getAttribute("data-item")!, row, figure: row.closest(".numbered") };
}

function mark(page: Document, { number, row, figure }: Item): void {
  row.classList.add(shownClass);
  const own = figure?.querySelector(`.item-numbers [data-item="${number}"]`);
  own?.classList.add(shownClass);
  say(figure?.querySelector<HTMLElement>(".item-said"), own?.querySelector("title")?.textContent);
  // A step may do more than one thing to it, and is marked once.
  const links = row.querySelectorAll<HTMLAnchorElement>(".step-links a");
  for (const hash of new Set([...links].map((link) => link.hash))) {
    page.getElementById(hash.slice(1))?.querySelector("h3 .step-number")?.after(markOf(number));
    for (const entry of page.querySelectorAll(`.order-of-work a[href="${hash}"]`))
      entry.before(markOf(number));
  }
  const { of } = row.dataset;
  const part = row.closest("[data-part]") ?? page;
  if (of === undefined) return;
  for (const entry of part.querySelectorAll(`.tray [data-of="${of}"]`)) nameIn(entry).prepend(markOf(number));
}

/** A line of a tray has its name between count and change, in an element of its own where there is more to say. */
function nameIn(entry: Element): Element {
  const own = entry.querySelector(":scope > span");
  if (own !== null) return own;
  const made = document.createElement("span");
  const text = [...entry.childNodes].filter(
    (node) => node.nodeType === Node.TEXT_NODE && node.textContent?.trim(),
  );
  text[0]?.before(made);
  made.append(...text);
  return made;
}

/** Without a text, what the line said at first. */
function say(line: HTMLElement | null | undefined, text?: string | null): void {
  if (!line) return;
  line.dataset.hint ??= line.textContent ?? "";
  line.textContent = text ?? line.dataset.hint;
  line.classList.toggle(shownClass, !!text);
}

/** Seen only: who listens hears the list, which says it in words. */
function markOf(number: string): HTMLElement {
  const made = document.createElement("span");
  made.className = "item-mark";
  made.setAttribute("aria-hidden", "true");
  made.textContent = number;
  return made;
}

function clear(page: Document): void {
  for (const old of page.querySelectorAll(".item-mark")) old.remove();
  for (const line of page.querySelectorAll<HTMLElement>(`.item-said.${shownClass}`)) say(line);
  for (const old of page.querySelectorAll(`.items .${shownClass}, .item-numbers .${shownClass}`))
    old.classList.remove(shownClass);
}
