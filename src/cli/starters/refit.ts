/** The reassembly of what a module takes apart, as a draft: what its author has to write is marked. */
import { stringify } from "yaml";
import { type RefitStep, reassembly, type Some } from "../../engine/procedure/reassembly.ts";
import { walkOfProcedure } from "../../engine/procedure/walk-of-procedure.ts";
import type { Content } from "../../model/content.ts";
import { modulePath } from "../../model/link.ts";
import type { Module, ModuleStep } from "../../model/module.ts";
import { prompts } from "../../model/unwritten.ts";
import { BadInput } from "../command.ts";
import { checkContent } from "../content.ts";
import { noSuchModule } from "../no-such-module.ts";
import { frontMatter } from "./refit-front-matter.ts";
import { marksOf, stateMarks } from "./refit-marks.ts";
import type { StarterFiles } from "./starter.ts";

/** Throws a WrongCall where there is no such module, a BadInput where it can't be understood, walked, or leaves nothing. */
export function refitFiles(id: string, from: string, content: string): StarterFiles {
  const whole = checkContent(content).content;
  const module = whole.modules.get(from);
  if (module === undefined) {
    if (!whole.sources.has(modulePath(from))) throw noSuchModule(from, whole.modules.keys());
    throw new BadInput(`The module "${from}" has faults that come first. See: benchwright check`);
  }
  return new Map([[modulePath(id), refitText(id, module, whole)]]);
}

function refitText(id: string, module: Module, content: Content): string {
  const { faults, trays } = walkOfProcedure(module.procedure);
  if (faults.some(({ step }) => step !== undefined))
    throw new BadInput(`The steps of "${module.id}" can't be done as written. See: benchwright check`);
  const steps = reassembly(module.procedure, trays);
  if (steps.length === 0)
    throw new BadInput(`"${module.id}" leaves nothing off and nothing slack: there is nothing to refit.`);
  const front = frontMatter(id, module, steps, content, trays.at(-1)!);
  const ids = new Set<string>();
  const blocks = steps.map((step) => stepText(step, module, ids));
  return `---\n${yaml(front)}---\n\n${prompts.about}\n\n${blocks.join("\n")}`;
}

/** Nothing that is written has an anchor: content may not have any. */
const yaml = (value: unknown): string => stringify(value, { aliasDuplicateObjects: false, lineWidth: 110 });

function stepText(refit: RefitStep, module: Module, ids: Set<string>): string {
  const undone = module.procedure.steps.find(({ id }) => id === refit.undoes)!;
  const fields =
    refit.makes.size > 0 ? stateFields(refit, module, undone) : refitFields(refit, module, undone);
  const block = yaml({ id: freeId(refit, ids), ...fields });
  return `## ${titleOf(refit, module)}\n\n\`\`\`yaml step\n${block}\`\`\`\n\nHow it is done.\n`;
}

const stateFields = ({ makes }: RefitStep, module: Module, undone: ModuleStep) => ({
  makes: Object.fromEntries(makes),
  draft: stateMarks(makes, module, undone),
});

function refitFields(refit: RefitStep, module: Module, undone: ModuleStep) {
  const { through, tools, hazards, conditions, wear, neverWear } = undone;
  return {
    ...some("refit", refit.refit.map(written)),
    ...some("tighten", refit.tighten.map(written)),
    ...some("through", through),
    ...(undone.while.size === 0 ? {} : { while: Object.fromEntries(undone.while) }),
    ...some("tools", tools),
    ...some("hazards", hazards),
    ...some("conditions", conditions),
    ...some("wear", wear),
    ...some("never-wear", neverWear),
    draft: marksOf(refit, module, undone),
  };
}

const some = <Item>(field: string, list: readonly Item[]): Record<string, readonly Item[]> =>
  list.length === 0 ? {} : { [field]: list };

const written = ({ target, count }: Some) => (count === undefined ? target : { [target]: count });

/** After the first thing that it handles; a number keeps it the only one. */
function freeId({ refit, tighten, makes }: RefitStep, ids: Set<string>): string {
  const [first] = [...refit, ...tighten].map(({ target }) => target);
  const base = first === undefined ? `make-${[...makes.keys()][0]}` : `refit-${first}`;
  let id = base;
  for (let number = 2; ids.has(id); number++) id = `${base}-${number}`;
  ids.add(id);
  return id;
}

function titleOf({ refit, tighten, makes }: RefitStep, { procedure }: Module): string {
  const { parts, fasteners, states } = procedure;
  if (makes.size > 0)
    return [...makes]
      .map(([state, value]) => `Bring the ${states.get(state)?.name ?? state} to “${value}”`)
      .join(", ");
  const named = refit.filter(({ target }) => parts.has(target));
  const [verb, things] =
    named.length > 0 ? ["Refit", named] : refit.length > 0 ? ["Put in", refit] : ["Tighten", tighten];
  const names = things.map(
    ({ target }) => `the ${parts.get(target)?.name ?? fasteners.get(target)?.name ?? target}`,
  );
  return `${verb} ${listed(names)}`;
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
