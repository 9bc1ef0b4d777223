import type { Tool } from "../../src/model/sheet.ts";
import type { Html } from "../html.ts";
import { capital, sentence } from "../words.ts";
import { line, lines } from "./lines.ts";

/** What a tool fits, what it is for, how it is looked after. */
export function toolFacts({ drive, uses, care }: Tool): Html | undefined {
  return lines(
    [
      line("Fits", drive === undefined ? undefined : `${capital(drive)} drives`),
      { name: "For", values: uses.map((use) => sentence(capital(use))) },
      line("Care", care === undefined ? undefined : sentence(capital(care))),
    ],
    "facts",
  );
}
