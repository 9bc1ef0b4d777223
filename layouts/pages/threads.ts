/** The thread chart: every size that is known, by series. */
import { inLanguage, t } from "../../src/engine/words.ts";
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
export interface Chart {
  readonly id: string;
  readonly title: string;
  readonly series: Series;
  readonly rows: readonly { readonly size: ThreadSize; readonly found: ThreadDimensions }[];
}

const from: Address = { kind: "plain", id: "sums/threads" };

export const threadChartTitle = t`Thread chart`;

/** In the order in which they stand on the page. */
export const threadCharts = (): Chart[] => allSeries().flatMap(chartsOf);

export function threadsPage({ site: { programme }, assets }: Book): string {
  const charts = threadCharts();
  return frame({
    address: from,
    title: threadChartTitle,
    programme,
    assets,
    description: t`Threads by series: diameter, pitch, threads per inch, minor diameter, tapping drill, clearance hole.`,
    main: html`<div class="sheet thread-chart">
<header class="sheet-head"><h1>${threadChartTitle}</h1>
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
  UNC: t`UNC, Unified coarse`,
  UNF: t`UNF, Unified fine`,
  BA: t`BA, British Association`,
  BSW: t`BSW, Whitworth`,
  BSF: t`BSF, British fine`,
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
    { id: "metric-coarse", title: t`ISO metric, coarse`, series, rows: coarse! },
    { id: "metric-fine", title: t`ISO metric, fine`, series, rows: fine! },
  ];
}

function chartSection({ id, title, series, rows }: Chart): Html {
  const hasHoles = rows.some(({ found }) => found.clearanceHole !== undefined);
  const { tapDrill, source } = rows[0]!.found;
  const [profile] = source.split(";");
  const columns = columnsOf(rows, series.name === "ISO metric");
  const holes = hasHoles ? t` Clearance hole: medium, ISO 273.` : "";
  return html`<section class="chart" aria-labelledby="${id}">
<h2 id="${id}">${title}</h2>
<table class="chart-table">
<thead><tr><th scope="col">Thread</th>${columns.map(({ name, isAside }) => html`<th scope="col"${asideClass(isAside)}>${name}</th>`)}</tr></thead>
<tbody>
${rows.map(({ size }, at) => chartRow(size, columns, at))}</tbody>
</table>
<p class="small">Flanks ${series.angle}°. ${profile}. Tapping drill: ${tapDrill.rule}.${holes}</p>
</section>
`;
}

interface Column {
  readonly name: Html | string;
  /** What a narrow screen leaves out. */
  readonly isAside: boolean;
  readonly cells: readonly string[];
}

/** A column in which no row has a figure is left out. Of a metric thread few count the threads per inch. */
function columnsOf(rows: Chart["rows"], isMetric: boolean): Column[] {
  const figures: readonly (readonly [
    name: Html | string,
    figures: readonly (number | undefined)[],
    isAside?: boolean,
  ])[] = [
    [html`Dia&shy;meter`, rows.map(({ size }) => size.diameterMm)],
    [t`Pitch`, rows.map(({ size }) => size.pitchMm)],
    [
      t`Per inch`,
      rows.map(({ size }) => size.tpi ?? Number((mmPerInch / size.pitchMm).toFixed(1))),
      isMetric,
    ],
    [t`Minor`, rows.map(({ found }) => found.minorDiameterMm)],
    [t`Tap drill`, rows.map(({ found }) => found.tapDrill.diameterMm)],
    [t`Hole`, rows.map(({ found }) => found.clearanceHole?.medium)],
  ];
  return figures
    .filter(([, column]) => column.some((figure) => figure !== undefined))
    .map(([name, column, isAside = false]) => ({ name, cells: alignedCells(column), isAside }));
}

/** Thousandths of a millimetre are as fine as the standards print. */
const mostDecimals = 3;
/** So that 1.5875, which is a little less in binary, is 1.588. */
const binaryNoise = 1e-9;

/** All with as many decimals as one of them needs, so that points stand below one another. */
function alignedCells(column: readonly (number | undefined)[]): string[] {
  const figures = column.map((figure) => figure && figure + binaryNoise);
  const needed = figures.map(
    (figure) => String(Number((figure ?? 0).toFixed(mostDecimals))).split(".")[1] ?? "",
  );
  const decimals = Math.max(...needed.map((digits) => digits.length));
  return figures.map((figure) => (figure === undefined ? "—" : inLanguage(figure.toFixed(decimals))));
}

function chartRow({ designation }: ThreadSize, columns: readonly Column[], at: number): Html {
  return html`<tr><th scope="row">${withoutSeries(designation)}</th>${columns.map(({ cells, isAside }) => html`<td${asideClass(isAside)}>${cells[at]}</td>`)}</tr>
`;
}

const asideClass = (isAside: boolean): Html | undefined => (isAside ? html` class="aside"` : undefined);

/** The heading names the series. */
const withoutSeries = (designation: string): string => designation.replace(/ (?:in )?(?:UN[CF]|BS[WF])$/, "");
