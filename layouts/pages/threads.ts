/** The thread chart: every size that is known, by series. */
import { formatNumber } from "../../src/engine/workshop/format-quantity.ts";
import { deferrals } from "../../src/engine/workshop/grounds.ts";
import { dimensionsOf, type ThreadDimensions } from "../../src/engine/workshop/threads/dimensions.ts";
import { allSeries } from "../../src/engine/workshop/threads/series.ts";
import {
  mmPerInch,
  type Series,
  type SeriesName,
  type ThreadSize,
} from "../../src/engine/workshop/threads/size.ts";
import { type Address, linkTo } from "../../src/model/address.ts";
import type { Book } from "../book.ts";
import { frame } from "../frame.ts";
import { type Html, html } from "../html.ts";

/** A table of the chart. */
interface Chart {
  readonly id: string;
  readonly title: string;
  readonly series: Series;
  readonly rows: readonly { readonly size: ThreadSize; readonly found: ThreadDimensions }[];
}

const from: Address = { kind: "plain", id: "sums/threads" };

export function threadsPage({ site: { programme }, assets }: Book): string {
  const charts = allSeries().flatMap(chartsOf);
  return frame({
    address: from,
    title: "Thread chart",
    programme,
    assets,
    description:
      "Threads by series: diameter, pitch, threads per inch, minor diameter, tapping drill, clearance hole.",
    main: html`<div class="sheet thread-chart">
<header class="sheet-head"><h1>Thread chart</h1>
<p class="summary">Basic sizes in mm. A screw measures a little less than its diameter. Other dimensions, and which thread a measured screw can have, in the <a href="${linkTo(from, { kind: "plain", id: "sums" })}">bench sums</a>.</p></header>
<nav class="sums-list" aria-label="Series"><ul>
${charts.map(({ id, title }) => html`<li><a href="#${id}">${title}</a></li>\n`)}</ul></nav>
<p class="sum-decides">${deferrals.thread} Never re-tap an old hole by a chart alone.</p>
<div class="charts">
${charts.map(chartSection)}</div>
</div>`,
  });
}

const ids: Readonly<Record<SeriesName, string>> = {
  "ISO metric": "metric",
  UNC: "unc",
  UNF: "unf",
  BA: "ba",
  BSW: "bsw",
  BSF: "bsf",
};

const titles: Partial<Record<SeriesName, string>> = {
  UNC: "UNC, Unified coarse",
  UNF: "UNF, Unified fine",
  BA: "BA, British Association",
  BSW: "BSW, Whitworth",
  BSF: "BSF, British fine",
};

/** Only of the metric series are coarse and fine in one. */
function chartsOf(series: Series): Chart[] {
  const rows = series.sizes.map((size) => ({ size, found: dimensionsOf(size) }));
  const id = ids[series.name];
  if (series.name !== "ISO metric") return [{ id, title: titles[series.name] ?? series.name, series, rows }];
  const [coarse, fine] = [false, true].map((isFine) =>
    rows.filter(({ size }) => size.pitchNeeded === isFine),
  );
  return [
    { id: "metric-coarse", title: "ISO metric, coarse", series, rows: coarse! },
    { id: "metric-fine", title: "ISO metric, fine", series, rows: fine! },
  ];
}

function chartSection({ id, title, series, rows }: Chart): Html {
  const hasHoles = rows.some(({ found }) => found.clearanceHole !== undefined);
  const { tapDrill, source } = rows[0]!.found;
  const holes = hasHoles ? " Clearance hole: medium, ISO 273." : "";
  return html`<section class="chart" aria-labelledby="${id}">
<h2 id="${id}">${title}</h2>
<table class="chart-table">
<thead><tr><th scope="col">Thread</th><th scope="col">Dia&shy;meter</th><th scope="col">Pitch</th><th scope="col">Per inch</th><th scope="col">Minor</th><th scope="col">Tap drill</th>${hasHoles && html`<th scope="col">Hole</th>`}</tr></thead>
<tbody>
${rows.map((row) => chartRow(row, hasHoles))}</tbody>
</table>
<p class="small">Flanks ${series.angle}°. ${source}. Tapping drill: ${tapDrill.rule}.${holes}</p>
</section>
`;
}

function chartRow({ size, found }: Chart["rows"][number], hasHoles: boolean): Html {
  const { diameterMm, pitchMm, tpi, designation } = size;
  const hole = found.clearanceHole?.medium;
  const perInch = formatNumber(tpi ?? mmPerInch / pitchMm, 3);
  const cells = [
    formatNumber(diameterMm),
    formatNumber(pitchMm),
    perInch,
    formatNumber(found.minorDiameterMm),
  ];
  return html`<tr><th scope="row">${withoutSeries(designation)}</th>${cells.map((cell) => html`<td>${cell}</td>`)}<td>${formatNumber(found.tapDrill.diameterMm)}</td>${hasHoles && html`<td>${hole === undefined ? "—" : formatNumber(hole)}</td>`}</tr>
`;
}

/** The heading names the series. */
const withoutSeries = (designation: string): string => designation.replace(/ (?:in )?(?:UN[CF]|BS[WF])$/, "");
