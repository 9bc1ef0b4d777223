/** Forms of the sums on bolts. */
import { materials } from "../../../src/engine/workshop/bolts/materials.ts";
import { strengthNames } from "../../../src/engine/workshop/bolts/strength.ts";
import { formatNumber } from "../../../src/engine/workshop/format-quantity.ts";
import { deferrals } from "../../../src/engine/workshop/grounds.ts";
import type { SumField, SumForm } from "./form.ts";

const thread: SumField = {
  name: "thread",
  label: "Thread",
  example: { metric: "M6, 2 BA", inch: "1/4-20 UNC" },
};

const strength = (label: string): SumField => ({
  name: "class",
  label,
  example: "8.8, A2-70 or brass",
  hint: "as marked on the head; an unmarked screw has none, and no figure holds for it",
  known: [...strengthNames(), "brass"],
});

const ring: readonly SumField[] = [
  {
    name: "bearing",
    label: "Ring on which the head bears",
    example: { metric: "8.9 mm", inch: "3/8 in" },
    hint: "its outer diameter",
    isOptional: true,
  },
  {
    name: "hole",
    label: "Hole under the head",
    example: { metric: "6.6 mm", inch: "17/64 in" },
    isOptional: true,
  },
];

export const torqueForm: SumForm = {
  id: "torque",
  title: "Tightening torque and preload",
  foundBy: [
    "tightening torque",
    "how tight",
    "clamp load",
    "proof load",
    "nut factor",
    "friction",
    "property class 8.8",
  ],
  lead: "The torque for a share of the yield point. With a torque given, the way back: how hard that torque pulls.",
  fields: [
    thread,
    strength("Class of the screw"),
    {
      name: "friction",
      label: "Friction",
      hint: "0.10 greased, 0.15 oiled, 0.2 or more dry",
    },
    {
      name: "torque",
      label: "Torque, for the way back",
      example: { metric: "5 N·m", inch: "44 lbf·in" },
      isOptional: true,
    },
    { name: "used", label: "The screw is not new", isTick: true },
  ],
  more: {
    title: "Share of the yield point, nut factor, head",
    fields: [
      {
        name: "share",
        label: "Share of the yield point",
        hint: "0.9 is usual for new ones of 8.8 to 12.9, and 0.6 for all others",
        isOptional: true,
      },
      {
        name: "nut-factor",
        label: "Nut factor",
        example: "0.2",
        hint: "in place of the friction",
        isOptional: true,
      },
      {
        name: "head-friction",
        label: "Friction under the head",
        example: "0.12",
        hint: "where it is another than in the thread",
        isOptional: true,
      },
      ...ring,
    ],
  },
  deferral: deferrals.bolt,
};

export const stripForm: SumForm = {
  id: "strip",
  title: "Does the screw break or the thread strip?",
  foundBy: [
    "stripping",
    "stripped thread",
    "thread engagement",
    "shear strength",
    "tapped hole in brass, zinc or aluminium",
    "pull-out load",
  ],
  lead: "What gives first, at which pull and torque, and how much thread it takes for the screw to break before the hole is spoilt.",
  fields: [
    thread,
    {
      name: "engagement",
      label: "Length of thread engaged",
      example: { metric: "8 mm", inch: "5/16 in" },
      hint: "over which full threads are together",
    },
    {
      name: "material",
      label: "The hole is in",
      choices: materials().map(({ id, name, shearMPa }) => ({
        value: id,
        name: `${name}: ${formatNumber(shearMPa)} MPa`,
      })),
      hint: "shear strength; of a range the lower end",
    },
    strength("Class of the screw"),
  ],
  more: {
    title: "A material of your own, friction, head",
    fields: [
      {
        name: "shear",
        label: "Shear strength of the material",
        example: { metric: "195 MPa", inch: "28000 psi" },
        hint: "from its data sheet, in place of a material",
        isOptional: true,
      },
      {
        name: "friction",
        label: "Friction",
        hint: "0.1 where nothing is written: less friction strips at a smaller torque",
        isOptional: true,
      },
      ...ring,
    ],
  },
  deferral: deferrals.bolt,
};
