import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { cellAt } from "../../../src/cells/places";
import { InputError } from "../../../src/core/errors";
import { checkCopy } from "../../../src/share/check/check-copy";
import { shareCopy } from "../../../src/share/copy/share-copy";
import { fileLooks } from "../../../src/share/looks/file-looks";
import { shownAt } from "../../../src/share/looks/shown-at";
import { type FileBook, openBook } from "../../../src/xlsx/parts/workbook-file";
import { CELL_KINDS } from "./cell-kinds";
import { LOOK_KINDS } from "./kinds";
import { forged } from "./outcome";

const SHEETS = ["Report", "Results"];
/** A CSV of each sheet, its cells as they are shown, every text in quotes (LibreOffice's help, "Filter Options for CSV"). */
const CSV = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,true,true,true,false,false,-1";

/** The cells of a CSV as RFC 4180 writes them. */
function cellsOf(csv: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain = "", end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\n]*))(,|\n|$)/g)) {
    rows.at(-1)!.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === "\n") rows.push([]);
    if (end === "") break;
  }
  return rows;
}

const plain = (text: string) => text.replace(/\s+/g, " ").trim();

/** Where LibreOffice shows another text than the check reads, of the sheets that an officer reads first. */
function differences(book: FileBook, sheet: string, csv: string): string[] {
  const shown = cellsOf(csv);
  const looks = fileLooks(book);
  const cells = book.sheets.find(({ name }) => name === sheet)!.cells;
  return shown.flatMap((line, row) =>
    line.flatMap((theirs, column) => {
      const address = cellAt(row + 1, column + 1);
      if (!cells.has(address)) return [];
      const area = { sheet, top: row + 1, left: column + 1, bottom: row + 1, right: column + 1 };
      const ours = shownAt(book, area, looks);
      return plain(ours) === plain(theirs) ? [] : [`${sheet}!${address}: LibreOffice "${theirs}", the check "${ours}"`];
    }),
  );
}

/** Compares what the check says that forged copies show with what LibreOffice shows, cell by cell. */
async function shown(): Promise<void> {
  const copy = await shareCopy(new Uint8Array(readFileSync("templates/example-audit.xlsx")), new Date(2026, 10, 25));
  const kinds = [...LOOK_KINDS, ...CELL_KINDS].filter(({ kind }) => /format|text|colour|font|value/.test(kind));
  const every = Number(process.argv[2] ?? 1);
  const files: { kind: string; file: Uint8Array }[] = [];
  for (const forgery of kinds.filter((_, index) => index % every === 0)) {
    const file = forged(copy, forgery);
    try {
      await checkCopy(file);
      files.push({ kind: forgery.kind, file });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
  }
  const folder = mkdtempSync(join(tmpdir(), "canfall-shown-"));
  files.forEach(({ file }, index) => {
    writeFileSync(join(folder, `${index}.xlsx`), file);
  });
  const names = files.map((_, index) => join(folder, `${index}.xlsx`));
  execFileSync("soffice", [
    `-env:UserInstallation=file://${folder}/profile`,
    "--headless",
    "--convert-to",
    CSV,
    "--outdir",
    join(folder, "out"),
    ...names,
  ]);
  const made = new Set(readdirSync(join(folder, "out")));
  let [compared, other] = [0, 0];
  files.forEach(({ kind, file }, index) => {
    const book = openBook(file);
    for (const sheet of SHEETS.filter((one) => made.has(`${index}-${one}.csv`))) {
      compared += 1;
      const found = differences(book, sheet, readFileSync(join(folder, "out", `${index}-${sheet}.csv`), "utf8"));
      if (found.length > 0) other += 1;
      for (const one of found.slice(0, 5)) console.log(`${kind}: ${one}`);
    }
  });
  rmSync(folder, { recursive: true });
  console.log(
    `${files.length} forged copies that are not refused, ${compared} sheets: ${other} show other text than the check says`,
  );
}

shown();
