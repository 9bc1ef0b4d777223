import { strippedIn } from "../../engine/workshop/asked/stripping.ts";
import { materials } from "../../engine/workshop/bolts/materials.ts";
import type { Stripping } from "../../engine/workshop/bolts/strip.ts";
import { weakWords } from "../../engine/workshop/bolts/strip-words.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedDown, roundedUp } from "../../engine/workshop/grounds.ts";
import { jsonOption } from "../command.ts";
import { asked } from "./ask.ts";
import * as bolt from "./bolt-options.ts";
import { amount, printAnswer } from "./print.ts";
import type { Sum } from "./sum.ts";

export const strip: Sum = {
  name: "strip",
  summary: "tells whether the screw breaks or a thread strips first, at which load and torque",
  usage: '--thread M6 --engagement "8 mm" --material aluminium-a380 --screw 8.8 [--friction 0.1]',
  options: {
    thread: bolt.threadOption,
    engagement: { type: "string", value: "LENGTH", help: "length over which full threads are together" },
    material: {
      type: "string",
      value: "NAME",
      help: `what the hole is in: ${materials()
        .map(({ id }) => id)
        .join(", ")}`,
    },
    shear: {
      type: "string",
      value: "STRESS",
      help: "its shear strength from its data sheet, in place of --material",
    },
    screw: { type: "string", value: "CLASS", help: "class of the screw: 4.6 to 12.9, A2-70, brass" },
    friction: bolt.frictionOption,
    bearing: bolt.bearingOption,
    hole: bolt.holeOption,
    json: jsonOption,
  },
  words: 0,
  run(call, _words, output) {
    const { ask, found } = asked(call, strip.options, strippedIn, {
      class: { text: call.text("screw"), name: "--screw" },
    });
    const { size, screw, engagementMm, material } = ask;
    const title = `${size.designation}, ${screw.name}, ${formatNumber(engagementMm)} mm in ${material.name}`;
    printAnswer(call, output, linesOf(title, found), dataOf(found), found);
  },
};

/** Loads are rounded down, lengths up. */
function linesOf(title: string, { loads, weaker, whenTightened, engagementNeededMm }: Stripping): string[] {
  return [
    `${title}: under a straight pull ${weakWords[weaker]} first.`,
    ...Object.entries(loads).map(
      ([part, load]) => `  ${part.padEnd(16)}  at ${formatNumber(roundedDown(load / 1000, 3))} kN`,
    ),
    `While it is tightened ${weakWords[whenTightened.weaker]} first, at ${formatNumber(roundedDown(whenTightened.torqueNm, 3))} N·m.`,
    `For the screw to break first it needs ${formatNumber(roundedUp(engagementNeededMm, 3))} mm of engagement.`,
  ];
}

function dataOf({
  areas,
  loads,
  weaker,
  whenTightened,
  engagementNeededMm,
}: Stripping): Record<string, unknown> {
  const load = (part: keyof typeof loads) => amount(roundedDown(loads[part] / 1000, 4), "kN");
  return {
    weaker,
    loads: {
      screw: load("screw breaks"),
      internal: load("internal strips"),
      external: load("external strips"),
    },
    shearAreas: { internal: amount(areas.internal, "mm²"), external: amount(areas.external, "mm²") },
    torque: amount(roundedDown(whenTightened.torqueNm, 4), "N·m"),
    whenTightened: {
      weaker: whenTightened.weaker,
      load: amount(roundedDown(whenTightened.loadN / 1000, 4), "kN"),
    },
    engagementNeeded: amount(roundedUp(engagementNeededMm, 4), "mm"),
  };
}
