/** Holds imports against the laws. */
import { posix } from "node:path";
import type { Found, Import } from "./imports.ts";
import type { Exception, Law, Target } from "./laws.ts";

export interface Verdict {
  /** In words, one for each import that a law forbids. */
  readonly violations: readonly string[];
  /** Every arrow that was seen, from the place of a law to a target. */
  readonly arrows: ReadonlySet<string>;
  /** Exceptions that no import needed. */
  readonly unused: readonly Exception[];
}

const outside = "outside the laws:";

export const arrow = (from: string, to: Target): string => `${from} -> ${to}`;

export function checkLaws(found: Found, laws: readonly Law[], exceptions: readonly Exception[]): Verdict {
  const arrows = new Set<string>();
  const used = new Set<Exception>();
  const violations = found.files
    .filter((file) => lawOf(file, laws) === undefined)
    .map((file) => `${file}: no law covers it`);
  for (const one of found.imports) {
    const law = lawOf(one.file, laws);
    if (law === undefined) continue;
    const target = targetOf(one, laws);
    arrows.add(arrow(law.from, target));
    if (isLawful(one, law, target)) continue;
    const exception = exceptions.find(({ from, to }) => one.file === from && pathOf(one) === to);
    if (exception === undefined) violations.push(`${one.file} imports ${words(one, target)}. ${law.why}`);
    else used.add(exception);
  }
  return { violations, arrows, unused: exceptions.filter((exception) => !used.has(exception)) };
}

function isLawful(one: Import, law: Law, target: Target): boolean {
  if (target === law.from || law.may.includes(target) || law.may.includes(pathOf(one))) return true;
  if (law.may.includes("*")) return !target.startsWith(outside);
  return one.typeOnly && law.types?.includes(target) === true;
}

const words = ({ specifier, typeOnly }: Import, target: Target): string =>
  `${typeOnly ? "types of " : ""}${target} ("${specifier}")`;

function lawOf(path: string, laws: readonly Law[]): Law | undefined {
  const fitting = laws.filter(({ from }) => path === from || path.startsWith(`${from}/`));
  return fitting.sort((a, b) => b.from.length - a.from.length)[0];
}

function targetOf(one: Import, laws: readonly Law[]): Target {
  const { specifier } = one;
  if (specifier.startsWith("node:")) return "node:";
  if (!specifier.startsWith(".")) return packageOf(specifier);
  return lawOf(pathOf(one), laws)?.from ?? `${outside} ${pathOf(one)}`;
}

/** The path that a relative import leads to, relative to the project. */
function pathOf({ file, specifier }: Import): string {
  return specifier.startsWith(".") ? posix.normalize(posix.join(posix.dirname(file), specifier)) : specifier;
}

function packageOf(specifier: string): string {
  return specifier.split("/", specifier.startsWith("@") ? 2 : 1).join("/");
}
