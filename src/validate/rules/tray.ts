/** Walks the steps as written: what can't be done, and what is left off, slack or in another state at the end. */
import type { Fault, FaultKind } from "../../engine/procedure/fault.ts";
import { walkOfProcedure } from "../../engine/procedure/walk-of-procedure.ts";
import type { Code } from "../../model/codes.ts";
import type { Content } from "../../model/content.ts";
import type { Module } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import type { Reporter } from "../reporter.ts";
import { inFile, inStep, moduleRule } from "./rule.ts";

type Of<Kind extends FaultKind> = Extract<Fault, { kind: Kind }>;

interface FaultWords<F> {
  code(fault: F): Code;
  path(fault: F): YamlPath;
  say(fault: F, name: (id: string) => string): string;
}

const tooManyCodes = {
  slacken: "removes-what-is-off",
  remove: "removes-what-is-off",
  refit: "refits-too-many",
  tighten: "tightens-what-is-not-in",
} as const;

const tooManyWords = { slacken: "tight", remove: "in", refit: "out", tighten: "slack" } as const;

const table: { readonly [Kind in FaultKind]: FaultWords<Of<Kind>> } = {
  "cover-on": {
    code: () => "cover-on",
    path: (f) => [f.act],
    say: (f, name) => `${name(f.cover)} is still on and covers ${name(f.target)}`,
  },
  "cover-off": {
    code: () => "cover-off",
    path: () => ["through"],
    say: (f, name) => `${name(f.cover)} is off, and this step works through it`,
  },
  "still-held": {
    code: () => "still-held",
    path: () => ["remove"],
    say: (f, name) => `${name(f.part)} is still held by ${name(f.set)}: ${f.tight} tight, ${f.slack} slack`,
  },
  "in-the-way": {
    code: () => "in-the-way",
    path: () => ["refit"],
    say: (f, name) =>
      `${name(f.part)} can't go back while ${name(f.set)} are in: ${f.tight} tight, ${f.slack} slack`,
  },
  "part-off": {
    code: () => "removes-what-is-off",
    path: () => ["remove"],
    say: (f, name) => `${name(f.part)} is off already`,
  },
  "part-on": {
    code: () => "refits-what-is-on",
    path: () => ["refit"],
    say: (f, name) => `${name(f.part)} is on already`,
  },
  "place-taken": {
    code: () => "place-taken",
    path: () => ["refit"],
    say: (f, name) => `${name(f.part)} can't go where ${name(f.by)} still is`,
  },
  "too-many": {
    code: (f) => tooManyCodes[f.act],
    path: (f) => [f.act],
    say: (f, name) =>
      `this step would ${f.act} ${f.wanted} of ${name(f.set)}, and ${f.there} are ${tooManyWords[f.act]}`,
  },
  "wrong-state": {
    code: () => "wrong-state",
    path: () => ["while"],
    say: (f, name) =>
      `the ${f.state} is "${f.value}" here, and must be "${f.needed}"${f.part === "" ? "" : ` to move ${name(f.part)}`}`,
  },
  "ends-off": {
    code: () => "ends-off",
    path: (f) => ["parts", f.part],
    say: (f, name) => `${name(f.part)} is off at the end`,
  },
  "ends-on": {
    code: () => "ends-on",
    path: (f) => ["leaves", f.part],
    say: (f, name) => `${name(f.part)} is on at the end`,
  },
  "ends-out": {
    code: () => "ends-off",
    path: (f) => ["fasteners", f.set],
    say: (f, name) => `of ${name(f.set)}, ${f.out} are out and ${f.slack} slack at the end`,
  },
  "ends-state": {
    code: () => "ends-state",
    path: (f) => ["state", f.state],
    say: (f) => `the ${f.state} is "${f.value}" at the end; expected "${f.needed}"`,
  },
};

export const tray = moduleRule("tray", (module, content, reporter) => {
  for (const fault of walkOfProcedure(module.procedure).faults) reportFault(fault, module, content, reporter);
});

function reportFault(fault: Fault, module: Module, content: Content, reporter: Reporter): void {
  const words = table[fault.kind] as FaultWords<Fault>;
  const { parts, fasteners, states, steps } = module.procedure;
  const name = (id: string): string =>
    `"${id}" (${parts.get(id)?.name ?? fasteners.get(id)?.name ?? states.get(id)?.name ?? id})`;
  const step = steps.find(({ id }) => id === fault.step);
  const path = words.path(fault);
  const spot =
    step === undefined ? inFile(content, module, path, "key") : inStep(content, module, step, path, "key");
  reporter.report(words.code(fault), spot, words.say(fault, name));
}
