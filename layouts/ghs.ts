/** Words for the codes of the Globally Harmonized System (UN GHS, annexes 1 and 3). */
import { t } from "../src/engine/words.ts";
import type { GhsPictogram } from "../src/model/sheet.ts";

/** What each pictogram shows, by its code. */
export const pictogramNames: Readonly<Record<GhsPictogram, string>> = {
  GHS01: t`exploding bomb`,
  GHS02: t`flame`,
  GHS03: t`flame over circle`,
  GHS04: t`gas cylinder`,
  GHS05: t`corrosion`,
  GHS06: t`skull and crossbones`,
  GHS07: t`exclamation mark`,
  GHS08: t`health hazard`,
  GHS09: t`environment`,
};

/**
 * Texts of the statements that a workshop's substances commonly bear (GHS annex 3), in British spelling. A code that is not
 * here is printed alone, and the supplier's label and data sheet decide in any case.
 */
export const statementTexts: ReadonlyMap<string, string> = new Map([
  ["H222", t`Extremely flammable aerosol`],
  ["H223", t`Flammable aerosol`],
  ["H224", t`Extremely flammable liquid and vapour`],
  ["H225", t`Highly flammable liquid and vapour`],
  ["H226", t`Flammable liquid and vapour`],
  ["H227", t`Combustible liquid`],
  ["H228", t`Flammable solid`],
  ["H229", t`Pressurized container: may burst if heated`],
  ["H290", t`May be corrosive to metals`],
  ["H302", t`Harmful if swallowed`],
  ["H304", t`May be fatal if swallowed and enters airways`],
  ["H312", t`Harmful in contact with skin`],
  ["H314", t`Causes severe skin burns and eye damage`],
  ["H315", t`Causes skin irritation`],
  ["H317", t`May cause an allergic skin reaction`],
  ["H318", t`Causes serious eye damage`],
  ["H319", t`Causes serious eye irritation`],
  ["H332", t`Harmful if inhaled`],
  ["H335", t`May cause respiratory irritation`],
  ["H336", t`May cause drowsiness or dizziness`],
  ["H350", t`May cause cancer`],
  ["H351", t`Suspected of causing cancer`],
  ["H361", t`Suspected of damaging fertility or the unborn child`],
  ["H372", t`Causes damage to organs through prolonged or repeated exposure`],
  ["H373", t`May cause damage to organs through prolonged or repeated exposure`],
  ["H400", t`Very toxic to aquatic life`],
  ["H410", t`Very toxic to aquatic life with long-lasting effects`],
  ["H411", t`Toxic to aquatic life with long-lasting effects`],
  ["H412", t`Harmful to aquatic life with long-lasting effects`],
  ["H413", t`May cause long-lasting harmful effects to aquatic life`],
  ["EUH066", t`Repeated exposure may cause skin dryness or cracking`],
]);

/**
 * Texts of precautionary statements (GHS annex 3), in British spelling. Dots and square brackets stand where the supplier's
 * label says more; it decides.
 */
export const precautionTexts: ReadonlyMap<string, string> = new Map([
  ["P101", t`If medical advice is needed, have product container or label at hand.`],
  ["P102", t`Keep out of reach of children.`],
  ["P103", t`Read carefully and follow all instructions.`],
  ["P203", t`Obtain, read and follow all safety instructions before use.`],
  ["P210", t`Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.`],
  ["P211", t`Do not spray on an open flame or other ignition source.`],
  ["P233", t`Keep container tightly closed.`],
  ["P235", t`Keep cool.`],
  ["P240", t`Ground/bond container and receiving equipment.`],
  ["P242", t`Use only non-sparking tools.`],
  ["P243", t`Take precautionary measures against static discharge.`],
  ["P251", t`Do not pierce or burn, even after use.`],
  ["P260", t`Do not breathe dust/fume/gas/mist/vapours/spray.`],
  ["P261", t`Avoid breathing dust/fume/gas/mist/vapours/spray.`],
  ["P262", t`Do not get in eyes, on skin, or on clothing.`],
  ["P264", t`Wash hands [and ...] thoroughly after handling.`],
  ["P270", t`Do not eat, drink or smoke when using this product.`],
  ["P271", t`Use only outdoors or in a well-ventilated area.`],
  ["P273", t`Avoid release to the environment.`],
  [
    "P280",
    t`Wear protective gloves/protective clothing/eye protection/face protection/hearing protection/...`,
  ],
  ["P301", t`IF SWALLOWED:`],
  ["P302", t`IF ON SKIN:`],
  ["P303", t`IF ON SKIN (or hair):`],
  ["P304", t`IF INHALED:`],
  ["P305", t`IF IN EYES:`],
  ["P316", t`Get emergency medical help immediately.`],
  ["P317", t`Get medical help.`],
  ["P331", t`Do NOT induce vomiting.`],
  ["P337", t`If eye irritation persists:`],
  ["P338", t`Remove contact lenses, if present and easy to do. Continue rinsing.`],
  ["P340", t`Remove person to fresh air and keep comfortable for breathing.`],
  ["P351", t`Rinse cautiously with water for several minutes.`],
  ["P352", t`Wash with plenty of water/...`],
  ["P353", t`Rinse skin with water [or shower].`],
  ["P361", t`Take off immediately all contaminated clothing.`],
  ["P370", t`In case of fire:`],
  ["P378", t`Use ... to extinguish.`],
  ["P391", t`Collect spillage.`],
  ["P403", t`Store in a well-ventilated place.`],
  ["P405", t`Store locked up.`],
  ["P410", t`Protect from sunlight.`],
  ["P412", t`Do not expose to temperatures exceeding 50 °C/ 122 °F.`],
  ["P501", t`Dispose of contents/container to ...`],
]);

/** "P305+P351 IF IN EYES: Rinse cautiously with water for several minutes." A code that is not here is printed alone. */
export function precaution(code: string): string {
  const texts = code.split("+").map((one) => precautionTexts.get(one));
  return texts.every((text) => text !== undefined) ? `${code} ${texts.join(" ")}` : code;
}

/** "H226 Flammable liquid and vapour". */
export function statement(code: string): string {
  const text = statementTexts.get(code);
  return text === undefined ? code : `${code} ${text}`;
}
