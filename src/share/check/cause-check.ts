import { InputError } from "../../core/errors";
import { bedCans } from "../../workbook/bed/bed-cans";
import { bedOfWorkbook } from "../../workbook/bed/bed-of-workbook";
import { type BedVerdict, causesOf, verdictOf } from "../../workbook/bed/bed-verdict";
import type { CellsOf } from "../../workbook/bed/cells-of";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { namedValue } from "../copy/evidence-rows";
import { type Finding, saying } from "../finding";

/** The cells behind a name of a file, blank ones as null. */
const cellsOfFile =
  (book: FileBook): CellsOf =>
  (name) => {
    const area = namedArea(book, name);
    if (!area) return null;
    const cells = Array.from({ length: area.bottom - area.top + 1 }, () =>
      Array.from({ length: area.right - area.left + 1 }, () => null as string | number | boolean | null),
    );
    for (const { row, column, cell } of cellsIn(book, area)) {
      if (cell.error === undefined) cells[row - 1]![column - 1] = cell.value;
    }
    return cells;
  };

/** The verdict that the readings and heads of a file give; null where they give none. */
function verdictIn(book: FileBook): BedVerdict | null {
  const cells = cellsOfFile(book);
  const { input, measured } = bedOfWorkbook(cells);
  if (!input) return null;
  try {
    return verdictOf(causesOf(bedCans(cells), { input, measured }));
  } catch (error) {
    if (error instanceof InputError) return null;
    throw error;
  }
}

const shown = (text: string) => (text === "" ? "nothing" : `"${text.slice(0, 90)}"`);

/** What the file says of the cause that its readings and heads do not give; silent where it says itself that it is out of date. */
export function causeFindings(book: FileBook): Finding[] {
  const stamp = String(namedValue(book, "Cause_Stamp") ?? "");
  if (stamp === "" || stamp !== String(namedValue(book, "Inputs_Stamp") ?? "")) return [];
  const verdict = verdictIn(book);
  const kept: [name: string, given: string][] = [
    ["Cause_Text", verdict?.sentence ?? ""],
    ["Cause_Next", verdict?.next ?? ""],
    ["Cause_Measured", verdict?.measured ?? ""],
    ["Cause_Head", String(verdict?.head?.number ?? "")],
  ];
  return kept.flatMap(([name, given]) => {
    const stated = String(namedValue(book, name) ?? "");
    if (stated === given) return [];
    return [
      saying("changed", name, `${name} says ${shown(stated)}; readings and heads give ${shown(given)}.`, given, stated),
    ];
  });
}
