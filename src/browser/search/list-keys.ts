/** Arrow keys between a field and the links below it; Escape goes back to the field. */

const directions = new Map([
  ["ArrowUp", -1],
  ["ArrowDown", 1],
]);

export function listKeys(field: HTMLInputElement, list: HTMLElement): void {
  const stops = (): HTMLElement[] => [field, ...list.querySelectorAll("a")];
  const target = (event: KeyboardEvent): HTMLElement | undefined => {
    if (event.key === "Escape" && event.target !== field) return field;
    const by = directions.get(event.key);
    return by === undefined ? undefined : stops()[stops().indexOf(event.target as HTMLElement) + by];
  };
  const press = (event: KeyboardEvent): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const next = target(event);
    if (next === undefined) return;
    event.preventDefault();
    next.focus();
  };
  field.addEventListener("keydown", press);
  list.addEventListener("keydown", press);
}
