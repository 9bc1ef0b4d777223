import { parseDesignation } from "../../engine/workshop/designation.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import { type Call, jsonOption, WrongCall } from "../command.ts";
import { lengthMm, measure, needed, taken, within } from "./ask.ts";
import type { Sum } from "./sum.ts";
import { printDimensions } from "./thread-dimensions.ts";
import { printIdentification } from "./thread-identify.ts";

const mmPerInch = 25.4;

export const thread: Sum = {
  name: "thread",
  summary: "gives the dimensions of a thread, or tells which thread a measured screw can have",
  usage: '"M6x1" | --diameter "5.95 mm" (--pitch "1 mm" | --tpi 20) [--angle 55]',
  options: {
    diameter: { type: "string", value: "LENGTH", help: "outside diameter of the screw, measured" },
    pitch: { type: "string", value: "LENGTH", help: "pitch, measured over several threads" },
    tpi: { type: "string", value: "N", help: "threads per inch, in place of the pitch" },
    angle: { type: "string", value: "DEGREES", help: "angle of the flanks, where somebody has measured it" },
    json: jsonOption,
  },
  words: 1,
  run(call, [designation], output) {
    const measured = ["diameter", "pitch", "tpi", "angle"].filter((name) => call.text(name) !== undefined);
    if ((designation === undefined) === (measured.length === 0)) {
      throw new WrongCall(
        'Give a thread ("M6x1") or what you measured (--diameter "5.95 mm" --pitch "1 mm").',
      );
    }
    if (designation !== undefined) {
      return printDimensions(call, output, taken(parseDesignation(designation), "The thread", designation));
    }
    const diameterMm = needed(lengthMm(call, "diameter"), "diameter", '"5.95 mm"');
    printIdentification(call, output, { diameterMm, pitchMm: pitchOf(call), angle: angleOf(call) });
  },
};

function pitchOf(call: Call): number {
  const pitch = lengthMm(call, "pitch");
  const tpi = measure(call, "tpi", { dimension: "number", least: "1", greatest: "400" });
  if ((pitch === undefined) === (tpi === undefined)) {
    throw new WrongCall('Give either --pitch "1 mm" or --tpi 20.');
  }
  return pitch ?? mmPerInch / tpi!;
}

/** 55 and "55°" are the same. */
function angleOf(call: Call): number | undefined {
  const text = call.text("angle");
  if (text === undefined) return undefined;
  const marked = /^\s*[\d.,]+\s*$/.test(text) ? `${text}°` : text;
  const range = { least: "20°", greatest: "120°", dimension: "angle" } as const;
  return within(text, "--angle", taken(parseQuantity(marked, "angle"), "--angle", text), range);
}
