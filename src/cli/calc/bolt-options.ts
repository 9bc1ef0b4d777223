/** What a call says of a bolt. */
import { type Bearing, bearingOf } from "../../engine/workshop/bolts/bearing.ts";
import { type Strength, strengthOf } from "../../engine/workshop/bolts/strength.ts";
import type { Lubrication } from "../../engine/workshop/bolts/tighten.ts";
import type { ThreadSize } from "../../engine/workshop/threads/size.ts";
import { type Call, WrongCall } from "../command.ts";
import { lengthMm, measure, needed, taken } from "./ask.ts";

export const threadOption = {
  type: "string",
  value: "THREAD",
  help: "M6, 1/4-20 UNC, 2 BA, 1/4 in BSF",
} as const;
export const frictionOption = {
  type: "string",
  value: "N",
  help: "coefficient of friction: 0.10 greased, 0.15 oiled, 0.2 or more dry",
} as const;
export const bearingOption = {
  type: "string",
  value: "LENGTH",
  help: "outer diameter of the ring on which the head bears",
} as const;
export const holeOption = {
  type: "string",
  value: "LENGTH",
  help: "diameter of the hole under the head",
} as const;

export function strengthIn(call: Call, option: string, size: ThreadSize): Strength {
  const text = needed(call.text(option), option, "8.8 (or A2-70, brass)");
  return taken(strengthOf(text, size.diameterMm), `--${option}`, text);
}

export function bearingIn(call: Call, size: ThreadSize): Bearing {
  const bearing = bearingOf(size, lengthMm(call, "bearing"), lengthMm(call, "hole"));
  if (bearing.outerMm > bearing.holeMm) return bearing;
  throw new WrongCall(
    `The head (${bearing.outerMm} mm) must be larger than the hole (${bearing.holeMm} mm).`,
  );
}

/** A bare number; its own range is the engine's to judge. */
export function numberIn(call: Call, option: string): number | undefined {
  return measure(call, option, { dimension: "number", least: "-1000000", greatest: "1000000" });
}

export function lubricationIn(call: Call): Lubrication {
  const friction = numberIn(call, "friction");
  const nutFactor = numberIn(call, "nut-factor");
  const head = numberIn(call, "head-friction");
  if ((friction === undefined) === (nutFactor === undefined)) {
    throw new WrongCall(
      "Give either --friction (0.10 greased, 0.15 oiled, 0.2 or more dry) or --nut-factor (0.2 is usual dry): torque depends on nothing more.",
    );
  }
  if (friction !== undefined) return { kind: "friction", thread: friction, head: head ?? friction };
  if (head !== undefined) throw new WrongCall("A nut factor holds the friction of the head already.");
  return { kind: "nut-factor", nutFactor: nutFactor! };
}
