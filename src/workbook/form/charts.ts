import type { Worksheet } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { absolute } from "../../cells/places";
import type { ChartSpec } from "./sheet-spec";

const LINE_POINTS = 2;
const TITLE_SIZE = 1200;
const DAYS = "yyyy-mm";
const GRID = "#d9d9d9";
const MARKERS = ["circle", "square", "triangle", "diamond"] as const;

const text = (words: string, size: number) => ({
  paragraphs: [{ runs: [{ text: words, properties: { size, bold: true } }] }],
});
const axis = (title: string) => ({
  title,
  minorTickMark: "none" as const,
  majorTickMark: "outside" as const,
  majorGridlinesStyle: { border: GRID },
});

/** Puts charts on a sheet; they follow its cells in any spreadsheet program. */
export function writeCharts(sheet: Worksheet, charts: readonly ChartSpec[]): void {
  if (charts.length > 0) installChartSupport();
  const at = (range: string) => `'${sheet.name}'!${absolute(range)}`;
  for (const { over, type, title, axes, series, stacked, days } of charts) {
    sheet.addChart(
      {
        type,
        title: text(title, TITLE_SIZE),
        ...(type === "bar" && { barDir: "col" as const, grouping: stacked ? ("stacked" as const) : "clustered" }),
        ...(type === "bar" && stacked && { overlap: 100 }),
        ...(type === "scatter" && { scatterStyle: "lineMarker" as const }),
        displayBlanksAs: "gap",
        plotVisOnly: false,
        showLegend: series.length > 1,
        legendPosition: "b",
        categoryAxis: { ...axis(axes[0]), ...(days && { numFmt: DAYS, numFmtLinked: false }) },
        valueAxis: axis(axes[1]),
        series: series.map(({ name, across, values, colour, apart }, index) => ({
          name: name.startsWith("=") ? { formula: at(name.slice(1)) } : name,
          values: at(values),
          ...(type === "scatter" ? { xValues: at(across) } : { categories: at(across) }),
          ...(type === "bar"
            ? { fill: colour }
            : {
                ...(apart ? { spPr: { line: { noFill: true } } } : { line: colour, lineWidth: LINE_POINTS }),
                marker: { symbol: MARKERS[index % MARKERS.length]!, size: 6, fill: colour },
              }),
        })),
      },
      over,
    );
  }
}
