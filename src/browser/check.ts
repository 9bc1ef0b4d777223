/** "Check a sign-off": whatever is chosen is judged on the device and shown; nothing is kept. */
import { t } from "../engine/words.ts";
import type { RecordPageData } from "../model/page-data.ts";
import { verdictView } from "./check/verdict-view.ts";
import { fileField, takeDropped } from "./opened/file-field.ts";
import { textOf } from "./opened/given-file.ts";
import { type Opened, type OpenOptions, openFile } from "./opened/open-file.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { button, element, goTo } from "./page/element.ts";
import { dayWords } from "./record/day-words.ts";
import { hereWords } from "./record/here-words.ts";
import { siteData } from "./record/site-data.ts";

const data = pageData<RecordPageData>();
const page = document.querySelector<HTMLElement>(".check-page");
if (data !== undefined && page !== null) void begin(page, data);

async function begin(page: HTMLElement, { root }: RecordPageData): Promise<void> {
  const tool = page.querySelector<HTMLElement>(".check-tool")!;
  try {
    const site = siteData(root);
    const programme = await site.programme();
    showTool(page, tool, { site, programme, now: () => Date.now() });
    scriptIsHere();
  } catch (error) {
    const words = t`Nothing can be checked: the programme’s data have not come. Load the page anew.`;
    tool.append(element("p", { class: "warning", role: "alert" }, words));
    throw error;
  }
}

function showTool(page: HTMLElement, tool: HTMLElement, options: OpenOptions): void {
  const found = page.querySelector<HTMLElement>(".check-found")!;
  const cards = new Map(options.programme.modules.map((card) => [card.module, card]));
  const naming = { day: dayWords(document.documentElement.lang), cards };
  const { timeZone } = options.programme.rules;
  const print = button(t`Print`, () => window.print());
  const take = async (files: readonly File[]): Promise<void> => {
    const views: HTMLElement[] = [];
    for (const [place, file] of files.entries())
      views.push(
        verdictView({ file: file.name, opened: await judge(file, options), naming, timeZone, place }),
      );
    found.replaceChildren(...views);
    print.hidden = views.length === 0;
    goTo(found.querySelector("h2")!);
  };
  print.hidden = true;
  const chooser = fileField({
    ...{ id: "check-file", label: t`Choose a file`, several: true },
    take: (files) => void take(files),
  });
  tool.append(element("div", { class: "actions" }, chooser, print));
  takeDropped(tool, (files) => void take(files));
  page.querySelector(".record-here")!.textContent = hereWords({
    protocol: location.protocol,
    isSecure: globalThis.isSecureContext,
    hasCipher: true,
  });
}

async function judge(file: File, options: OpenOptions): Promise<Opened> {
  const given = await textOf(file);
  return given.ok ? openFile(given.text, options) : { kind: "nothing", problems: [given.problem] };
}
