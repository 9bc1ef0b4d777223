/** Sums of the bench: a table of them, each in a file of `calc/`. */
import { commandOf } from "./actions.ts";
import { air } from "./calc/air.ts";
import { convert } from "./calc/convert.ts";
import { strip } from "./calc/strip.ts";
import type { Sum } from "./calc/sum.ts";
import { thread } from "./calc/thread.ts";
import { torque } from "./calc/torque.ts";
import { vapour } from "./calc/vapour.ts";

const sums: readonly Sum[] = [convert, thread, torque, strip, vapour, air];

export const calc = commandOf(
  "calc",
  "sums of the bench: units, threads, torque, stripping, solvent vapour, fresh air",
  sums.map((sum) => ({
    ...sum,
    run(call, words, output) {
      sum.run(call, words, output);
      return 0;
    },
  })),
);
