/** What the pages of the desk begin with: the programme's data, and what the browser has kept. */
import { t } from "../../engine/words.ts";
import type { RecordPageData } from "../../model/page-data.ts";
import { pageData, scriptIsHere } from "../page/data.ts";
import { element } from "../page/element.ts";
import { dayWords } from "../record/day-words.ts";
import { cipherHere } from "../record/key-on-device.ts";
import type { Naming } from "../record/next-words.ts";
import { siteData } from "../record/site-data.ts";
import { Desk } from "./desk.ts";
import { openDesk } from "./desk-shelf.ts";
import { deskWords } from "./desk-words.ts";

export async function beginDesk(
  selector: string,
  show: (place: HTMLElement, desk: Desk, naming: Naming) => void | Promise<void>,
): Promise<void> {
  const data = pageData<RecordPageData>();
  const page = document.querySelector<HTMLElement>(selector);
  if (data === undefined || page === null) return;
  const place = page.querySelector<HTMLElement>(".desk-tools")!;
  try {
    const site = siteData(data.root);
    const [programme, shelf] = await Promise.all([site.programme(), openDesk(data.programme)]);
    const desk = new Desk({ site, programme, now: () => Date.now() }, shelf);
    await desk.load();
    const cards = new Map(programme.modules.map((card) => [card.module, card]));
    await show(place, desk, { day: dayWords(document.documentElement.lang), cards });
    page.querySelector(".record-here")!.textContent = deskWords({
      ...{ protocol: location.protocol, isSecure: globalThis.isSecureContext },
      ...{ hasCipher: cipherHere() !== undefined, isKept: shelf.isKept },
    });
    scriptIsHere();
  } catch (error) {
    const words = t`The page could not be filled in: its data have not come. Load it anew.`;
    place.append(element("p", { class: "warning", role: "alert" }, words));
    throw error;
  }
}
