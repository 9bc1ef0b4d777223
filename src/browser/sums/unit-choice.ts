/** Which unit stands first: the programme's, until somebody chooses another, which is kept. */
import { t } from "../../engine/words.ts";
import { storeAt } from "../page/store.ts";
import { isUnitSystem, type UnitSystem } from "./amounts.ts";

/** Shows the choice, calls `changed` after each, and gives what is chosen now. */
export function unitChoice(place: HTMLElement, changed: () => void): () => UnitSystem {
  const store = storeAt(t`units`);
  const radios = [...place.querySelectorAll<HTMLInputElement>("input[type=radio]")];
  const kept = store.load();
  for (const radio of radios) {
    if (isUnitSystem(kept)) radio.checked = radio.value === kept;
    radio.addEventListener("change", () => {
      store.save(radio.value);
      changed();
    });
  }
  place.hidden = false;
  return () => {
    const chosen = radios.find((radio) => radio.checked)?.value;
    return isUnitSystem(chosen) ? chosen : "metric";
  };
}
