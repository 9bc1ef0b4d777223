/** Which keys turn the page, and what a press does. */

export interface Press {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

export interface Scrolled {
  /** Nothing more of the card is hidden above. */
  readonly atTop: boolean;
  readonly atEnd: boolean;
}

/** What a key can be taught for: on to the end of what is shown and then to the next step, back likewise, tick off. */
export const taughtRoles = ["on", "back", "tick"] as const;
export type TaughtRole = (typeof taughtRoles)[number];
/** The key of each role that was taught, as `KeyboardEvent.key` names it. */
export type Taught = Readonly<Partial<Record<TaughtRole, string>>>;

type Role = TaughtRole | "next" | "previous";
export type Deed = "turn on" | "turn back" | "scroll on" | "scroll back" | "tick";

/** The side arrows turn at once; the others scroll first, so that nobody turns past a safety message that was still below. */
const roles: ReadonlyMap<string, Role> = new Map<string, Role>([
  ["ArrowRight", "next"],
  ["ArrowLeft", "previous"],
  ["PageDown", "on"],
  ["Enter", "on"],
  [" ", "on"],
  ["PageUp", "back"],
]);

const deeds: Readonly<Record<Role, (scrolled: Scrolled) => Deed>> = {
  next: () => "turn on",
  previous: () => "turn back",
  on: ({ atEnd }) => (atEnd ? "turn on" : "scroll on"),
  back: ({ atTop }) => (atTop ? "turn back" : "scroll back"),
  tick: () => "tick",
};

/** Undefined where the key is left to the browser. A taught key goes before what the page gives it. */
export function deedOf(press: Press, scrolled: Scrolled, taught: Taught = {}): Deed | undefined {
  if (press.altKey || press.ctrlKey || press.metaKey) return undefined;
  const key = keyOf(press.key);
  const own = press.key === " " && press.shiftKey ? "back" : roles.get(press.key);
  const role = taughtRoles.find((each) => taught[each] === key) ?? own;
  return role === undefined ? undefined : deeds[role](scrolled);
}

/** Letters without regard to capitals: a foot switch knows nothing of the shift key. */
export const keyOf = (key: string): string => (key.length === 1 ? key.toLowerCase() : key);
