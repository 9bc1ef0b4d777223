/** Options of the sums on bolts. */

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
