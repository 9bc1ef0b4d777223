import { tightenedIn } from "../../engine/workshop/asked/tightening.ts";
import type { Joint, Tightening } from "../../engine/workshop/bolts/tighten.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { jsonOption } from "../command.ts";
import { asked } from "./ask.ts";
import * as bolt from "./bolt-options.ts";
import { amount, printAnswer, tidy } from "./print.ts";
import type { Sum } from "./sum.ts";

export const torque: Sum = {
  name: "torque",
  summary: "reckons preload and tightening torque, or with --torque the preload that it gives",
  usage:
    '--thread M8x1 --class 8.8 (--friction 0.10 | --nut-factor 0.2) [--share 0.9 | --torque "5 N·m"] [--used]',
  options: {
    thread: bolt.threadOption,
    class: { type: "string", value: "CLASS", help: "as marked: 4.6 to 12.9, A2-70; or brass" },
    friction: bolt.frictionOption,
    "head-friction": { type: "string", value: "N", help: "friction under the head, where it is another" },
    "nut-factor": { type: "string", value: "K", help: "K of T = K·F·d, in place of the friction" },
    share: {
      type: "string",
      value: "N",
      help: "how much of the yield point is used (0.9; 0.6 if used or not 8.8 to 12.9)",
    },
    torque: { type: "string", value: "TORQUE", help: "the way back: what this torque does" },
    used: { type: "boolean", help: "the bolt is not new" },
    bearing: bolt.bearingOption,
    hole: bolt.holeOption,
    json: jsonOption,
  },
  words: 0,
  run(call, _words, output) {
    const { joint, found } = asked(call, torque.options, tightenedIn);
    printAnswer(call, output, linesOf(joint, found), dataOf(joint, found), found);
  },
};

function linesOf({ size, strength }: Joint, found: Tightening): string[] {
  const { preloadN, torqueNm, stressAreaMm2, shareOfYield, shareOfProof } = found;
  const proof = shareOfProof === undefined ? "" : `, ${percent(shareOfProof)} of the proof load`;
  return [
    `${size.designation}, ${strength.name}: torque ${formatNumber(torqueNm, 3)} N·m, preload ${formatNumber(preloadN / 1000, 3)} kN`,
    `  ${percent(shareOfYield)} of the yield point, pull and twist together${proof}`,
    `  stress area ${formatNumber(stressAreaMm2)} mm²`,
  ];
}

function percent(part: number): string {
  return `${formatNumber(part * 100, 3)} %`;
}

function dataOf({ size, strength }: Joint, found: Tightening): Record<string, unknown> {
  return {
    ...{ thread: size.designation, class: strength.name },
    preload: amount(found.preloadN / 1000, "kN"),
    torque: amount(found.torqueNm, "N·m"),
    stressArea: tidy(found.stressAreaMm2),
    shareOfYield: tidy(found.shareOfYield),
    nutFactor: tidy(found.nutFactor),
    shareOfProof: found.shareOfProof === undefined ? null : tidy(found.shareOfProof),
  };
}
