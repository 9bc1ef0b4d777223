/** "My record". */
import { t } from "../engine/words.ts";
import type { RecordPageData } from "../model/page-data.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { element } from "./page/element.ts";
import { forgetAll } from "./page/store.ts";
import { whenChanged } from "./record/channel.ts";
import { openOwnRecord } from "./record/own-record.ts";
import { RecordPage } from "./record/record-page.ts";
import { siteData } from "./record/site-data.ts";

const data = pageData<RecordPageData>();
const page = document.querySelector<HTMLElement>(".record-page");
if (data !== undefined && page !== null) void begin(page, data);

async function begin(page: HTMLElement, { programme: id, root }: RecordPageData): Promise<void> {
  try {
    const site = siteData(root);
    const [own, programme] = await Promise.all([openOwnRecord(id), site.programme()]);
    const view = new RecordPage({
      ...{ page, own, site, programme, root },
      language: document.documentElement.lang,
      now: () => Date.now(),
      forget: forgetAll,
    });
    await view.show();
    whenChanged(id, () => void own.refresh().then(() => view.show()));
    scriptIsHere();
  } catch (error) {
    const words = t`The page could not be filled in: its data have not come. Load it anew.`;
    page.querySelector(".record-notes")!.append(element("p", { class: "warning", role: "alert" }, words));
    throw error;
  }
}
