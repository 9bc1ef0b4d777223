/** One HTML file that needs no other: it reads and prints without script. */
import { type Html, html, raw } from "../../layouts/html.ts";

/** What all of them share; a page's own rules follow. */
const style = `body{font:1rem/1.5 "Atkinson Hyperlegible Next",Verdana,sans-serif;margin:2rem auto;max-width:70rem;padding:0 1rem;color:#1d1b16;background:#fbf8f0}
table{border-collapse:collapse;width:100%}
th,td{border-block:1px solid #8a8371;padding:.35rem .6rem;text-align:start;vertical-align:top;font-variant-numeric:tabular-nums}
.wide{overflow-x:auto}ul{margin:0;padding-inline-start:1.1rem}
@media print{body{margin:0;background:none}.wide{overflow:visible}}`;

/** The text of the file. The title is also its heading; `own` are rules of its style. */
export function plainPage(title: string, body: Html, own: string): string {
  return html`<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>${title}</title>
<style>${raw(`${style}\n${own}`)}</style></head>
<body>
<h1>${title}</h1>
${body}</body>
</html>
`.text;
}
