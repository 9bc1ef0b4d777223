/** The rules of a module: its programme's, and its own where they are stricter. */
import type { SignOffRules } from "./rules.ts";

/** Where nothing is said: a quiz passed at 80 %, practices right, watched once with help and once unaided; it never lapses. */
export const usualRules: SignOffRules = {
  pass: 0.8,
  practice: true,
  dryRun: false,
  watched: 1,
  unaided: 1,
  occasions: 1,
  mentors: 1,
  months: undefined,
  newRevision: "again",
  minimumAge: undefined,
  induction: undefined,
  mentorPresent: false,
  traineesPerMentor: undefined,
};

type Stricter = { readonly [Field in keyof SignOffRules]: (a: Rule<Field>, b: Rule<Field>) => Rule<Field> };
type Rule<Field extends keyof SignOffRules> = SignOffRules[Field];

const most = (a: number, b: number): number => Math.max(a, b);
const either = (a: boolean, b: boolean): boolean => a || b;
const least = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined ? b : b === undefined ? a : Math.min(a, b);

/** Of two rules of a field the stricter one. */
const stricter: Stricter = {
  pass: most,
  practice: either,
  dryRun: either,
  watched: most,
  unaided: most,
  occasions: most,
  mentors: most,
  months: least,
  newRevision: (a, b) => (a === "again" ? a : b),
  minimumAge: (a, b) => (a === undefined ? b : b === undefined ? a : Math.max(a, b)),
  induction: both,
  mentorPresent: either,
  traineesPerMentor: least,
};

/** Field by field; a field that is undefined asks for nothing. Each of two inductions is asked for, `a`'s first. */
export function strictest(a: SignOffRules, b: Partial<SignOffRules>): SignOffRules {
  const one = <Field extends keyof SignOffRules>(field: Field): Rule<Field> => {
    const own = b[field] as Rule<Field> | undefined;
    return own === undefined ? a[field] : stricter[field](a[field], own);
  };
  return {
    pass: one("pass"),
    practice: one("practice"),
    dryRun: one("dryRun"),
    watched: one("watched"),
    unaided: one("unaided"),
    occasions: one("occasions"),
    mentors: one("mentors"),
    months: one("months"),
    newRevision: one("newRevision"),
    minimumAge: one("minimumAge"),
    induction: one("induction"),
    mentorPresent: one("mentorPresent"),
    traineesPerMentor: one("traineesPerMentor"),
  };
}

function both(a: string | undefined, b: string | undefined): string | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  const there = new Set([...a.split("; "), ...b.split("; ")]);
  return [...there].join("; ");
}
