// Charts of one or more panels as SVG text, the same bytes for the same numbers.
import { axisOf, coordinate, escapeText, textWidth } from "./chart-axis.mjs";
import { legendRows, ROW_HEIGHT } from "./chart-legend.mjs";
import { drawSeries } from "./chart-series.mjs";

const MARGIN = { left: 64, right: 16, bottom: 48 };
const TITLE_HEIGHT = 30;
const PANEL_TITLE = 20;
const GAP = { x: 18, y: 14 };

/**
 * @param {{title: string, describe: string, columns: number, panelWidth: number, panelHeight: number, xLabel: string,
 *   yLabel: string, x: object, y: object, legend?: object[], panels: {title?: string, series: object[]}[]}} chart
 *   axes as `axisOf` takes them, series as `drawSeries` does; all panels share both axes.
 */
export function svgOf(chart) {
  const { columns, panelWidth, panelHeight, panels } = chart;
  const rows = Math.ceil(panels.length / columns);
  const width = MARGIN.left + columns * panelWidth + (columns - 1) * GAP.x + MARGIN.right;
  const legend = legendRows(chart.legend ?? [], width - MARGIN.left - MARGIN.right);
  const titled = panels.some(({ title }) => title) ? PANEL_TITLE : 0;
  const top = TITLE_HEIGHT + legend.rows * ROW_HEIGHT + 8;
  const rowHeight = titled + panelHeight + GAP.y;
  const height = top + rows * rowHeight - GAP.y + MARGIN.bottom;
  const x = axisOf(chart.x, [0, panelWidth]);
  const y = axisOf(chart.y, chart.y.downward ? [0, panelHeight] : [panelHeight, 0]);

  if (textWidth(chart.title, 15) > width - MARGIN.left) throw new Error(`title too long: ${chart.title}`);
  const body = panels.map((panel, n) => {
    const column = n % columns;
    const row = Math.floor(n / columns);
    const left = MARGIN.left + column * (panelWidth + GAP.x);
    const above = top + row * rowHeight + titled;
    const isLowest = n + columns >= panels.length;
    return [
      `<g transform="translate(${left},${above})">`,
      ...(panel.title ? [`<text class="panel" x="0" y="-6">${escapeText(panel.title)}</text>`] : []),
      ...gridOf(x, y, panelWidth, panelHeight, { showX: isLowest, showY: column === 0 }),
      `<g clip-path="url(#panel)">`,
      ...panel.series.flatMap((series) => drawSeries(series, x, y, panelWidth, panelHeight)),
      `</g>`,
      `<rect class="frame" width="${panelWidth}" height="${panelHeight}"/>`,
      `</g>`,
    ].join("\n");
  });
  const middleX = MARGIN.left + (width - MARGIN.left - MARGIN.right) / 2;
  const middleY = top + (height - top - MARGIN.bottom) / 2;
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-labelledby="title describe">`,
    `<title id="title">${escapeText(chart.title)}</title>`,
    `<desc id="describe">${escapeText(chart.describe)}</desc>`,
    `<style>text{font:12px sans-serif;fill:#222}.head{font-size:15px;font-weight:bold}.panel{font-weight:bold}.tick{font-size:11px}.grid{stroke:#e2e2e2}.frame{fill:none;stroke:#888}</style>`,
    `<clipPath id="panel"><rect width="${panelWidth}" height="${panelHeight}"/></clipPath>`,
    `<rect width="${width}" height="${height}" fill="#fff"/>`,
    `<text class="head" x="${MARGIN.left}" y="20">${escapeText(chart.title)}</text>`,
    `<g transform="translate(${MARGIN.left},${TITLE_HEIGHT})">`,
    ...legend.marks,
    `</g>`,
    ...body,
    `<text text-anchor="middle" x="${coordinate(middleX)}" y="${height - 10}">${escapeText(chart.xLabel)}</text>`,
    `<text text-anchor="middle" transform="translate(16,${coordinate(middleY)}) rotate(-90)">${escapeText(chart.yLabel)}</text>`,
    `</svg>`,
  ].join("\n")}\n`;
}

function gridOf(x, y, width, height, { showX, showY }) {
  return [
    ...x.ticks.flatMap(({ at, text }) => [
      `<path class="grid" d="M${at},0V${height}"/>`,
      ...(showX
        ? [`<text class="tick" text-anchor="middle" x="${at}" y="${height + 16}">${text}</text>`]
        : []),
    ]),
    ...y.ticks.flatMap(({ at, text }) => [
      `<path class="grid" d="M0,${at}H${width}"/>`,
      ...(showY
        ? [`<text class="tick" text-anchor="end" x="-6" y="${coordinate(at + 4)}">${text}</text>`]
        : []),
    ]),
  ];
}
