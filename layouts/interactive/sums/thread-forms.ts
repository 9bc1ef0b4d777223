/** Forms of the sums on units and threads. */
import { t } from "../../../src/engine/words.ts";
import { deferrals } from "../../../src/engine/workshop/grounds.ts";
import type { SumForm } from "./form.ts";

export const convertForm: SumForm = {
  id: "convert",
  title: t`Units`,
  foundBy: [
    t`convert units`,
    t`conversion factors`,
    t`inches to millimetres`,
    t`torque in lbf·in, lbf·ft and N·m`,
    "thou",
    "ounces",
    t`degrees Fahrenheit and Celsius`,
  ],
  lead: t`A quantity in another unit. With no unit named, in every unit of its kind.`,
  fields: [
    {
      name: "quantity",
      label: t`Quantity`,
      example: { metric: "0.9 N·m", inch: "8 lbf·in" },
      hint: t`also 5/16 in, 20 thou, 77 °F, 1 ft 2 in`,
    },
    {
      name: "unit",
      label: t`Into`,
      example: { metric: "N·m", inch: "lbf·in" },
      isOptional: true,
    },
  ],
  deferral: t`A figure that was rounded in one unit is no better in another. Where the maker gives both units, take the maker’s.`,
};

export const threadForm: SumForm = {
  id: "thread",
  title: t`A thread by its name`,
  foundBy: [
    t`thread dimensions`,
    t`tap drill`,
    t`tapping drill`,
    t`clearance hole`,
    t`pitch diameter`,
    t`minor diameter`,
    t`stress area`,
    t`metric, UNC, UNF, BA, BSW and BSF`,
  ],
  lead: t`What a thread of this name measures, with its tapping drill and clearance hole.`,
  fields: [
    {
      name: "thread",
      label: t`Thread`,
      example: { metric: t`M6, M6x0.75, 2 BA`, inch: "1/4-20 UNC, 1/4 in BSF" },
    },
  ],
  deferral: deferrals.thread,
};

export const identifyForm: SumForm = {
  id: "identify",
  title: t`Which thread is this?`,
  foundBy: [
    t`identify a thread`,
    t`measured diameter and pitch`,
    t`threads per inch`,
    "TPI",
    t`pitch gauge`,
    t`near twins`,
  ],
  lead: t`From what you measured on a clean screw: the outside diameter over the crests, and the pitch over ten threads or by a gauge.`,
  fields: [
    {
      name: "diameter",
      label: t`Outside diameter`,
      example: { metric: "5.95 mm", inch: "15/64 in" },
    },
    { name: "pitch", label: t`Pitch`, example: "1 mm", hint: t`or the threads per inch, not both` },
    { name: "tpi", label: t`Threads per inch`, example: "20" },
    {
      name: "angle",
      label: t`Angle of the flanks`,
      example: "55°",
      hint: t`only if you have seen it against a gauge`,
      isOptional: true,
    },
  ],
  deferral: deferrals.thread,
};
