/** Forms of the sums on units and threads. */
import { deferrals } from "../../../src/engine/workshop/grounds.ts";
import type { SumForm } from "./form.ts";

export const convertForm: SumForm = {
  id: "convert",
  title: "Units",
  foundBy: [
    "convert units",
    "conversion factors",
    "inches to millimetres",
    "torque in lbf·in, lbf·ft and N·m",
    "thou",
    "ounces",
    "degrees Fahrenheit and Celsius",
  ],
  lead: "A quantity in another unit. With no unit named, in every unit of its kind.",
  fields: [
    {
      name: "quantity",
      label: "Quantity",
      example: { metric: "0.9 N·m", inch: "8 lbf·in" },
      hint: "also 5/16 in, 20 thou, 77 °F, 1 ft 2 in",
    },
    {
      name: "unit",
      label: "Into",
      example: { metric: "N·m", inch: "lbf·in" },
      isOptional: true,
    },
  ],
  deferral:
    "A figure that was rounded in one unit is no better in another. Where the maker gives both units, take the maker’s.",
};

export const threadForm: SumForm = {
  id: "thread",
  title: "A thread by its name",
  foundBy: [
    "thread dimensions",
    "tap drill",
    "tapping drill",
    "clearance hole",
    "pitch diameter",
    "minor diameter",
    "stress area",
    "metric, UNC, UNF, BA, BSW and BSF",
  ],
  lead: "What a thread of this name measures, with its tapping drill and clearance hole.",
  fields: [
    {
      name: "thread",
      label: "Thread",
      example: { metric: "M6, M6x0.75, 2 BA", inch: "1/4-20 UNC, 1/4 in BSF" },
    },
  ],
  deferral: deferrals.thread,
};

export const identifyForm: SumForm = {
  id: "identify",
  title: "Which thread is this?",
  foundBy: [
    "identify a thread",
    "measured diameter and pitch",
    "threads per inch",
    "TPI",
    "pitch gauge",
    "near twins",
  ],
  lead: "From what you measured on a clean screw: the outside diameter over the crests, and the pitch over ten threads or by a gauge.",
  fields: [
    {
      name: "diameter",
      label: "Outside diameter",
      example: { metric: "5.95 mm", inch: "15/64 in" },
    },
    { name: "pitch", label: "Pitch", example: "1 mm", hint: "or the threads per inch, not both" },
    { name: "tpi", label: "Threads per inch", example: "20" },
    {
      name: "angle",
      label: "Angle of the flanks",
      example: "55°",
      hint: "only if you have seen it against a gauge",
      isOptional: true,
    },
  ],
  deferral: deferrals.thread,
};
