import { SHEET } from "./pieces";
import type { WideKind } from "./wide";
import {
  altered,
  array,
  cellAt,
  formulas,
  lastRow,
  merges,
  noChecks,
  pictureBetween,
  pictureOf,
  rows,
  times,
} from "./wide-pieces";

const USUAL_ROW = 'defaultRowHeight="15"';

/** Files that hold something at the far end of a sheet, or more of it than a grid can show. */
export const FAR: readonly WideKind[] = [
  ["a note at the far end", "opens", () => altered(["xl/comments1.xml", 'ref="A3"', 'ref="XFD1048576"'])],
  ["a row at the far end", "opens", () => altered(lastRow(' ht="30" customHeight="1"'))],
  ["a cell at the far end", "refused", () => altered(cellAt("XFD1048576"))],
  ["a check of a column of 450,000 rows", "opens", () => altered(cellAt("A450000"))],
  ["a cell in the last column", "opens", () => altered(cellAt("XFD20"))],
  [
    "twenty thousand cells in the last column",
    "opens",
    () => altered(rows(20000, (i) => `<c r="XFD${i}"><v>7</v></c>`)),
  ],
  [
    "styled rows to the last column",
    "opens",
    () => altered(rows(2000, (i) => `<c r="XFD${i}"><v>7</v></c>`, ' s="5" customFormat="1"')),
  ],
  [
    "hidden rows and a picture far below",
    "opens",
    () =>
      altered(
        rows(30000, (i) => `<c r="A${i}"><v>1</v></c>`, ' hidden="1"'),
        pictureBetween([1, 900000], [2, 1000000]),
      ),
  ],
  ["a picture far out of the sheet", "opens", () => altered(pictureBetween([1, 1e15], [2, 2e15]))],
  ["a picture over the whole sheet", "opens", () => altered(pictureBetween([0, 0], [16383, 1048575]))],
  ["a picture of endless size", "opens", () => altered(pictureOf("999999999999999999"))],
  [
    "rows of no height under a picture",
    "opens",
    () => altered([SHEET, USUAL_ROW, 'defaultRowHeight="0"'], pictureOf("900000")),
  ],
  [
    "columns of less than no width under a picture",
    "opens",
    () => altered([SHEET, USUAL_ROW, `defaultColWidth="-0.714285714" ${USUAL_ROW}`], pictureOf("900000")),
  ],
  [
    "rows and columns of an endless usual size",
    "opens",
    () => altered([SHEET, USUAL_ROW, 'defaultRowHeight="1e9" defaultColWidth="1e9"']),
  ],
  [
    "nearly all rows and columns frozen",
    "opens",
    () => altered([SHEET, "<selection", '<pane xSplit="16383" ySplit="1048575" state="frozen"/><selection']),
  ],
  ["arrays that fill too much together", "refused", () => altered(rows(50, (i) => array(`A${i}:B${i + 99999}`)))],
  ["a merge of two hundred thousand cells", "opens", () => altered(merges('<mergeCell ref="A100:A200099"/>'))],
  [
    "thirty thousand merges",
    "opens",
    () => altered(merges(times(30000, (i) => `<mergeCell ref="F${100 + i}:G${100 + i}"/>`))),
  ],
  [
    "formulas over the whole sheet",
    "opens",
    () => altered(formulas(500, () => "SUM($A$1:$A$99)+COUNTA($C$1:$XFD$1048576)")),
  ],
  [
    "counts of whole columns and a cell far below",
    "refused",
    () =>
      altered(
        noChecks,
        formulas(20, (i) => `COUNTIF($C:$C,'Bed 7'!A${i})`),
        cellAt("A1048576"),
      ),
  ],
  [
    "a cell far below",
    "opens",
    () =>
      altered(
        noChecks,
        formulas(1, () => "SUM($C:$C)"),
        cellAt("A1048576"),
      ),
  ],
  ["a cell at the far end of a bare sheet", "opens", () => altered(noChecks, cellAt("XFD1048576"))],
  ["counts of a column in each of its rows", "opens", () => altered(formulas(4000, (i) => `COUNTIF($C:$C,A${i})`))],
  [
    "a data table over the whole sheet",
    "opens",
    () =>
      altered(
        rows(
          1,
          (i) => `<c r="A${i}"><f t="dataTable" ref="A${i}:XFD1048576" dt2D="1" dtr="1" r1="A2" r2="A3"/><v>1</v></c>`,
        ),
      ),
  ],
  [
    "page breaks in every row",
    "opens",
    () =>
      altered([
        SHEET,
        /<rowBreaks.*<\/rowBreaks>/,
        `<rowBreaks count="20000" manualBreakCount="20000">${times(20000, (i) => `<brk id="${i + 1}" max="16383" man="1"/>`)}</rowBreaks>`,
      ]),
  ],
];
