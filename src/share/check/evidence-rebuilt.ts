import { cellAt, placesOf } from "../../cells/places";
import { absolute } from "../../cells/sheet-area";
import type { Stated } from "../../cells/stated";
import type { CellSpec, Kind } from "../../workbook/form/sheet-spec";
import { WORKBOOK_VERSION } from "../../workbook/version";
import type { FileBook } from "../../xlsx/parts/workbook-file";
import { ourCalls } from "../calls";
import type { Evidence } from "../copy/evidence";
import { MEASURE_FORMAT } from "../copy/evidence-looks";
import { EVIDENCE, type EvidenceRow, type EvidenceRows, evidenceRows } from "../copy/evidence-rows";
import { isAcross, rowHeight, WIDTHS } from "../copy/evidence-sheet";
import { howComputed } from "../copy/how-computed";
import type { TypedInput } from "../copy/input-list";
import { changed, type Finding, saying } from "../finding";
import { readable } from "../looks/cells/shown";
import type { OwnSheet } from "../looks/sheets/own-sheet";
import { sameValue } from "./agreement";

const KINDS: Readonly<Record<EvidenceRow["look"], Kind>> = {
  title: "title",
  heading: "entry",
  text: "entry",
  value: "entry",
  measure: "entry",
};
const FILLED = /^filled by the formula in [A-Z]+\d+$/;
const LAST_COLUMN = "F";
const COLUMNS = [0, 1, 2, 3, 4, 5];

/** The Evidence sheet as it has to be, from what is typed in the file's own sheets now. */
export function rebuiltEvidence(
  book: FileBook,
  evidence: Evidence,
  typed: readonly TypedInput[],
  digest: string,
): EvidenceRows {
  const formulas = evidence.formulas.map((line) => {
    const computed = line.formula === "" && !FILLED.test(line.note) ? howComputed(ourCalls(line.old)) : "";
    return { ...line, note: FILLED.test(line.note) ? line.note : computed };
  });
  const day = typeof evidence.day === "number" ? evidence.day : 0;
  return evidenceRows(book, formulas, typed, { version: WORKBOOK_VERSION, day, digest });
}

function cellFinding(address: string, was: Stated, is: Stated): Finding[] {
  if (sameValue(is, was)) return [];
  const [before, now] = [readable(was), readable(is)];
  return [
    changed(`${EVIDENCE}!${address}`, `says ${now}, and what is in the file gives ${before}`, before, now, "says"),
  ];
}

/** Whether a row is of what was typed, or follows from it alone: told apart where that was changed. */
const firstTyped = ({ names }: EvidenceRows) => names.get("Evidence_Inputs")?.top ?? Number.POSITIVE_INFINITY;

/**
 * Cells of the Evidence sheet other than as rebuilt.
 *
 * @param listed Whether its list of what was typed is told apart elsewhere, since something typed was changed or the list
 *   was sorted
 */
export function evidenceFindings(book: FileBook, rebuilt: EvidenceRows, listed: boolean): Finding[] {
  const sheet = book.sheets.find(({ name }) => name === EVIDENCE);
  if (!sheet) return [];
  const until = listed ? firstTyped(rebuilt) : Number.POSITIVE_INFINITY;
  const cells = rebuilt.rows.flatMap(({ cells }, i) =>
    i + 1 >= until
      ? []
      : COLUMNS.flatMap((j) => {
          const was = cells[j] ?? null;
          const address = cellAt(i + 1, j + 1);
          const cell = sheet.cells.get(address);
          if (cell?.formula !== undefined) {
            return [
              changed(`${EVIDENCE}!${address}`, "holds a formula where a value should be", "", `=${cell.formula}`),
            ];
          }
          return cellFinding(address, was, cell?.error ?? cell?.value ?? null);
        }),
  );
  const names = [...rebuilt.names].flatMap(([name, area]) => {
    const is = book.names.get(name) ?? "nowhere";
    return is.replaceAll("'", "") === absolute(area).replaceAll("'", "") || listed
      ? []
      : [saying("changed", name, `The name ${name} leads to another place.`, absolute(area), is)];
  });
  return [...cells, ...names];
}

/**
 * What the looks of the Evidence sheet are held against.
 *
 * @param listed Lines of what was typed that the sheet has: more than rebuilt where some of it was deleted since
 */
export function evidenceOwn({ rows, names }: EvidenceRows, listed: number): OwnSheet {
  const top = names.get("Evidence_Inputs")?.top ?? rows.length + 1;
  const last = Math.max(rows.length, top + listed - 1);
  const isMoved = listed !== rows.length - top + 1;
  const lowest = Math.min(...rows.slice(top - 1).map(rowHeight));
  const merges = rows.flatMap((row, i) => (isAcross(row) ? [`A${i + 1}:${LAST_COLUMN}${i + 1}`] : []));
  const cells = rows.flatMap((row, i) =>
    row.cells.flatMap((value, j): CellSpec[] =>
      value === null
        ? []
        : [
            {
              at: isAcross(row) && j === 0 ? `A${i + 1}:${LAST_COLUMN}${i + 1}` : cellAt(i + 1, j + 1),
              kind: KINDS[row.look],
              ...(row.look === "measure" && typeof value === "number" && { format: MEASURE_FORMAT }),
            },
          ],
    ),
  );
  const used = rows.flatMap((row, i) =>
    row.cells.flatMap((value, j) => (value === null ? [] : [{ row: i + 1, column: j + 1 }])),
  );
  return {
    name: EVIDENCE,
    cells,
    widths: WIDTHS,
    hidden: new Set(),
    heights: Object.fromEntries(rows.map((row, i) => [i + 1, isMoved && i + 1 >= top ? lowest : rowHeight(row)])),
    merges,
    used,
    places: new Set(placesOf(`A1:${LAST_COLUMN}${last}`)),
    shades: [],
    charts: [],
    checks: [],
    pageEnds: [],
    pagesAcross: 1,
    manyPages: true,
    frozen: { rows: 0, columns: 0 },
    printed: null,
    repeated: null,
  };
}
