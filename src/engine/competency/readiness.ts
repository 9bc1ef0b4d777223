import type { Missing } from "./state.ts";

const bench: ReadonlySet<Missing["kind"]> = new Set([
  "watched",
  "unaided",
  "occasions",
  "mentors",
  "phase",
] as const);

/** Whether it is for a mentor to watch, at the bench. */
export const isBench = ({ kind }: Missing): boolean => bench.has(kind);

/**
 * What can be done next with what is missing: nothing but watching, nothing but signing, or neither yet. A supervised sitting that was
 * handed in holds nothing up: the mentor marks it.
 */
export function readiness(missing: readonly Missing[]): "watching" | "signing" | undefined {
  const open = missing.filter((each) => !(each.kind === "supervised-quiz" && each.sat));
  if (open.length === 0) return "signing";
  return open.every(isBench) ? "watching" : undefined;
}
