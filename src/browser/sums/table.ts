/** Every sum of the page, one row each; `layouts/interactive/sums/` has a form for each. */
import { air } from "./air.ts";
import type { Sum } from "./answer.ts";
import { convert } from "./convert.ts";
import { identify } from "./identify.ts";
import { strip } from "./strip.ts";
import { thread } from "./thread.ts";
import { torque } from "./torque.ts";
import { vapour } from "./vapour.ts";

export const sums: readonly Sum[] = [convert, thread, identify, torque, strip, vapour, air];
