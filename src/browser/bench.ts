/** The bench view. */
import type { BenchData } from "../model/page-data.ts";
import { benchPage } from "./bench/bench-page.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { part } from "./page/part.ts";
import { storeAt } from "./page/store.ts";

const data = pageData<BenchData>();
const page = part.querySelector<HTMLElement>(".bench");
if (data !== undefined && page !== null) {
  benchPage(page, data, storeAt(`bench:${data.module}@${data.revision}`));
  scriptIsHere();
}
