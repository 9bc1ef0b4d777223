/** Values that stand in content by fixed English names, in the words of the site. In English they are the same. */
import { t } from "./words.ts";

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
