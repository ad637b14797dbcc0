import { Workbook as File } from "@cj-tech-master/excelts";
import { unzipSync } from "fflate";
import { fromBase64 } from "../../src/hosts/base64";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { storedFormula } from "../../src/xlsx/desk-file/formula";
import type { Workbook } from "./fake-excel-workbook";

/** What may become of the names of a file whose sheets are inserted; nobody promises the first. */
export type Arrival = "workbook" | "sheet" | "lost" | "missing";

function arrive(workbook: Workbook, name: string, reference: string, sheet: string): void {
  if (workbook.arrival === "workbook") workbook.names.set(name, `=${reference}`);
  if (workbook.arrival === "sheet") workbook.sheet(sheet)!.names.set(name, `=${reference}`);
  if (workbook.arrival === "lost") workbook.names.set(name, `=#REF!${reference.slice(reference.indexOf("!") + 1)}`);
}

/** Whether a file holds charts. */
export const chartsIn = (base64: string): boolean =>
  Object.keys(unzipSync(fromBase64(base64))).some((part) => part.startsWith("xl/charts/"));

/** A formula as Excel leaves it where it takes the sheets of a file for links to that file. */
const linked = <T>(input: T): T | string =>
  typeof input === "string" && input.startsWith("=") ? input.replace(/'?(\w+)'?!/g, "'[Book1.xlsx]$1'!") : input;

/** Inserts the sheets of a file at the end; a name of a sheet that is taken gets a number, as Excel does. */
export async function insertFile(workbook: Workbook, base64: string): Promise<string[]> {
  workbook.inserted.push(base64);
  const { sheets, names } = (await XlsxFile.open(fromBase64(base64))).book();
  const ids = sheets.slice(0, workbook.failsAfter ?? sheets.length).map(({ name, cells, unlocked }) => {
    const sheet = workbook.add(workbook.sheet(name) ? `${name} (2)` : name);
    for (const { row, column, input } of cells) sheet.set(row, column, workbook.links ? linked(input) : input);
    if (unlocked) sheet.protection = { options: { allowFormatCells: false } };
    for (const place of unlocked ?? []) sheet.unlocked.add(place.replace(" ", ","));
    return sheet.id;
  });
  for (const { name, reference } of names) arrive(workbook, name, reference, sheets.at(-1)!.name);
  return ids;
}

/** The workbook as a file. */
export async function fileOf(workbook: Workbook): Promise<Uint8Array> {
  const file = new File();
  for (const { name, cells, protection } of workbook.sheets) {
    const sheet = file.addWorksheet(name);
    for (const [place, { input }] of cells) {
      const [row, column] = place.split(",").map(Number) as [number, number];
      const formula = typeof input === "string" && input.startsWith("=");
      sheet.getCell(row + 1, column + 1).value = formula ? { formula: storedFormula(input) } : input;
    }
    if (protection) await sheet.protect(protection.password);
  }
  for (const [name, formula] of workbook.names) file.definedNames.add(formula.slice(1), name);
  return new Uint8Array(await file.xlsx.writeBuffer());
}
