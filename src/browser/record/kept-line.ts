/** What a page says once something has gone into the record: that it is there, and the file to take it along. */
import { t } from "../../engine/words.ts";
import { button, element } from "../page/element.ts";
import { saveFile } from "../page/save-file.ts";
import type { OwnRecord } from "./own-record.ts";

export interface KeptLineOptions {
  readonly own: OwnRecord;
  /** The way to "My record". */
  readonly href: string;
  /** Undefined of something that was kept earlier. */
  readonly adding: Promise<unknown> | undefined;
}

/** A line that is filled in once it is known how the adding went. */
export function keptLine({ own, href, adding }: KeptLineOptions): HTMLElement {
  const said = element("p", { role: "status" });
  const save = button(t`Save my record as a file`, () => void offer(own, said));
  const place = element("div", { class: "kept-line" }, said);
  const link = element("a", { href }, t`your record`);
  void Promise.resolve(adding)
    .then(
      () => own.troubleWords(),
      () => t`This could not be written into your record: what was to be kept is not in order.`,
    )
    .then((trouble) => {
      said.classList.toggle("warning", trouble !== undefined);
      const words = adding === undefined ? t`It is in ` : t`Kept in `;
      said.replaceChildren(...(trouble === undefined ? [words, link, t`, on this device.`] : [trouble]));
      place.append(element("p", {}, save));
    });
  return place;
}

async function offer(own: OwnRecord, said: HTMLElement): Promise<void> {
  const { name, text } = await own.file();
  saveFile(name, text);
  said.classList.remove("warning");
  said.textContent = t`Saved as ${name}, where this browser puts downloads.`;
}
