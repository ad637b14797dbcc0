import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { cellAt } from "../../../src/cells/places";
import { InputError } from "../../../src/core/errors";
import { checkCopy } from "../../../src/share/check/check-copy";
import { shareCopy } from "../../../src/share/copy/share-copy";
import { fileLooks } from "../../../src/share/looks/cells/file-looks";
import { shownAt } from "../../../src/share/looks/cells/shown-at";
import { type FileBook, openBook } from "../../../src/xlsx/parts/workbook-file";
import { AUDIT_KINDS } from "./audit-kinds";
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
function differences(book: FileBook, sheet: string, csv: string): Difference[] {
  const shown = cellsOf(csv);
  const looks = fileLooks(book);
  const cells = book.sheets.find(({ name }) => name === sheet)!.cells;
  return shown.flatMap((line, row) =>
    line.flatMap((theirs, column) => {
      const address = cellAt(row + 1, column + 1);
      if (!cells.has(address)) return [];
      const area = { sheet, top: row + 1, left: column + 1, bottom: row + 1, right: column + 1 };
      const ours = shownAt(book, area, looks);
      const place = `${sheet}!${address}`;
      return plain(ours) === plain(theirs)
        ? []
        : [{ place, text: `${place}: LibreOffice "${theirs}", the check "${ours}"` }];
    }),
  );
}

interface Difference {
  place: string;
  text: string;
}

interface Forged {
  kind: string;
  file: Uint8Array;
  /** Cells of which the check says that they are other than they should be. */
  told: ReadonlySet<string>;
  /** Whether it says that the whole file can be read in more than one way. */
  twofold: boolean;
}

/** The forged copies that are not refused. */
async function forgedFiles(every: number): Promise<Forged[]> {
  const copy = await shareCopy(new Uint8Array(readFileSync("templates/example-audit.xlsx")), new Date(2026, 10, 25));
  const files: Forged[] = [];
  for (const forgery of AUDIT_KINDS.filter((_, index) => index % every === 0)) {
    const file = forged(copy, forgery);
    try {
      const { findings, figures } = await checkCopy(file);
      const told = new Set([
        ...findings.map(({ where }) => where),
        ...figures.filter(({ agrees }) => !agrees).map(({ place }) => place),
      ]);
      files.push({ kind: forgery.kind, file, told, twofold: fileLooks(openBook(file)).twofold !== "" });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
    }
  }
  return files;
}

const BATCH = 10;

/** The sheets of files as LibreOffice writes them, by the number of the file and the name of the sheet. */
function written(files: readonly Forged[]): Map<string, string> {
  const sheets = new Map<string, string>();
  for (let first = 0; first < files.length; first += BATCH) {
    const folder = mkdtempSync(join(tmpdir(), "canfall-shown-"));
    const names = files.slice(first, first + BATCH).map(({ file }, index) => {
      writeFileSync(join(folder, `${first + index}.xlsx`), file);
      return join(folder, `${first + index}.xlsx`);
    });
    const out = join(folder, "out");
    const profile = `-env:UserInstallation=file://${folder}/profile`;
    execFileSync("soffice", [profile, "--headless", "--convert-to", CSV, "--outdir", out, ...names], {
      stdio: "ignore",
    });
    for (const name of readdirSync(out)) sheets.set(name.replace(/\.csv$/, ""), readFileSync(join(out, name), "utf8"));
    rmSync(folder, { recursive: true });
  }
  return sheets;
}

/** Compares what the check says that forged copies show with what LibreOffice shows, cell by cell. */
async function shown(): Promise<void> {
  const files = await forgedFiles(Number(process.argv[2] ?? 1));
  const sheets = written(files);
  let [compared, told, untold] = [0, 0, 0];
  files.forEach(({ kind, file, told: places, twofold }, index) => {
    const book = openBook(file);
    const here = SHEETS.filter((one) => sheets.has(`${index}-${one}`));
    compared += here.length;
    const found = here.flatMap((sheet) => differences(book, sheet, sheets.get(`${index}-${sheet}`)!));
    const silent = found.filter(({ place }) => !twofold && !places.has(place));
    told += found.length - silent.length;
    untold += silent.length;
    for (const { place, text } of found.slice(0, 5)) {
      console.log(`${kind}: ${text}${twofold || places.has(place) ? " (the check names this)" : ""}`);
    }
  });
  console.log(
    `${files.length} forged copies that are not refused, ${compared} sheets: LibreOffice shows other text in ${told} cells that the check names and in ${untold} that it does not`,
  );
}

shown();
