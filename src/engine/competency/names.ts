/** Outcomes and standings, which records hold by fixed English names, in the words of the site. */
import { t } from "../words.ts";

/** How an observation ended. */
export const outcomeNames: Readonly<
  Record<"watched" | "unaided" | "not yet" | "stopped for safety", string>
> = {
  watched: t`watched`,
  unaided: t`unaided`,
  "not yet": t`not yet`,
  "stopped for safety": t`stopped for safety`,
};

const standings: Readonly<Record<string, string>> = {
  "not begun": t`not begun`,
  "under way": t`under way`,
  "ready to be watched": t`ready to be watched`,
  "ready to be signed": t`ready to be signed`,
  "signed off": t`signed off`,
  "lapses soon": t`lapses soon`,
  lapsed: t`lapsed`,
  withdrawn: t`withdrawn`,
  unconfirmed: t`unconfirmed`,
  "earlier revision": t`earlier revision`,
  suspended: t`suspended`,
};

/** How a person stands with a module. */
export const standingName = (standing: string): string => standings[standing] ?? standing;
