import { t } from "../../words.ts";
import type { Chapter } from "./formula.ts";

export const units: Chapter = {
  id: "units",
  title: t`Units and figures`,
  signs: "",
  formulas: [
    {
      id: "conversion",
      name: t`Another unit`,
      says: [t`amount = (amount given + its zero) × its factor ÷ the other factor − the other zero`],
      unit: t`the one asked for`,
      range: t`units of one kind; only temperatures have a zero of their own; 15 significant figures`,
      source: t`NIST SP 811 (2008), Appendices B.8 and B.9`,
      standing: "published",
      sums: ["convert"],
      files: ["units.ts", "quantity.ts", "asked/conversion.ts"],
    },
    {
      id: "definitions",
      name: t`Definitions`,
      says: [
        t`1 in = 25.4 mm; 1 lb = 0.45359237 kg; 1 lbf = 1 lb × 9.80665 m/s²`,
        t`1 US gal = 231 in³; 1 imp gal = 4.54609 L`,
        t`t in °C = (t in °F − 32) ÷ 1.8 = T in K − 273.15`,
      ],
      unit: t`as each says`,
      range: t`exact`,
      source: t`NIST SP 811 (2008), Appendix B`,
      standing: "published",
      sums: ["convert"],
      files: ["units.ts", "threads/size.ts"],
    },
    {
      id: "printing",
      name: t`Figures as they are printed`,
      says: [
        t`four significant figures unless more are written; loads rounded down, lengths, vapour and air rounded up`,
      ],
      unit: t`as the figure`,
      range: t`a raised degree sign stands against its figure, every other unit apart from it`,
      source: t`NIST SP 811 (2008), 7.2 (spacing); the rounding is ours`,
      standing: "own",
      sums: [],
      files: ["format-quantity.ts", "grounds.ts"],
    },
    {
      id: "nearest-name",
      name: t`The nearest that is known`,
      says: [
        t`of names: the one that needs the fewest letters changed, and at most a half (a third of a unit or a thread)`,
        t`of sizes: least 10 × |ln of the ratio of diameters| + |ln of the ratio of pitches|`,
      ],
      unit: "",
      range: t`what is offered where a name or a size is not known`,
      source: t`R. A. Wagner, M. J. Fischer, J. ACM 21 (1974), for letters; the measure of sizes is ours`,
      standing: "own",
      sums: [],
      files: ["edit-distance.ts", "unit-names.ts", "threads/nearest.ts"],
    },
  ],
};
