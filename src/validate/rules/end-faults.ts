/** What is not as it should be at the end: at the step that touched it last, with only what is needed to mend it. */
import type { Fault } from "../../engine/procedure/fault.ts";
import type { ActKind } from "../../engine/procedure/procedure.ts";
import type { Code } from "../../model/codes.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import type { YamlPath } from "../../model/source.ts";
import { are } from "../words.ts";
import type { Called } from "./called.ts";

export type EndFault = Extract<Fault, { kind: "ends-off" | "ends-on" | "ends-out" | "ends-state" }>;

interface EndWords {
  readonly code: Code;
  /** Where the thing is declared, in the front matter. */
  readonly declared: YamlPath;
  /** The step after which it stayed as it is, and its field; undefined where no step touches it. */
  readonly last: { readonly step: ModuleStep; readonly path: YamlPath } | undefined;
  readonly found: string;
  readonly mend: string;
}

export const isEndFault = (fault: Fault): fault is EndFault => fault.step === undefined;

export function endWords(fault: EndFault, module: Module, called: Called): EndWords {
  switch (fault.kind) {
    case "ends-off":
      return {
        code: "ends-off",
        declared: ["parts", fault.part],
        last: lastAct(module, fault.part),
        found: `${called.name(fault.part)} ${called.is(fault.part)} off at the end`,
        mend: called.agree(
          fault.part,
          "Refit it, or list it under leaves:.",
          "Refit them, or list them under leaves:.",
        ),
      };
    case "ends-on":
      return endsOn(fault.part, module, called);
    case "ends-out":
      return endsOut(fault, module, called);
    case "ends-state":
      return {
        code: "ends-state",
        declared: ["state", fault.state],
        last: lastMaking(module, fault.state),
        found: `the ${fault.state} must be "${fault.needed}" at the end, not "${fault.value}"`,
        mend: `Bring it to "${fault.needed}" with makes:, or mend ends: of the state.`,
      };
  }
}

function endsOn(part: string, module: Module, { name, is, agree }: Called): EndWords {
  const last = lastAct(module, part);
  const it = agree(part, "it", "them");
  return {
    code: "ends-on",
    declared: ["leaves", part],
    last,
    found: `${name(part)} ${is(part)} on at the end, and must stay off by what leaves: says`,
    mend: `${last === undefined ? `Take ${it} off in a step` : `Do not refit ${it}`}, or take ${it} out of leaves:.`,
  };
}

function endsOut(
  { set, out, slack }: Extract<EndFault, { kind: "ends-out" }>,
  module: Module,
  { name }: Called,
): EndWords {
  const left = module.procedure.leaves.get(set);
  const base = { code: "ends-off", declared: ["fasteners", set], last: lastAct(module, set) } as const;
  const state = [...(out > 0 ? [`${are(out)} out`] : []), ...(slack > 0 ? [`${are(slack)} slack`] : [])].join(
    " and ",
  );
  if (left !== undefined)
    return {
      ...base,
      found: `of ${name(set)}, ${state || "none is out or slack"} at the end, and leaves: says ${left.out} out and ${left.slack} slack`,
      mend: "Mend the acts, or leaves:.",
    };
  const them = out + slack === 1 ? "it" : "them";
  return {
    ...base,
    found: `of ${name(set)}, ${state} at the end`,
    mend: `${out > 0 ? "Refit and tighten" : "Tighten"} ${them}, or list ${name(set)} under leaves:.`,
  };
}

const moves: ReadonlySet<ActKind> = new Set<ActKind>(["slacken", "remove", "refit", "tighten"]);

function lastAct({ procedure: { steps } }: Module, id: string): EndWords["last"] {
  const step = steps.findLast(({ acts }) =>
    acts.some(({ kind, target }) => target === id && moves.has(kind)),
  );
  const act = step?.acts.findLast(({ kind, target }) => target === id && moves.has(kind));
  return step && act && { step, path: [act.kind] };
}

function lastMaking({ procedure: { steps } }: Module, state: string): EndWords["last"] {
  const step = steps.findLast(({ makes }) => makes.has(state));
  return step && { step, path: ["makes", state] };
}
