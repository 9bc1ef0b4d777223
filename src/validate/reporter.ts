/** Collects diagnostics and turns places in the YAML into lines and columns. */
import { type Code, codes } from "../model/codes.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import { placeAt } from "../model/place.ts";
import type { Source, Yaml, YamlPath } from "../model/source.ts";

/** Where a fault stands: an offset in a source, or a path in one of its pieces of YAML. */
export interface Spot {
  readonly source: Source;
  readonly yaml?: Yaml;
  readonly path?: YamlPath;
  readonly end?: "key" | "value";
  readonly offset?: number;
}

export interface OtherSpot extends Spot {
  readonly message: string;
}

export class Reporter {
  readonly diagnostics: Diagnostic[] = [];

  /** `found` says what was found and what was expected; what to do is added from the catalogue where `mend` does not say. */
  report(code: Code, spot: Spot, found: string, other?: OtherSpot, mend: string = codes[code].mend): void {
    this.diagnostics.push({
      code,
      severity: codes[code].severity,
      ...place(spot),
      message: `${found}. ${mend}`,
      other: other === undefined ? undefined : { ...place(other), message: other.message },
    });
  }
}

function place(spot: Spot) {
  const offset = spot.offset ?? spot.yaml?.locate(spot.path ?? [], spot.end ?? "value") ?? 0;
  return placeAt(spot.source.path, spot.source.text, offset);
}
