import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { cellAt, firstCell } from "../../src/cells/places";
import { addressParts } from "../../src/cells/sheet-area";
import type { Stated } from "../../src/cells/stated";
import { buildWorkbook, type Entries, namesOf, type Results } from "../../src/workbook/form/build";
import type { SheetSpec } from "../../src/workbook/form/sheet-spec";
import type { FileCell } from "../../src/xlsx/parts/file-cell";
import { type FileBook, openBook } from "../../src/xlsx/parts/workbook-file";
import { formulaResults } from "./formula-results";
import { converted } from "./libreoffice";
import { type Office, runningOffice } from "./offices";
import { plantedResults } from "./planted";

/** Sheet, column and row from 0, and lines of values from there. */
type Block = [sheet: string, column: number, row: number, lines: Stated[][]];
type Area = [sheet: string, left: number, top: number, right: number, bottom: number];
type Found = Stated | { error: string };

interface Job {
  open?: string;
  type: Block[];
  areas: Area[];
}

interface Answer {
  logical: typeof logical;
  found: Found[][][][];
}

const PROGRAM = join(import.meta.dirname, "recalculate.py");

const NO_CELL: FileCell = { value: null, given: new Map(), start: 0, end: 0 };

const isFormula = ({ formula, kind }: FileCell) => formula !== undefined || kind !== undefined;

/** Of formulas that gave 1 or 0 in files before, whether they show TRUE or FALSE. */
let logical: Record<string, boolean> = {};

/** A workbook's form: all of it but what is typed into its cells. */
const formOf = ({ allNames, sheets }: FileBook): string =>
  JSON.stringify([
    allNames,
    sheets.map(({ name, cells }) => [
      name,
      [...cells]
        .filter(([, cell]) => isFormula(cell))
        .map(([at, { formula, kind, fills }]) => [at, formula, kind, fills]),
    ]),
  ]);

interface Rectangle {
  top: number;
  bottom: number;
  left: number;
  right: number;
}

/** Rectangles that hold every one of these cells and no formula; few, since each is an order to the office. */
function blocksOf(places: string[], cells: ReadonlyMap<string, FileCell>): Rectangle[] {
  const free = ({ top, bottom, left, right }: Rectangle) => {
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) {
        const cell = cells.get(cellAt(row, column));
        if (cell && isFormula(cell)) return false;
      }
    }
    return true;
  };
  const blocks: Rectangle[] = [];
  const sorted = places.map(addressParts).sort((one, other) => one.row - other.row || one.column - other.column);
  for (const { row, column } of sorted) {
    const last = blocks.at(-1);
    const wider = last && {
      top: last.top,
      bottom: row,
      left: Math.min(last.left, column),
      right: Math.max(last.right, column),
    };
    if (wider && free(wider)) blocks[blocks.length - 1] = wider;
    else blocks.push({ top: row, bottom: row, left: column, right: column });
  }
  return blocks;
}

/** What has to be typed to make the entries of `before` those of `after`. */
function differing(before: FileBook, after: FileBook): Block[] {
  return after.sheets.flatMap(({ name, cells }, i) => {
    const was = before.sheets[i]!.cells;
    const value = (from: typeof cells, at: string) => from.get(at)?.value ?? null;
    const places = [...new Set([...was.keys(), ...cells.keys()])].filter(
      (at) => !isFormula(cells.get(at) ?? was.get(at)!) && value(was, at) !== value(cells, at),
    );
    return blocksOf(places, cells).map(({ top, bottom, left, right }): Block => {
      const lines = Array.from({ length: bottom - top + 1 }, (_, down) =>
        Array.from({ length: right - left + 1 }, (_, along) => value(cells, cellAt(top + down, left + along))),
      );
      return [name, left - 1, top - 1, lines];
    });
  });
}

function areasOf({ sheets }: FileBook): Area[] {
  return sheets.flatMap(({ name, cells }): Area[] => {
    const places = [...cells].filter(([, cell]) => isFormula(cell)).map(([at]) => addressParts(at));
    if (places.length === 0) return [];
    const [rows, columns] = [places.map(({ row }) => row - 1), places.map(({ column }) => column - 1)];
    return [[name, Math.min(...columns), Math.min(...rows), Math.max(...columns), Math.max(...rows)]];
  });
}

function resultsOf({ sheets }: FileBook, areas: Area[], found: Found[][][]): Results {
  const results = new Map<string, string | number | boolean>();
  for (const [index, [sheet, left, top]] of areas.entries()) {
    const { cells } = sheets.find(({ name }) => name === sheet)!;
    for (const [i, line] of found[index]!.entries()) {
      for (const [j, one] of line.entries()) {
        const at = cellAt(top + i + 1, left + j + 1);
        const cell = cells.get(at);
        if (!cell || !isFormula(cell)) continue;
        results.set(`${sheet}!${at}`, typeof one === "object" ? (one?.error ?? "") : one);
      }
    }
  }
  return results;
}

const answered = (program: string, asked: unknown): Promise<string> =>
  new Promise((done, fail) => {
    const child = execFile("/usr/bin/python3", [program], { maxBuffer: 2 ** 30 }, (problem, said) =>
      problem ? fail(problem) : done(said),
    );
    child.stdin!.end(JSON.stringify(asked));
  });

/** A workbook that is to be calculated, and how to get its file where it has to be opened. */
interface Given {
  book: FileBook;
  form: string;
  file(): Uint8Array | Promise<Uint8Array>;
}

/** A workbook that differs in entries only from the one before it is not opened: they are typed over the others. */
async function calculatedIn({ port }: Office, given: readonly Given[]): Promise<Results[]> {
  const folder = mkdtempSync(join(tmpdir(), "canfall-"));
  const jobs: Job[] = [];
  for (const [i, { book, form, file }] of given.entries()) {
    const before = given[i - 1];
    const type = before?.form === form ? differing(before.book, book) : null;
    const areas = areasOf(book);
    if (type && !type.some(([, , , lines]) => lines.flat().some((value) => typeof value === "boolean"))) {
      jobs.push({ type, areas });
      continue;
    }
    const path = join(folder, `${i}.xlsx`);
    writeFileSync(path, await file());
    jobs.push({ open: `file://${path}`, type: [], areas });
  }
  const said = JSON.parse(await answered(PROGRAM, { port, logical, jobs })) as Answer;
  rmSync(folder, { recursive: true });
  logical = said.logical;
  return said.found.map((found, i) => resultsOf(given[i]!.book, jobs[i]!.areas, found));
}

/** What each formula of each file gives in LibreOffice, by `Sheet!A1`; every formula is calculated anew. */
export async function recalculated(files: readonly Uint8Array[]): Promise<Results[]> {
  const office = await runningOffice();
  if (!office) return (await converted(files, "xlsx")).map(formulaResults);
  const books = files.map(openBook);
  return calculatedIn(
    office,
    books.map((book, i) => ({ book, form: formOf(book), file: () => files[i]! })),
  );
}

/** The book with these entries; null where one takes the place of a formula. */
function withEntries(book: FileBook, sheets: readonly SheetSpec[], entries: Entries): FileBook | null {
  const copies = new Map(book.sheets.map((sheet) => [sheet.name, { ...sheet, cells: new Map(sheet.cells) }]));
  for (const [name, entry] of Object.entries(entries)) {
    const spec = sheets.find((one) => namesOf(one).has(name));
    if (!spec) throw new Error(`there is no cell named ${name}`);
    const { cells } = copies.get(spec.name)!;
    const { row, column } = addressParts(firstCell(namesOf(spec).get(name)!));
    for (const [i, line] of (typeof entry === "object" ? entry : [[entry]]).entries()) {
      for (const [j, value] of line.entries()) {
        const at = cellAt(row + i, column + j);
        const cell = cells.get(at);
        if (cell && isFormula(cell)) return null;
        cells.set(at, { ...NO_CELL, ...cell, value: value === "" ? null : value });
      }
    }
  }
  return { ...book, sheets: [...copies.values()] };
}

/** The same of workbooks of these sheets, with wrong values planted, by what is typed into each. */
export async function recalculatedEntries(sheets: readonly SheetSpec[], all: readonly Entries[]): Promise<Results[]> {
  const planted = plantedResults(sheets);
  const office = await runningOffice();
  if (!office) return recalculated(await Promise.all(all.map((entries) => buildWorkbook(sheets, entries, planted))));
  const blank = openBook(await buildWorkbook(sheets, {}, planted));
  const form = formOf(blank);
  const given: Given[] = [];
  for (const entries of all) {
    const file = () => buildWorkbook(sheets, entries, planted);
    const book = withEntries(blank, sheets, entries);
    if (book) given.push({ book, form, file });
    else {
      const bytes = await file();
      const opened = openBook(bytes);
      given.push({ book: opened, form: formOf(opened), file: () => bytes });
    }
  }
  return calculatedIn(office, given);
}

/** Workbooks of these sheets with these entries that hold what LibreOffice gives for each formula. */
export async function calculatedFiles(sheets: readonly SheetSpec[], all: readonly Entries[]): Promise<Uint8Array[]> {
  const results = await recalculatedEntries(sheets, all);
  return Promise.all(all.map((entries, i) => buildWorkbook(sheets, entries, results[i]!)));
}
