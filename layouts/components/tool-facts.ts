import { valueWords } from "../../src/engine/value-words.ts";
import { t } from "../../src/engine/words.ts";
import type { Tool } from "../../src/model/sheet.ts";
import type { Html } from "../html.ts";
import { capital, sentence } from "../words.ts";
import { line, lines } from "./lines.ts";

/** What a tool fits, what it is for, how it is looked after. */
export function toolFacts({ drives, uses, care }: Tool): Html | undefined {
  return lines(
    [
      { name: t`Fits`, values: drives.map((drive) => t`${capital(valueWords(drive))} drives`) },
      { name: t`For`, values: uses.map((use) => sentence(capital(use))) },
      line(t`Care`, care === undefined ? undefined : sentence(capital(care))),
    ],
    "facts",
  );
}
