import type { Cell } from "../../cells/cell";
import type { Stated } from "../../cells/stated";
import { LIMITED_MEASURES } from "../../workbook/audit/limits/limit-sets";
import { LIMITS } from "../../workbook/audit/limits/limits";
import { TABLE } from "../../workbook/audit/limits/places";
import { bedCans } from "../../workbook/bed/bed-cans";
import { type CellsOf, listOf, textOf } from "../../workbook/bed/cells-of";
import { plainNumber } from "../looks/cells/shown";

const [MEASURE_COLUMN, YEAR_COLUMN] = [1, 6];

const isTyped = (cell: Cell) => cell !== null && cell !== "";
const shown = (cell: Cell): string => (typeof cell === "number" ? plainNumber(cell) : String(cell ?? ""));

/** The set of limits, and the year of each limit's source as the workbook gives it. */
function limitLine(cells: CellsOf, valueAt: (sheet: string, row: number, column: number) => Stated): string {
  const years = LIMITED_MEASURES.map((_, index) => {
    const at = (column: number) => valueAt(LIMITS.name, TABLE + index, column);
    return `${at(MEASURE_COLUMN)} ${at(YEAR_COLUMN) || "none given"}`;
  });
  return `Limits: set "${textOf(cells, "Limit_Set")}"; limits of the owner's own go before it. Year of each source: ${years.join("; ")}.`;
}

/** Each row of cans in a line, with its place where one is typed. */
function canLines(cells: CellsOf): string[] {
  const typed = cells("Cans_Readings") ?? [];
  const { rows, columns } = bedCans(cells);
  const [across, along] = [listOf(cells, "Cans_Across_m"), listOf(cells, "Cans_Along_m")];
  const places = columns.map((column) => shown(across[column] ?? null)).filter((place) => place !== "");
  const lines = rows.map((row) => {
    const place = isTyped(along[row] ?? null) ? `, ${shown(along[row]!)} m along` : "";
    return `Row ${row + 1}${place}: ${columns.map((column) => shown(typed[row]![column]!) || "blank").join(", ")}`;
  });
  return [...(places.length > 0 ? [`Cans across [m]: ${places.join(", ")}`] : []), ...lines];
}

/** Pressures of one time by the number of the head. */
function pressureLine(cells: CellsOf, when: string, name: string): string[] {
  const read = listOf(cells, name).flatMap((cell, index) =>
    isTyped(cell) ? [`head ${index + 1}: ${shown(cell)}`] : [],
  );
  return read.length > 0 ? [`Pressure ${when} the test [kPa]: ${read.join("; ")}`] : [];
}

/** What was typed in the file that figures follow from, a line each: the rows of readings, and limits and pressures. */
export const typedLines = (
  cells: CellsOf,
  valueAt: (sheet: string, row: number, column: number) => Stated,
): { readings: string[]; more: string[] } => ({
  readings: canLines(cells),
  more: [
    limitLine(cells, valueAt),
    ...pressureLine(cells, "before", "Pressure_Before_kPa"),
    ...pressureLine(cells, "after", "Pressure_After_kPa"),
  ],
});
