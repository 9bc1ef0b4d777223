/** Diagnostics for programs: what `check --json` prints. */
import type { Diagnostic } from "../model/diagnostic.ts";
import { countSeverities } from "./text.ts";

export function reportJson(diagnostics: readonly Diagnostic[]) {
  return {
    ...countSeverities(diagnostics),
    diagnostics: diagnostics.map(({ code, severity, file, line, column, message, other }) => ({
      ...{ code, severity, file, line, column, message },
      ...(other === undefined ? {} : { other }),
    })),
  };
}
