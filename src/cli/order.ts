import { readFileSync } from "node:fs";
import { answerOrder, type OrderAnswer, repeatedSteps } from "../engine/procedure/answer-order.ts";
import { countOrders } from "../engine/procedure/count-orders.ts";
import { type Graph, type GraphOrCycle, graphOf } from "../engine/procedure/graph.ts";
import { graphOfProcedure } from "../engine/procedure/graph-of-procedure.ts";
import {
  BadInput,
  type Call,
  type Command,
  contentOption,
  type ExitCode,
  jsonOption,
  type Output,
  printJson,
  WrongCall,
} from "./command.ts";
import { soundModule } from "./content.ts";
import { readGraphFile, readJson } from "./graph-file.ts";
import { countWords } from "./order-count.ts";

export const order: Command = {
  name: "order",
  summary: "checks an order of steps, or counts the right ones",
  usage: "(--graph FILE | --module ID [--content DIR]) (--given FILE|a,b,c | --count) [--json]",
  options: {
    graph: {
      type: "string",
      value: "FILE",
      help: 'a precedence graph: {"steps": ["a", "b"], "before": [["a", "b"]]}',
    },
    module: { type: "string", value: "ID", help: "a module of the content folder" },
    content: contentOption,
    given: {
      type: "string",
      value: "ORDER",
      help: "a comma list of steps, or a file ending in .json (a list) or .txt (a step a line)",
    },
    count: { type: "boolean", help: "count the right orders instead" },
    json: jsonOption,
  },
  run(call, output) {
    const given = call.text("given");
    if ((given === undefined) === !call.flag("count"))
      throw new WrongCall(`Give either --given or --count.${example(call)}`);
    const graph = graphFor(call);
    return given === undefined ? count(graph, call, output) : answer(graph, readGiven(given), call, output);
  },
};

/** The call as it might have been meant. */
function example(call: Call): string {
  const id = call.text("module");
  const of = id === undefined ? "--graph FILE" : `--module ${id}`;
  const calls = [`${of} --given first-step,second-step,third-step`, `${of} --count`];
  return ` For example:\n${calls.map((words) => `  benchwright order ${words}\n`).join("")}The words after --given are the ids of the steps, in the order to be judged.`;
}

function graphFor(call: Call): Graph {
  const file = call.text("graph");
  const id = call.text("module");
  if ((file === undefined) === (id === undefined)) throw new WrongCall("Give either --graph or --module.");
  const { graph, cycle } = file === undefined ? moduleGraph(id!, call) : graphOf(readGraphFile(file));
  if (graph === null) throw new BadInput(`steps come before themselves: ${[...cycle, cycle[0]].join(" → ")}`);
  return graph;
}

const moduleGraph = (id: string, call: Call): GraphOrCycle =>
  graphOfProcedure(soundModule(call, id).module.procedure);

/** A duplicate in an order is a wrong call. */
function readGiven(given: string): string[] {
  const steps = /\.(json|txt)$/.test(given)
    ? readGivenFile(given)
    : given
        .split(",")
        .map((step) => step.trim())
        .filter((step) => step !== "");
  const repeated = repeatedSteps(steps);
  if (repeated.length > 0)
    throw new WrongCall(`The order names ${repeated.map((step) => `"${step}"`).join(", ")} more than once.`);
  return steps;
}

function readGivenFile(file: string): string[] {
  if (file.endsWith(".txt")) return readLines(file);
  const value = readJson(file);
  if (!Array.isArray(value) || !value.every((step) => typeof step === "string"))
    throw new BadInput(`${file}: must be a list of step ids`);
  return value as string[];
}

function readLines(file: string): string[] {
  try {
    return readFileSync(file, "utf8")
      .split(/\r?\n/)
      .map((line) => line.trim())
      .filter((line) => line !== "");
  } catch (cause) {
    throw new BadInput(`${file}: can't be read (${cause instanceof Error ? cause.message : String(cause)})`);
  }
}

function answer(graph: Graph, given: readonly string[], call: Call, output: Output): ExitCode {
  const { failedCritical, ...rest } = answerOrder(graph, given);
  if (call.flag("json")) printJson(output, { ...rest, failedCritical });
  else output.out(`${answerWords({ ...rest, failedCritical })}\n`);
  return 0;
}

function answerWords(result: OrderAnswer): string {
  if (result.valid) return "This order is right.";
  // The worst is that of orders of all the steps and nothing else.
  const isWhole = result.missing.length + result.extra.length === 0;
  const measure = isWhole
    ? `the worst order takes ${result.worst}`
    : "each step that is left out, and each that is none, counts as one";
  const lines = [
    `This order is not right: ${result.moves === 1 ? "one move mends" : `${result.moves} moves mend`} it (${measure}).`,
    ...result.breaks.map(
      (one) =>
        `  "${one.first}" must come before "${one.then}"${one.because === "" ? "" : `, because ${one.because}`}${one.critical ? " (critical)" : ""}`,
    ),
    ...(result.missing.length > 0 ? [`  left out: ${result.missing.join(", ")}`] : []),
    ...(result.extra.length > 0 ? [`  not a step of this: ${result.extra.join(", ")}`] : []),
    "To mend it:",
    ...(result.extra.length > 0 ? [`  take out ${result.extra.join(", ")}`] : []),
    ...result.fix.map((move) =>
      move.after === null ? `  put "${move.step}" first` : `  put "${move.step}" after "${move.after}"`,
    ),
    `Mended: ${result.fixed.join(", ")}`,
  ];
  return lines.join("\n");
}

function count(graph: Graph, call: Call, output: Output): ExitCode {
  const counted = countOrders(graph);
  const { steps, width, height, orders, chance } = counted;
  if (call.flag("json"))
    printJson(output, { steps, width, height, orders: orders === null ? null : String(orders), chance });
  else output.out(`${countWords(counted)}\n`);
  return 0;
}
