import { type Material, materialNamed, materials } from "../../engine/workshop/bolts/materials.ts";
import { type Stripping, stripping } from "../../engine/workshop/bolts/strip.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedDown, roundedUp } from "../../engine/workshop/grounds.ts";
import { type Call, jsonOption, WrongCall } from "../command.ts";
import { lengthMm, measure, needed, reckoned, taken, threadOf } from "./ask.ts";
import * as bolt from "./bolt-options.ts";
import { amount, printAnswer } from "./print.ts";
import type { Sum } from "./sum.ts";

/** Slippery on purpose: less friction strips at a smaller torque. */
const carefulFriction = 0.1;

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
    const size = threadOf(call);
    const ask = {
      size,
      engagementMm: needed(lengthMm(call, "engagement"), "engagement", '"8 mm"'),
      material: materialOf(call),
      screw: bolt.strengthIn(call, "screw", size),
      friction: bolt.numberIn(call, "friction") ?? carefulFriction,
      bearing: bolt.bearingIn(call, size),
    };
    const found = reckoned(stripping(ask));
    const title = `${size.designation}, ${ask.screw.name}, ${formatNumber(ask.engagementMm)} mm in ${ask.material.name}`;
    printAnswer(call, output, linesOf(title, found), dataOf(found), found);
  },
};

function materialOf(call: Call): Material {
  const name = call.text("material");
  const shear = measure(call, "shear", { dimension: "pressure", least: "1 MPa", greatest: "2 GPa" });
  if ((name === undefined) === (shear === undefined)) {
    throw new WrongCall('Give either --material (aluminium-a380, brass, …) or --shear "195 MPa".');
  }
  if (name !== undefined) return taken(materialNamed(name), "--material", name);
  const own = { id: "own", name: "a material of your own", source: "as given in the call" };
  return { ...own, shearMPa: shear! / 1e6, standing: "published" };
}

/** Loads are rounded down, lengths up. */
function linesOf(title: string, { loads, weaker, whenTightened, engagementNeededMm }: Stripping): string[] {
  return [
    `${title}: under a straight pull the ${weakWords[weaker]} first.`,
    ...Object.entries(loads).map(
      ([part, load]) => `  ${part.padEnd(16)}  at ${formatNumber(roundedDown(load / 1000, 3))} kN`,
    ),
    `While it is tightened the ${weakWords[whenTightened.weaker]} first, at ${formatNumber(roundedDown(whenTightened.torqueNm, 3))} N·m.`,
    `For the screw to break first it needs ${formatNumber(roundedUp(engagementNeededMm, 3))} mm of engagement.`,
  ];
}

const weakWords = {
  "screw breaks": "screw breaks",
  "internal strips": "thread in the hole strips",
  "external strips": "thread of the screw strips",
} as const;

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
