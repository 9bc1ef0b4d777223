/** What can be wrong with an order of steps, found by walking it. */

import type { FastenerAct } from "./fastener-acts.ts";
import type { ActKind } from "./procedure.ts";

interface At {
  /** The step that can't be done; undefined for what is wrong at the end. */
  readonly step: string | undefined;
}

export type Fault = At &
  (
    | { readonly kind: "cover-on"; readonly cover: string; readonly act: ActKind; readonly target: string }
    | { readonly kind: "cover-off"; readonly cover: string }
    | {
        readonly kind: "still-held";
        readonly part: string;
        readonly set: string;
        readonly tight: number;
        readonly slack: number;
      }
    | {
        readonly kind: "in-the-way";
        readonly part: string;
        readonly set: string;
        readonly tight: number;
        readonly slack: number;
      }
    | { readonly kind: "part-off"; readonly part: string }
    | { readonly kind: "part-on"; readonly part: string }
    | { readonly kind: "place-taken"; readonly part: string; readonly by: string }
    | {
        readonly kind: "too-many";
        readonly act: FastenerAct;
        readonly set: string;
        readonly wanted: number;
        readonly there: number;
      }
    | {
        readonly kind: "wrong-state";
        readonly state: string;
        readonly value: string;
        readonly needed: string;
        readonly part: string;
      }
    | { readonly kind: "ends-off"; readonly part: string }
    | { readonly kind: "ends-on"; readonly part: string }
    | { readonly kind: "ends-out"; readonly set: string; readonly out: number; readonly slack: number }
    | { readonly kind: "ends-state"; readonly state: string; readonly value: string; readonly needed: string }
  );

export type FaultKind = Fault["kind"];
