/** Walks the steps as written: what can't be done, and what is left off, slack or in another state at the end. */
import type { Fault, FaultKind } from "../../engine/procedure/fault.ts";
import { walkOfProcedure } from "../../engine/procedure/walk-of-procedure.ts";
import type { Code } from "../../model/codes.ts";
import type { Content } from "../../model/content.ts";
import type { Module } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import type { Reporter } from "../reporter.ts";
import { are } from "../words.ts";
import { type Called, calledIn } from "./called.ts";
import { type EndFault, endWords, isEndFault } from "./end-faults.ts";
import { firstFaults } from "./first-faults.ts";
import { misnamedIn } from "./misnamed.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";
import { mendWithin } from "./same-step.ts";

type StepFault = Exclude<Fault, EndFault>;
type Of<Kind extends FaultKind> = Extract<StepFault, { kind: Kind }>;

interface FaultWords<F> {
  code(fault: F): Code;
  path(fault: F): YamlPath;
  say(fault: F, called: Called): string;
}

const tooManyCodes = {
  slacken: "removes-what-is-off",
  remove: "removes-what-is-off",
  refit: "refits-too-many",
  tighten: "tightens-what-is-not-in",
} as const;

const tooManyWords = { slacken: "tight", remove: "in", refit: "out", tighten: "slack" } as const;

/** "2 tight, 1 slack". */
const held = ({ tight, slack }: { readonly tight: number; readonly slack: number }): string =>
  [...(tight > 0 ? [`${tight} tight`] : []), ...(slack > 0 ? [`${slack} slack`] : [])].join(", ");

const table: { readonly [Kind in StepFault["kind"]]: FaultWords<Of<Kind>> } = {
  "cover-on": {
    code: () => "cover-on",
    path: (f) => [f.act],
    say: (f, { name, is, agree }) =>
      `${name(f.cover)} ${is(f.cover)} still on and ${agree(f.cover, "covers", "cover")} ${name(f.target)}`,
  },
  "cover-off": {
    code: () => "cover-off",
    path: () => ["through"],
    say: (f, { name, is, agree }) =>
      `${name(f.cover)} ${is(f.cover)} off, and this step works through ${agree(f.cover, "it", "them")}`,
  },
  "still-held": {
    code: () => "still-held",
    path: () => ["remove"],
    say: (f, { name, is }) => `${name(f.part)} ${is(f.part)} still held by ${name(f.set)}: ${held(f)}`,
  },
  "in-the-way": {
    code: () => "in-the-way",
    path: () => ["refit"],
    say: (f, { name, is }) =>
      `${name(f.part)} can't go back while ${name(f.set)} ${is(f.set)} in: ${held(f)}`,
  },
  "part-off": {
    code: () => "removes-what-is-off",
    path: () => ["remove"],
    say: (f, { name, is }) => `${name(f.part)} ${is(f.part)} off already`,
  },
  "part-on": {
    code: () => "refits-what-is-on",
    path: () => ["refit"],
    say: (f, { name, is }) => `${name(f.part)} ${is(f.part)} on already`,
  },
  "place-taken": {
    code: () => "place-taken",
    path: () => ["refit"],
    say: (f, { name, is }) => `${name(f.part)} can't go where ${name(f.by)} still ${is(f.by)}`,
  },
  "too-many": {
    code: (f) => tooManyCodes[f.act],
    path: (f) => [f.act],
    say: (f, { name }) =>
      `this step would ${f.act} ${f.wanted} of ${name(f.set)}, and ${are(f.there)} ${tooManyWords[f.act]}`,
  },
  "wrong-state": {
    code: () => "wrong-state",
    path: () => ["while"],
    say: (f, { name }) =>
      `the ${f.state} must be "${f.needed}" here, not "${f.value}"${f.part === "" ? "" : ` to move ${name(f.part)}`}`,
  },
};

export const tray = moduleRule("tray", (module, content, reporter) => {
  const { procedure } = module;
  for (const fault of firstFaults(procedure, walkOfProcedure(procedure), misnamedIn(module))) {
    if (isEndFault(fault)) reportEnd(fault, module, content, reporter);
    else if (!isMiscounted(fault, module)) reportStep(fault, module, content, reporter);
  }
});

/** More than there are of the set: the rule of acts says so. */
const isMiscounted = (fault: StepFault, { procedure: { fasteners } }: Module): boolean =>
  fault.kind === "too-many" && fault.wanted > (fasteners.get(fault.set)?.count ?? 0);

function reportStep(fault: StepFault, module: Module, content: Content, reporter: Reporter): void {
  const words = table[fault.kind] as FaultWords<StepFault>;
  const step = module.procedure.steps.find(({ id }) => id === fault.step)!;
  const spot = inStep(content, module, step, words.path(fault), "key");
  reporter.report(
    words.code(fault),
    spot,
    words.say(fault, calledIn(module)),
    undefined,
    mendWithin(step, fault),
  );
}

function reportEnd(fault: EndFault, module: Module, content: Content, reporter: Reporter): void {
  const { code, declared, last, found, mend } = endWords(fault, module, calledIn(module));
  const place = inFile(content, module, declared, "key");
  if (last === undefined) reporter.report(code, place, found, undefined, mend);
  else {
    const other = {
      ...place,
      message: declared[0] === "leaves" ? "leaves: says so here" : "it is listed here",
    };
    reporter.report(code, inStep(content, module, last.step, last.path, "key"), found, other, mend);
  }
}
