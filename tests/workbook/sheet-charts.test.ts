import { strFromU8, unzipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { buildWorkbook } from "../../src/workbook/form/build";
import type { ChartSpec, SheetSpec } from "../../src/workbook/form/sheet-spec";
import { converted } from "../support/libreoffice";

const chart = (type: ChartSpec["type"], over: string): ChartSpec => ({
  over,
  type,
  title: `Depth as a ${type}`,
  axes: ["Month", "Depth [mm a day]"],
  series: [
    { name: "=B1", across: "A2:A4", values: "B2:B4", colour: "#01665e" },
    { name: "rain", across: "A2:A4", values: "C2:C4", colour: "#8c510a" },
  ],
});
const SHEET: SheetSpec = {
  name: "Demand",
  widths: [10],
  cells: [
    { at: "B1", kind: "heading", value: "shrubs" },
    ...[1, 2, 3].flatMap((month) => [
      { at: `A${month + 1}`, kind: "label" as const, value: month },
      { at: `B${month + 1}`, kind: "input" as const, value: month * 2 },
      { at: `C${month + 1}`, kind: "input" as const, value: 7 - month },
    ]),
  ],
  charts: [chart("line", "E1:J12"), chart("bar", "E14:J26"), chart("scatter", "E28:J40")],
};
const charts = (file: Uint8Array) =>
  Object.entries(unzipSync(file)).flatMap(([name, bytes]) =>
    /charts\/chart\d+\.xml$/.test(name) ? [strFromU8(bytes)] : [],
  );

describe("the charts of a sheet", () => {
  let file: Uint8Array;
  let opened: string[];
  beforeAll(async () => {
    file = await buildWorkbook([SHEET], {});
    opened = charts((await converted([file], "xlsx"))[0]!);
  });

  it("point at the cells, so that they follow them", () => {
    for (const xml of charts(file)) {
      expect(xml).toContain("&apos;Demand&apos;!$B$2:$B$4");
      expect(xml).toContain("&apos;Demand&apos;!$C$2:$C$4");
      expect(xml).toContain("&apos;Demand&apos;!$B$1");
      expect(xml).toContain("Depth [mm a day]");
    }
  });

  it("are read by LibreOffice with the values of the cells", () => {
    expect(opened.map((xml) => /<c:(lineChart|barChart|scatterChart)>/.exec(xml)?.[1])).toEqual([
      "lineChart",
      "barChart",
      "scatterChart",
    ]);
    for (const xml of opened) {
      const values = [...xml.matchAll(/<c:(?:val|yVal)>.*?<\/c:(?:val|yVal)>/gs)].map(([part]) =>
        [...part.matchAll(/<c:v>([\d.]+)<\/c:v>/g)].map(([, value]) => Number(value)),
      );
      expect(values).toEqual([
        [2, 4, 6],
        [6, 5, 4],
      ]);
    }
  });

  it("come out the same from the same sheet", async () => {
    expect(charts(await buildWorkbook([SHEET], {}))).toEqual(charts(file));
  });
});
