/** What `check --counts` says of each module: how much is free in the order of its steps. */
import { factorial } from "../engine/procedure/big-numbers.ts";
import { countOrders } from "../engine/procedure/count-orders.ts";
import type { Graph } from "../engine/procedure/graph.ts";
import { graphOfProcedure } from "../engine/procedure/graph-of-procedure.ts";
import type { Content } from "../model/content.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { grouped, oddsWords } from "./order-count.ts";

const head = ["module", "steps", "width", "height", "right orders", "chance"];

/** A line for each module without errors, by id, under a line that names the figures. */
export function countsText(content: Content, diagnostics: readonly Diagnostic[]): string {
  const faulty = new Set(diagnostics.flatMap(({ file, severity }) => (severity === "error" ? [file] : [])));
  const rows = [...content.modules.values()]
    .filter(({ path }) => !faulty.has(path))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap(({ id, procedure }) => {
      const { graph } = graphOfProcedure(procedure);
      return graph === null ? [] : [[id, ...figuresOf(graph)]];
    });
  const table = [head, ...rows];
  const widths = head.map((_, column) => Math.max(...table.map((row) => row[column]!.length)));
  const line = (row: readonly string[]): string =>
    row
      .map((figure, column) => (column === 0 ? figure.padEnd(widths[0]!) : figure.padStart(widths[column]!)))
      .join("  ");
  return table.map(line).join("\n");
}

function figuresOf(graph: Graph): string[] {
  const { steps, width, height, orders } = countOrders(graph);
  const figures = [steps, width, height].map(String);
  if (orders === null) return [...figures, "too many to count", ""];
  return [...figures, grouped(orders), oddsWords(orders, factorial(steps))];
}
