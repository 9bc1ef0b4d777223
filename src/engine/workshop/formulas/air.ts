import { t } from "../../words.ts";
import { mixingRange } from "../air/air-needed.ts";
import { temperatureWords } from "../air/gas.ts";
import { substanceIds } from "../air/substances.ts";
import type { Chapter } from "./formula.ts";

const warmth = t`${temperatureWords}, one atmosphere`;

export const air: Chapter = {
  id: "air",
  title: t`Vapour and fresh air`,
  signs: t`SG weight against water; MW molar mass, g/mol; Vm molar volume, L/mol; K mixing factor; LFL lower flammable limit.`,
  formulas: [
    {
      id: "vapour-volume",
      name: t`Vapour of a liquid`,
      says: [
        t`V = liquid × 1000 · SG · Vm/MW; molar volume Vm = 0.082057 L·atm/(mol·K) × T: 24.06 L at 20 °C`,
        t`the air that it makes flammable if it stays together: V ÷ lower flammable limit`,
      ],
      unit: t`L, m³`,
      range: t`all of the liquid evaporates; ${warmth}`,
      source: t`ideal gas, CODATA 2018; ACGIH, Industrial Ventilation, chapter 2`,
      standing: "published",
      sums: ["vapour"],
      files: ["air/gas.ts", "air/vapour.ts"],
    },
    {
      id: "concentration",
      name: t`Average over the room`,
      says: [
        t`in parts of the air: V ÷ room; by weight: liquid × density ÷ room; each ÷ the lower flammable limit and ÷ the exposure limit`,
      ],
      unit: t`ppm, mg/m³`,
      range: t`none of the vapour leaves the room, and it is spread evenly; near the liquid there is far more; rounded up`,
      source: t`NIOSH Pocket Guide (the limits); the sum is that of its definition`,
      standing: "published",
      sums: ["vapour"],
      files: ["air/vapour.ts"],
    },
    {
      id: "ppm",
      name: t`Limits in ppm and in mg/m³`,
      says: [t`mg/m³ = ppm × MW ÷ 24.45; 10 % LFL = a tenth of the lower flammable limit`],
      unit: t`mg/m³, ppm`,
      range: t`25 °C, one atmosphere, for which limits are set`,
      source: t`NIOSH Pocket Guide, conversion factors`,
      standing: "published",
      sums: ["vapour", "air"],
      files: ["air/gas.ts", "air/exposure-written.ts"],
    },
    {
      id: "alarms",
      name: t`Alarms`,
      says: [
        t`a tenth of the lower flammable limit: immediate danger; a quarter: leave; all of it: the room can explode`,
      ],
      unit: "",
      range: t`averages; a flash point less than 15 °C above the room is warned of besides (our own margin)`,
      source: t`NIOSH Pocket Guide, values at 10 % of the lower limit; a quarter is usual`,
      standing: "practice",
      sums: ["vapour"],
      files: ["air/vapour-words.ts"],
    },
    {
      id: "fresh-air",
      name: t`Fresh air`,
      says: [t`Q = K · vapour made in an hour ÷ limit = Vm · SG · rate · K · 10⁶ ÷ (MW · ppm)`],
      unit: "m³/h",
      range: t`K from ${mixingRange.least} (mixes perfectly) to ${mixingRange.greatest} (hardly; range from memory); an even rate; a limit below the lower flammable limit; ${warmth}`,
      source: t`ACGIH, Industrial Ventilation, chapter 2; Abulencia and Theodore, 20.2`,
      standing: "published",
      sums: ["air"],
      files: ["air/air-needed.ts"],
    },
    {
      id: "categories",
      name: t`Flammable liquids`,
      says: [
        t`category 1: flash point below 23 °C, boils up to 35 °C; 2: below 23 °C, boils above; 3: 23 to 60 °C; 4: above 60, up to 93 °C`,
      ],
      unit: "",
      range: t`category 4 is not adopted in the European Union; without a boiling point it is taken as above 35 °C`,
      source: t`GHS, as in 29 CFR 1910.106(a)(19); classes of NFPA 30 beside them (II to IIIB from memory)`,
      standing: "published",
      sums: ["vapour"],
      files: ["air/flammability.ts", "air/vapour.ts"],
    },
    {
      id: "solvents",
      name: t`Figures of solvents`,
      says: [
        t`by table; where sources differ, those that lead to the more careful answer; own figures of a data sheet go before them`,
      ],
      unit: t`as each says`,
      range: substanceIds().join(", "),
      source: t`NIOSH Pocket Guide, IEC 60079-20-1:2010, ACGIH; of white spirit density and lower limit from memory`,
      standing: "published",
      sums: [],
      files: ["air/substances.ts", "air/substance.ts"],
    },
  ],
};
