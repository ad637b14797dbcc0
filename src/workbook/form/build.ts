import { Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { columnLetters } from "../../cells/letters";
import { absolute, firstCell, placesOf } from "../../cells/places";
import { writeCharts } from "./charts";
import { writeChecks } from "./checks";
import { hiddenColumns } from "./hidden-columns";
import { rowHeights } from "./row-heights";
import { writeShades } from "./shades";
import type { CellSpec, SheetSpec } from "./sheet-spec";
import { styleOf } from "./style";

const AUTHOR = "Canfall";
const VERSION_DAY = new Date(Date.UTC(2026, 10, 25));
const PAGE_MARGIN_INCHES = 0.5;
const A4 = 9;
const AS_MANY_AS_NEEDED = 0;

/** What a person typed, by the name of the cell or of the rectangle; `""` leaves a cell blank. */
export type Entries = Readonly<Record<string, string | number | readonly (readonly (string | number)[])[]>>;

/** What formulas gave when they were last calculated, by `Sheet!A1`. */
export type Results = ReadonlyMap<string, string | number | boolean>;

function writeCell(sheet: Worksheet, spec: CellSpec, results: Results): void {
  const cell = sheet.getCell(firstCell(spec.at));
  const style = styleOf(spec);
  for (const address of placesOf(spec.at)) sheet.getCell(address).style = style;
  if (spec.at.includes(":")) sheet.mergeCells(spec.at);
  if (spec.formula !== undefined) {
    cell.value = { formula: spec.formula, result: results.get(`${sheet.name}!${cell.address}`) ?? "" };
  } else if (spec.value !== undefined) cell.value = spec.value;
}

function writeSheet(
  book: Workbook,
  spec: SheetSpec,
  results: Results,
  heights: Readonly<Record<number, number>>,
): void {
  const sheet = book.addWorksheet(spec.name, {
    views: [
      spec.frozenRows || spec.frozenColumns
        ? { state: "frozen", xSplit: spec.frozenColumns ?? 0, ySplit: spec.frozenRows ?? 0, showGridLines: false }
        : { state: "normal", showGridLines: false },
    ],
    pageSetup: {
      paperSize: A4,
      orientation: spec.landscape ? "landscape" : "portrait",
      fitToPage: true,
      fitToWidth: spec.pagesAcross ?? 1,
      fitToHeight: spec.pageEnds ? AS_MANY_AS_NEEDED : (spec.pages ?? 1),
      ...(spec.pagesAcross && { pageOrder: "overThenDown" as const }),
      horizontalCentered: true,
      margins: {
        left: PAGE_MARGIN_INCHES,
        right: PAGE_MARGIN_INCHES,
        top: PAGE_MARGIN_INCHES,
        bottom: 0.7,
        header: 0.3,
        footer: 0.3,
      },
      ...(spec.printed && { printArea: spec.printed }),
      ...(spec.frozenRows && { printTitlesRow: `1:${spec.frozenRows}` }),
      ...(spec.repeated && { printTitlesRow: spec.repeated }),
      ...(spec.frozenColumns && { printTitlesColumn: `A:${columnLetters(spec.frozenColumns)}` }),
    },
    headerFooter: { oddFooter: "&L&A&CCanfall&RPage &P of &N" },
  });
  spec.widths.forEach((width, column) => {
    sheet.getColumn(column + 1).width = width;
  });
  for (const column of hiddenColumns(spec)) sheet.getColumn(column).hidden = true;
  for (const [row, height] of Object.entries(heights)) sheet.getRow(Number(row)).height = height;
  for (const cell of spec.cells) writeCell(sheet, cell, results);
  for (const row of spec.pageEnds ?? []) sheet.getRow(row).addPageBreak();
  writeChecks(sheet, spec.checks ?? []);
  writeShades(sheet, spec.shades ?? []);
  writeCharts(sheet, spec.charts ?? []);
}

/** The defined names of a sheet and the rectangles that they are for. */
export function namesOf(spec: SheetSpec): Map<string, string> {
  const cells = spec.cells.flatMap(({ at, name }) => (name ? [[name, firstCell(at)] as const] : []));
  return new Map([...cells, ...Object.entries(spec.areas ?? {})]);
}

function writeNames(book: Workbook, spec: SheetSpec): void {
  const sheet = spec.name.includes(" ") ? `'${spec.name}'` : spec.name;
  for (const [name, range] of namesOf(spec)) book.definedNames.add(`${sheet}!${absolute(range)}`, name);
}

function enter(book: Workbook, specs: readonly SheetSpec[], entries: Entries): void {
  const names = new Map(
    specs.flatMap((spec) => [...namesOf(spec)].map(([name, range]) => [name, { sheet: spec.name, range }] as const)),
  );
  for (const [name, entry] of Object.entries(entries)) {
    const named = names.get(name);
    if (!named) throw new Error(`there is no cell named ${name}`);
    const sheet = book.getWorksheet(named.sheet)!;
    const start = sheet.getCell(firstCell(named.range));
    const lines = typeof entry === "object" ? entry : [[entry]];
    lines.forEach((line, i) => {
      line.forEach((value, j) => {
        const cell = sheet.getCell(Number(start.row) + i, Number(start.col) + j);
        cell.value = value === "" ? null : value;
      });
    });
  }
}

/** A workbook file of these sheets, with what was typed and what its formulas gave. */
export async function buildWorkbook(
  specs: readonly SheetSpec[],
  entries: Entries,
  results: Results = new Map(),
): Promise<Uint8Array> {
  const book = new Workbook();
  Object.assign(book, { creator: AUTHOR, lastModifiedBy: AUTHOR, created: VERSION_DAY, modified: VERSION_DAY });
  book.calcProperties.fullCalcOnLoad = true;
  const heights = rowHeights(specs);
  for (const spec of specs) writeSheet(book, spec, results, heights.get(spec)!);
  for (const spec of specs) writeNames(book, spec);
  enter(book, specs, entries);
  for (const spec of specs) {
    await book.getWorksheet(spec.name)!.protect("", { formatColumns: true, formatRows: true });
  }
  return new Uint8Array(await book.xlsx.writeBuffer());
}
