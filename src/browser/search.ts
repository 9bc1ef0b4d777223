/** The search page. */
import type { SearchPageData } from "../model/page-data.ts";
import type { SearchGlobal } from "../model/search-data.ts";
import { pageData } from "./page/data.ts";
import { SearchView } from "./search/search-view.ts";

const page = document.querySelector<HTMLElement>(".search");
const data = pageData<SearchPageData>();
const found = (globalThis as SearchGlobal).benchwrightSearch;
if (page !== null && data !== undefined && found !== undefined) new SearchView(page, found, data);
