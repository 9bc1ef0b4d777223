/** Words for the codes of the Globally Harmonized System (UN GHS, annexes 1 and 3). */
import type { GhsPictogram } from "../src/model/sheet.ts";

/** What each pictogram shows, by its code. */
export const pictogramNames: Readonly<Record<GhsPictogram, string>> = {
  GHS01: "exploding bomb",
  GHS02: "flame",
  GHS03: "flame over circle",
  GHS04: "gas cylinder",
  GHS05: "corrosion",
  GHS06: "skull and crossbones",
  GHS07: "exclamation mark",
  GHS08: "health hazard",
  GHS09: "environment",
};

/**
 * Texts of the statements that a workshop's substances commonly bear (GHS annex 3), in British spelling. A code that is not
 * here is printed alone, and the supplier's label and data sheet decide in any case.
 */
export const statementTexts: ReadonlyMap<string, string> = new Map([
  ["H222", "Extremely flammable aerosol"],
  ["H223", "Flammable aerosol"],
  ["H224", "Extremely flammable liquid and vapour"],
  ["H225", "Highly flammable liquid and vapour"],
  ["H226", "Flammable liquid and vapour"],
  ["H227", "Combustible liquid"],
  ["H228", "Flammable solid"],
  ["H229", "Pressurized container: may burst if heated"],
  ["H290", "May be corrosive to metals"],
  ["H302", "Harmful if swallowed"],
  ["H304", "May be fatal if swallowed and enters airways"],
  ["H312", "Harmful in contact with skin"],
  ["H314", "Causes severe skin burns and eye damage"],
  ["H315", "Causes skin irritation"],
  ["H317", "May cause an allergic skin reaction"],
  ["H318", "Causes serious eye damage"],
  ["H319", "Causes serious eye irritation"],
  ["H332", "Harmful if inhaled"],
  ["H335", "May cause respiratory irritation"],
  ["H336", "May cause drowsiness or dizziness"],
  ["H350", "May cause cancer"],
  ["H351", "Suspected of causing cancer"],
  ["H361", "Suspected of damaging fertility or the unborn child"],
  ["H372", "Causes damage to organs through prolonged or repeated exposure"],
  ["H373", "May cause damage to organs through prolonged or repeated exposure"],
  ["H400", "Very toxic to aquatic life"],
  ["H410", "Very toxic to aquatic life with long-lasting effects"],
  ["H411", "Toxic to aquatic life with long-lasting effects"],
  ["H412", "Harmful to aquatic life with long-lasting effects"],
  ["H413", "May cause long-lasting harmful effects to aquatic life"],
  ["EUH066", "Repeated exposure may cause skin dryness or cracking"],
]);

/**
 * Texts of precautionary statements (GHS annex 3), in British spelling. Dots and square brackets stand where the supplier's
 * label says more; it decides.
 */
export const precautionTexts: ReadonlyMap<string, string> = new Map([
  ["P101", "If medical advice is needed, have product container or label at hand."],
  ["P102", "Keep out of reach of children."],
  ["P103", "Read carefully and follow all instructions."],
  ["P203", "Obtain, read and follow all safety instructions before use."],
  ["P210", "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking."],
  ["P211", "Do not spray on an open flame or other ignition source."],
  ["P233", "Keep container tightly closed."],
  ["P235", "Keep cool."],
  ["P240", "Ground/bond container and receiving equipment."],
  ["P242", "Use only non-sparking tools."],
  ["P243", "Take precautionary measures against static discharge."],
  ["P251", "Do not pierce or burn, even after use."],
  ["P260", "Do not breathe dust/fume/gas/mist/vapours/spray."],
  ["P261", "Avoid breathing dust/fume/gas/mist/vapours/spray."],
  ["P262", "Do not get in eyes, on skin, or on clothing."],
  ["P264", "Wash hands [and ...] thoroughly after handling."],
  ["P270", "Do not eat, drink or smoke when using this product."],
  ["P271", "Use only outdoors or in a well-ventilated area."],
  ["P273", "Avoid release to the environment."],
  [
    "P280",
    "Wear protective gloves/protective clothing/eye protection/face protection/hearing protection/...",
  ],
  ["P301", "IF SWALLOWED:"],
  ["P302", "IF ON SKIN:"],
  ["P303", "IF ON SKIN (or hair):"],
  ["P304", "IF INHALED:"],
  ["P305", "IF IN EYES:"],
  ["P316", "Get emergency medical help immediately."],
  ["P317", "Get medical help."],
  ["P331", "Do NOT induce vomiting."],
  ["P337", "If eye irritation persists:"],
  ["P338", "Remove contact lenses, if present and easy to do. Continue rinsing."],
  ["P340", "Remove person to fresh air and keep comfortable for breathing."],
  ["P351", "Rinse cautiously with water for several minutes."],
  ["P352", "Wash with plenty of water/..."],
  ["P353", "Rinse skin with water [or shower]."],
  ["P361", "Take off immediately all contaminated clothing."],
  ["P370", "In case of fire:"],
  ["P378", "Use ... to extinguish."],
  ["P391", "Collect spillage."],
  ["P403", "Store in a well-ventilated place."],
  ["P405", "Store locked up."],
  ["P410", "Protect from sunlight."],
  ["P412", "Do not expose to temperatures exceeding 50 °C/ 122 °F."],
  ["P501", "Dispose of contents/container to ..."],
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
