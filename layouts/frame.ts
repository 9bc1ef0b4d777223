/** The frame that all pages share: head, masthead, main, footer. */
import { t } from "../src/engine/words.ts";
import { type Address, linkTo, linkToFile } from "../src/model/address.ts";
import type { Programme } from "../src/model/programme.ts";
import { remembered } from "../src/model/remembered.ts";
import type { Assets } from "../src/model/site.ts";
import { attribute, escapeHtml, type Html, html, raw, type Value } from "./html.ts";

export interface Frame {
  readonly address: Address;
  /** The page's own title; "" for the home page, which bears the programme's name alone. */
  readonly title: string;
  readonly programme: Programme;
  readonly assets: Assets;
  /** What stands in `<main>`; the page's only `h1` is in it. */
  readonly main: Html;
  /** Entries of `assets.scripts` that the page needs, in this order. */
  readonly scripts?: readonly string[];
  /** Style sheets of its own, besides those that every page loads. */
  readonly styles?: readonly (string | undefined)[];
  readonly description?: string | undefined;
  /** Put into `<script type="application/json" id="page-data">` for the page's scripts. */
  readonly data?: unknown;
}

/** No request leaves the site, and nothing written into a page runs. */
const policy = [
  "default-src 'none'",
  "style-src 'self'",
  "script-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const keepsRecords = ({ identifier }: Programme): boolean => identifier !== undefined;

const sections: readonly {
  readonly id: string;
  readonly name: string;
  readonly kinds: readonly Address["kind"][];
  /** Plain pages that belong to it. */
  readonly plain?: readonly string[];
  /** Where not every programme has it. */
  readonly has?: (programme: Programme) => boolean;
}[] = [
  {
    id: "modules",
    name: t`Modules`,
    kinds: ["module", "order", "bench", "paper", "practice", "dry-run", "quiz", "quiz-key"],
    plain: ["route"],
  },
  { id: "tools", name: t`Tools`, kinds: ["tool"] },
  { id: "substances", name: t`Substances`, kinds: ["substance"] },
  { id: "hazards", name: t`Hazards`, kinds: ["hazard"] },
  { id: "sums", name: t`Sums`, kinds: [] },
  { id: "search", name: t`Search`, kinds: [] },
  { id: "record", name: t`My record`, kinds: [], has: keepsRecords },
  { id: "about", name: t`About`, kinds: [] },
];

/** True for the languages that CLDR has as written from right to left. */
const isRightToLeft = remembered(({ language }: Programme): boolean => {
  const locale = new Intl.Locale(language) as Intl.Locale & {
    readonly textInfo?: { readonly direction: string };
    getTextInfo?(): { readonly direction: string };
  };
  return (locale.getTextInfo?.() ?? locale.textInfo)?.direction === "rtl";
});

/** Makes a whole page. */
export function frame(page: Frame): string {
  return html`<!DOCTYPE html>
<html lang="${page.programme.language}"${zoomScript(page)}${attribute("dir", isRightToLeft(page.programme) ? "rtl" : undefined)} data-title="${page.title === "" ? page.programme.name : page.title}">
${head(page)}
<body class="page-${page.address.kind}">
<a class="skip" href="#s_main">Skip to the content</a>
${masthead(page)}
<main id="s_main" tabindex="-1">
${page.main}
</main>
${footer(page.programme)}
</body>
</html>
`.text;
}

const hasFigures = (main: Html): boolean => main.text.includes('class="enlarge"');

/** Those for figures are small, and load the one that shows them large when that is first asked for. */
function figureScripts(main: Html): string[] {
  if (main.text.includes('class="item-numbers"')) return ["figures"];
  return hasFigures(main) ? ["enlarge"] : [];
}

function zoomScript({ main, assets, address }: Frame): Html | undefined {
  const file = assets.scripts.get("zoom");
  return hasFigures(main) && file !== undefined
    ? attribute("data-zoom", linkToFile(address, file))
    : undefined;
}

function head({
  address,
  title,
  programme,
  assets,
  scripts = [],
  styles = [],
  description,
  data,
  main,
}: Frame): Html {
  const files = [...scripts, ...figureScripts(main), "offline"]
    .map((entry) => assets.scripts.get(entry))
    .filter((file) => file !== undefined);
  const sheets =
    address.kind === "module"
      ? [assets.style]
      : [assets.style, assets.furtherStyle, ...styles.filter((file) => file !== undefined)];
  return html`<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${raw(policy)}">
<title>${headline(title, programme.name)}</title>
${description === undefined ? undefined : html`<meta name="description" content="${description}">\n`}<meta name="color-scheme" content="light dark">
<link rel="icon" href="${linkToFile(address, "assets/icon.svg")}" type="image/svg+xml">
${assets.scripts.has("offline") ? html`<link rel="manifest" href="${linkToFile(address, "manifest.webmanifest")}">\n` : undefined}${sheets.map((file) => html`<link rel="stylesheet" href="${linkToFile(address, file)}">\n`)}${files.map((file) => html`<script src="${linkToFile(address, file)}" defer></script>\n`)}${data === undefined ? undefined : dataBlock(data)}</head>`;
}

/** Longer titles are cut off where they are shown. Counted as written, with escapes. */
const longestTitle = 70;

function headline(title: string, programme: string): string {
  const whole = [title, programme].filter((part) => part !== "").join(" · ");
  if (escapeHtml(whole).length <= longestTitle) return whole;
  return escapeHtml(title).length <= longestTitle
    ? title
    : `${[...title].slice(0, longestTitle - 5).join("")}…`;
}

/** Data for scripts. `<` is written as an escape, so that no text in it can end the block. */
function dataBlock(data: unknown): Html {
  return raw(
    `<script type="application/json" id="page-data">${JSON.stringify(data).replaceAll("<", "\\u003c")}</script>\n`,
  );
}

/** By programme and kind of page: pages of one kind lie equally deep, and are marked alike. */
const mastheads = new WeakMap<Programme, Map<string, Html>>();

function masthead({ address, programme }: Frame): Html {
  const known = mastheads.get(programme) ?? new Map<string, Html>();
  mastheads.set(programme, known);
  const key = address.kind === "plain" ? `plain ${address.id}` : address.kind;
  const made = known.get(key) ?? makeMasthead(address, programme);
  known.set(key, made);
  return made;
}

function makeMasthead(address: Address, programme: Programme): Html {
  return html`<header class="masthead">
<a class="masthead-name" href="${linkTo(address, { kind: "plain", id: "" })}"${attribute("aria-current", isHome(address) && "page")}>${programme.name}</a>
<nav class="masthead-nav" aria-label="Main">
<ul>
${sections.filter(({ has = () => true }) => has(programme)).map((section) => html`<li><a href="${linkTo(address, { kind: "plain", id: section.id })}"${attribute("aria-current", mark(section, address))}>${section.name}</a></li>\n`)}</ul>
</nav>
</header>`;
}

const isHome = (address: Address) => address.kind === "plain" && address.id === "";

/** "page" for the page itself, "true" for a page that belongs to the section. */
function mark(section: (typeof sections)[number], address: Address): string | undefined {
  if (address.kind === "plain" && address.id === section.id) return "page";
  const isBelow =
    address.kind === "plain" &&
    (address.id.startsWith(`${section.id}/`) || section.plain?.includes(address.id) === true);
  return isBelow || section.kinds.includes(address.kind) ? "true" : undefined;
}

const deferral: Value = t`What is written here does not replace the safety data sheet of a substance, the maker’s instructions, local rules, licensed practice or the mentor beside you. Where they differ, they decide.`;

const footer = remembered((programme: Programme): Html => {
  return html`<footer class="colophon">
<p>${deferral}</p>
${programme.emergency === undefined ? undefined : html`<p class="colophon-emergency"><strong>In an emergency:</strong> ${programme.emergency}</p>\n`}<p class="colophon-name">${[programme.name, programme.place].filter((text) => text !== undefined).join(", ")}</p>
</footer>`;
});
