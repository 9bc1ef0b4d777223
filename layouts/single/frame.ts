/** The frame of a module in one file: what the file is, the list of its parts, the parts one below the other. */
import { t } from "../../src/engine/words.ts";
import type { PageKind } from "../../src/model/address.ts";
import { html, raw } from "../html.ts";

export interface SingleFrame {
  readonly language: string;
  /** Escaped, as are the other texts that come from a page. */
  readonly title: string;
  readonly programme: string;
  readonly policy: string;
  readonly style: string;
  readonly script: string;
  readonly parts: readonly SinglePart[];
  readonly colophon: string;
}

export interface SinglePart {
  readonly kind: PageKind;
  readonly id: string;
  readonly title: string;
  readonly html: string;
}

export function singleFrame(single: SingleFrame): string {
  const { language, title, programme, policy, style, script, parts, colophon } = single;
  const own = parts.filter(({ kind }) => names.has(kind));
  const sheets = parts.filter(({ kind }) => !names.has(kind));
  return html`<!DOCTYPE html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${raw(policy)}">
<title>${raw(title)}</title>
<meta name="color-scheme" content="light dark">
<style>${raw(style)}</style>
<script>${raw(script)}</script>
</head>
<body class="page-single">
<a class="skip" href="#s_main">Skip to the content</a>
<header class="masthead">
<h1>${raw(title)}</h1>
<p>${raw(programme)}</p>
</header>
<nav class="file-parts on-screen" aria-label="Parts of this file">
<p>One module in one file, to carry along. It asks nothing of any network. What you practise stays in this browser at most; nothing done here goes into your record, for which you need the site. Names underlined in dots are pages of the site that are not in this file.</p>
<ul>
${own.map((part) => html`<li><a href="#${part.id}">${names.get(part.kind)}</a></li>\n`)}</ul>
${
  sheets.length === 0
    ? undefined
    : html`<details><summary>Its hazards, tools and substances</summary>
<ul>
${sheets.map((part) => html`<li><a href="#${part.id}">${raw(part.title)}</a></li>\n`)}</ul>
</details>
`
}</nav>
<main id="s_main" tabindex="-1">
${parts.map(({ id, html: content }) => html`<div class="file-part" id="${id}" data-part>\n${raw(content)}</div>\n`)}</main>
${raw(colophon)}
</body>
</html>
`.text;
}

/** The parts that are the module's own; the others are called by their titles. */
const names: ReadonlyMap<PageKind, string> = new Map([
  ["module", t`Sheet`],
  ["bench", t`At the bench`],
  ["order", t`Order of steps`],
  ["practice", t`Practise the order`],
  ["dry-run", t`Perform it on paper`],
  ["quiz", t`Quiz`],
]);
