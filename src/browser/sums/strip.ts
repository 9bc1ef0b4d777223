/** What gives first: the screw, its thread, or that of the hole. */
import { t } from "../../engine/words.ts";
import { type Stripped, strippedIn } from "../../engine/workshop/asked/stripping.ts";
import type { WeakPart } from "../../engine/workshop/bolts/strip.ts";
import { weakWords } from "../../engine/workshop/bolts/strip-words.ts";
import { formatNumber } from "../../engine/workshop/format-quantity.ts";
import { roundedDown, roundedUp } from "../../engine/workshop/grounds.ts";
import { capital } from "../page/words.ts";
import { force, inBoth, length, torqueUnits, type UnitSystem } from "./amounts.ts";
import type { Answer, Sum } from "./answer.ts";

export const strip: Sum = {
  id: "strip",
  reckon(fields, units) {
    const stripped = strippedIn(fields);
    return stripped && answer(stripped, units);
  },
};

/** Loads are rounded down, lengths up. */
function answer({ ask, found }: Stripped, units: UnitSystem): Answer {
  const { size, screw, engagementMm, material } = ask;
  const { loads, weaker, whenTightened } = found;
  const pull = (part: WeakPart) =>
    inBoth(t`${capital(weakWords[part])} at`, loads[part], force, units, 3, roundedDown);
  return {
    headline: t`${size.designation}, ${screw.name}, ${formatNumber(engagementMm)} mm in ${material.name}: ${weakWords[weaker]} first.`,
    figures: [
      pull("screw breaks"),
      pull("internal strips"),
      pull("external strips"),
      {
        ...inBoth("", whenTightened.torqueNm, torqueUnits(whenTightened.torqueNm), units, 3, roundedDown),
        name: t`While it is tightened, ${weakWords[whenTightened.weaker]} at`,
      },
      inBoth(
        t`Engagement for the screw to break first`,
        found.engagementNeededMm / 1000,
        length,
        units,
        3,
        roundedUp,
      ),
    ],
    grounds: found,
  };
}
