import { type Graph, graphOf } from "../engine/procedure/graph.ts";
import { graphOfProcedure } from "../engine/procedure/graph-of-procedure.ts";
import { type Plan, planOf } from "../engine/procedure/sessions/plan.ts";
import type { TimedStep } from "../engine/procedure/sessions/timed-step.ts";
import { parseQuantity } from "../engine/workshop/quantity.ts";
import { type Call, type Command, contentOption, jsonOption, printJson, WrongCall } from "./command.ts";
import { soundModule } from "./content.ts";
import { readTimedGraph } from "./graph-times.ts";
import { planWords } from "./plan-words.ts";

/** Length of a session in minutes where neither the call nor a programme says one. */
const defaultSession = 150;

export const plan: Command = {
  name: "plan",
  summary: "reckons the time of a procedure and splits it into sessions",
  usage: '(--graph FILE | --module ID [--content DIR]) [--session "2 h 30 min"] [--json]',
  options: {
    graph: {
      type: "string",
      value: "FILE",
      help: 'a graph with times: {"steps": ["a", "b"], "before": [["a", "b"]], "times": {"a": {"time": "5 min", "wait": "2 h", "stop": true}}}',
    },
    module: { type: "string", value: "ID", help: "a module of the content folder" },
    content: contentOption,
    session: {
      type: "string",
      value: "TIME",
      help: "the length of a session (default: session: of programme.yaml; with --graph 2 h 30 min)",
    },
    json: jsonOption,
  },
  run(call, output) {
    const length = sessionOf(call);
    const work = workOf(call);
    const session = length ?? work.session;
    const made = planOf(work.graph, work.steps, session);
    if (call.flag("json")) printJson(output, planData(made));
    else output.out(planWords(made, work.steps, session));
    return 0;
  },
};

/** What is to be planned. */
interface WorkToPlan {
  readonly graph: Graph;
  readonly steps: readonly (TimedStep & { readonly title?: string })[];
  readonly session: number;
}

function workOf(call: Call): WorkToPlan {
  const file = call.text("graph");
  const id = call.text("module");
  if ((file === undefined) === (id === undefined)) throw new WrongCall("Give either --graph or --module.");
  return file === undefined ? workOfModule(id!, call) : workOfFile(file);
}

function workOfModule(id: string, call: Call): WorkToPlan {
  const { content, module } = soundModule(call, id);
  const graph = graphOfProcedure(module.procedure).graph!;
  return { graph, steps: module.procedure.steps, session: content.programme.session };
}

function workOfFile(file: string): WorkToPlan {
  const { precedence, steps } = readTimedGraph(file);
  return { graph: graphOf(precedence).graph!, steps, session: defaultSession };
}

function sessionOf(call: Call): number | undefined {
  const written = call.text("session");
  if (written === undefined) return undefined;
  const read = parseQuantity(written, "time");
  if (read.ok && read.value.base > 0) return read.value.base / 60;
  throw new WrongCall(
    `--session "${written.slice(0, 60)}" is not a length of time; write it as "2 h 30 min".`,
  );
}

function planData({ handsOn, waits, criticalPath, split }: Plan) {
  const { sessions, tooLong } = split;
  return {
    ...{ handsOn, waits, criticalPath: criticalPath.minutes, sessions },
    ...(tooLong === null ? {} : { tooLong }),
  };
}
