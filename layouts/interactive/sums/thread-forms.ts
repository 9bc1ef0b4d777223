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
  formulas: [
    "The quantity times the factor of its unit to the base unit, divided by the factor of the other; of temperatures the zero as well.",
    "1 in = 25.4 mm, 1 lb = 0.45359237 kg, 1 lbf = 1 lb × 9.80665 m/s², 1 US gal = 231 in³, 1 imp gal = 4.54609 L: all exact.",
  ],
  sources: "NIST SP 811, Appendix B",
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
  formulas: [
    "ISO metric: pitch diameter = d − 0.6495 P, minor diameter = d − 1.0825 P (ISO 724); stress area = π/4 · (d − 0.9382 P)² (ISO 898-1, 9.1.6.1). The same diameters for UNC and UNF (ASME B1.1), their stress area π/4 · (d − 0.9743 P)² (FED-STD-H28/2B, Appendix B).",
    "BSW and BSF: depth of thread 0.6403 P (BS 84). BA: 0.6 P, to 0.005 mm (BS 93). Stress area from the mean of effective and minor diameter, which is usual and in neither standard.",
    "Tapping drill: d − P for ISO metric (ISO 2306); for others 75 % of the full depth, which is common practice. Clearance holes: ISO 273.",
  ],
  sources:
    "ISO 68-1, ISO 261, ISO 724, ASME B1.1, BS 84, BS 93, ISO 273; ISO 2306 and some holes of ISO 273 from memory",
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
  formulas: [
    "A thread fits if the diameter is at most 0.03 mm above nominal, and below it by no more than the tolerance of ISO 965-1, grade 6g, and half as much again for wear; and if the pitch is within 4 %.",
    "Nearest first, by how many usual errors of measuring it is away. Near twins are sizes of another series so near that a screw enters the other’s hole.",
  ],
  sources: "ISO 261, ASME B1.1, BS 84, BS 93; the tolerance of ISO 965-1 from memory",
  deferral: deferrals.thread,
};
