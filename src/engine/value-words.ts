/** Values that stand in content and records by fixed English names, in the words of the site. In English they are the same. */
import { t, tIn } from "./words.ts";

/** Signal words of safety messages (ANSI Z535.6, ISO 3864-2). */
export const signalWordNames: Readonly<Record<"danger" | "warning" | "caution" | "notice", string>> = {
  danger: tIn("signal word of a safety message")`Danger`,
  warning: tIn("signal word of a safety message")`Warning`,
  caution: tIn("signal word of a safety message")`Caution`,
  notice: tIn("signal word of a safety message")`Notice`,
};

/** Signal words of labels under GHS, which some languages do not share with those of safety messages. */
export const labelWordNames: Readonly<Record<"danger" | "warning", string>> = {
  danger: tIn("signal word of a label under GHS")`danger`,
  warning: tIn("signal word of a label under GHS")`warning`,
};

const values: Readonly<Record<string, string>> = {
  cleaning: t`cleaning`,
  drying: t`drying`,
  lubricating: t`lubricating`,
  penetrating: t`penetrating`,
  "set screw": t`set screw`,
  "left-hand": t`left-hand`,
  "wood screw": t`wood screw`,
  "machine screw": t`machine screw`,
  "taper pin": t`taper pin`,
  rivet: t`rivet`,
  nut: t`nut`,
  slotted: t`slotted`,
  "cross recess": t`cross recess`,
  "cross recess H": t`cross recess H`,
  "cross recess Z": t`cross recess Z`,
  hexagon: t`hexagon`,
  "hexagon socket": t`hexagon socket`,
  "hexalobular socket": t`hexalobular socket`,
  square: t`square`,
  "square socket": t`square socket`,
  knurled: t`knurled`,
  wing: t`wing`,
  "two-hole": t`two-hole`,
};

/** A use of a substance, a kind of fastener or a drive; what is none of the known ones stays as its author wrote it. */
export const valueWords = (value: string): string => (Object.hasOwn(values, value) ? values[value]! : value);

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
