import { Workbook } from "@cj-tech-master/excelts";
import { installChartSupport } from "@cj-tech-master/excelts/chart";
import { strFromU8, unzipSync } from "fflate";
import { fromBase64 } from "../../src/hosts/base64";

const DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

/** A file whose sheet Cost holds a chart, Plan a chart and a picture, and Notes neither. */
export async function chartFile(): Promise<Uint8Array> {
  installChartSupport();
  const workbook = new Workbook();
  const image = workbook.addImage({ buffer: fromBase64(DOT), extension: "png" });
  for (const name of ["Cost", "Plan", "Notes"]) {
    const sheet = workbook.addWorksheet(name);
    sheet.getCell("A1").value = 12;
    sheet.getCell("A2").value = { formula: "A1*2", result: 24 };
    const series = [{ name: "water", values: `'${name}'!$A$1:$A$2` }];
    if (name !== "Notes") sheet.addChart({ type: "bar", barDir: "col", title: `Chart of ${name}`, series }, "C1:H12");
    if (name === "Plan") sheet.addImage(image, { tl: { col: 1, row: 20 }, ext: { width: 30, height: 30 } });
  }
  workbook.definedNames.add("Cost!$A$1", "Water_Now");
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

/** The parts of a file as texts. */
export const partsOf = (file: Uint8Array): Record<string, string> =>
  Object.fromEntries(Object.entries(unzipSync(file)).map(([name, bytes]) => [name, strFromU8(bytes)]));

/** What each chart of a file says, in its title. */
export const chartTitles = (file: Uint8Array): string[] =>
  Object.entries(partsOf(file)).flatMap(([name, xml]) =>
    /^xl\/charts\/chart\d+\.xml$/.test(name) ? [/Chart of \w+/.exec(xml)?.[0] ?? "none"] : [],
  );
