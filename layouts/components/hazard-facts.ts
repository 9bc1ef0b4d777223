import type { Address } from "../../src/model/address.ts";
import type { Hazard } from "../../src/model/sheet.ts";
import type { Html } from "../html.ts";
import { safetyMessage } from "./safety-message.ts";

/** The safety message as it stands in modules. */
export function hazardFacts(hazard: Hazard, from: Address): Html {
  return safetyMessage(hazard, from);
}
