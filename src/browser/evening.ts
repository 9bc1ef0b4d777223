/** "Evening sheet". */
import type { RecordPageData } from "../model/page-data.ts";
import { beginDesk } from "./desk/begin.ts";
import { EveningPage } from "./evening/evening-page.ts";
import { pageData } from "./page/data.ts";

void beginDesk(".evening-page", (place, desk, naming) => {
  const { root } = pageData<RecordPageData>()!;
  const page = document.querySelector<HTMLElement>(".evening-page")!;
  return new EveningPage(page, desk, naming, root).show(place);
});
