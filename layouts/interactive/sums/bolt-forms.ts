/** Forms of the sums on bolts. */
import { t } from "../../../src/engine/words.ts";
import { materials } from "../../../src/engine/workshop/bolts/materials.ts";
import { strengthNames } from "../../../src/engine/workshop/bolts/strength.ts";
import { formatNumber } from "../../../src/engine/workshop/format-quantity.ts";
import { deferrals } from "../../../src/engine/workshop/grounds.ts";
import type { SumField, SumForm } from "./form.ts";

const thread: SumField = {
  name: "thread",
  label: t`Thread`,
  example: { metric: t`M6, 2 BA`, inch: "1/4-20 UNC" },
};

const strength = (label: string): SumField => ({
  name: "class",
  label,
  example: t`8.8, A2-70 or brass`,
  hint: t`as marked on the head; an unmarked screw has none, and no figure holds for it`,
  known: [...strengthNames(), "brass"],
});

const ring: readonly SumField[] = [
  {
    name: "bearing",
    label: t`Ring on which the head bears`,
    example: { metric: "8.9 mm", inch: "3/8 in" },
    hint: t`its outer diameter`,
    isOptional: true,
  },
  {
    name: "hole",
    label: t`Hole under the head`,
    example: { metric: "6.6 mm", inch: "17/64 in" },
    isOptional: true,
  },
];

export const torqueForm: SumForm = {
  id: "torque",
  title: t`Tightening torque and preload`,
  foundBy: [
    t`tightening torque`,
    t`how tight`,
    t`clamp load`,
    t`proof load`,
    t`nut factor`,
    "friction",
    t`property class 8.8`,
  ],
  lead: t`The torque for a share of the yield point. With a torque given, the way back: how hard that torque pulls.`,
  fields: [
    thread,
    strength(t`Class of the screw`),
    {
      name: "friction",
      label: t`Friction`,
      hint: t`0.10 greased, 0.15 oiled, 0.2 or more dry`,
    },
    {
      name: "torque",
      label: t`Torque, for the way back`,
      example: { metric: "5 N·m", inch: "44 lbf·in" },
      isOptional: true,
    },
    { name: "used", label: t`The screw is not new`, isTick: true },
  ],
  more: {
    title: t`Share of the yield point, nut factor, head`,
    fields: [
      {
        name: "share",
        label: t`Share of the yield point`,
        hint: t`0.9 is usual for new ones of 8.8 to 12.9, and 0.6 for all others`,
        isOptional: true,
      },
      {
        name: "nut-factor",
        label: t`Nut factor`,
        example: "0.2",
        hint: t`in place of the friction`,
        isOptional: true,
      },
      {
        name: "head-friction",
        label: t`Friction under the head`,
        example: "0.12",
        hint: t`where it is another than in the thread`,
        isOptional: true,
      },
      ...ring,
    ],
  },
  deferral: deferrals.bolt,
};

export const stripForm: SumForm = {
  id: "strip",
  title: t`Does the screw break or the thread strip?`,
  foundBy: [
    t`stripping`,
    t`stripped thread`,
    t`thread engagement`,
    t`shear strength`,
    t`tapped hole in brass, zinc or aluminium`,
    t`pull-out load`,
  ],
  lead: t`What gives first, at which pull and torque, and how much thread it takes for the screw to break before the hole is spoilt.`,
  fields: [
    thread,
    {
      name: "engagement",
      label: t`Length of thread engaged`,
      example: { metric: "8 mm", inch: "5/16 in" },
      hint: t`over which full threads are together`,
    },
    {
      name: "material",
      label: t`The hole is in`,
      choices: materials().map(({ id, name, shearMPa }) => ({
        value: id,
        name: t`${name}: ${formatNumber(shearMPa)} MPa`,
      })),
      hint: t`shear strength; of a range the lower end`,
    },
    strength(t`Class of the screw`),
  ],
  more: {
    title: t`A material of your own, friction, head`,
    fields: [
      {
        name: "shear",
        label: t`Shear strength of the material`,
        example: { metric: "195 MPa", inch: "28000 psi" },
        hint: t`from its data sheet, in place of a material`,
        isOptional: true,
      },
      {
        name: "friction",
        label: t`Friction`,
        hint: t`0.1 where nothing is written: less friction strips at a smaller torque`,
        isOptional: true,
      },
      ...ring,
    ],
  },
  deferral: deferrals.bolt,
};
