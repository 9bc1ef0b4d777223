/** The bench view. */
import type { BenchData } from "../model/page-data.ts";
import { keepAwake } from "./bench/awake.ts";
import { BenchView } from "./bench/bench-view.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { element } from "./page/element.ts";
import { storeAt } from "./page/store.ts";

const data = pageData<BenchData>();
const page = document.querySelector<HTMLElement>(".bench");
if (data !== undefined && page !== null) {
  scriptIsHere();
  const awake = element("p", { class: "bench-awake small" });
  page.querySelector(".bench-before")!.prepend(awake);
  new BenchView(page, storeAt(`bench:${data.module}@${data.revision}`));
  void keepAwake((words) => {
    awake.textContent = words;
  });
}
