import { measuredIn, threadIn } from "../../engine/workshop/asked/thread.ts";
import { jsonOption, WrongCall } from "../command.ts";
import { asked } from "./ask.ts";
import type { Sum } from "./sum.ts";
import { printDimensions } from "./thread-dimensions.ts";
import { printIdentification } from "./thread-identify.ts";

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
    if (designation === undefined) {
      return printIdentification(call, output, asked(call, thread.options, measuredIn));
    }
    const named = { thread: { text: designation, name: "The thread" } };
    printDimensions(call, output, asked(call, {}, threadIn, named));
  },
};
