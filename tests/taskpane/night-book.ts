import type { Area } from "../../src/cells/area";
import { boxAddress, boxOf } from "../../src/cells/box";
import type { Input } from "../../src/cells/cell";
import { columnLetters } from "../../src/cells/letters";
import { namesOf } from "../../src/workbook/form/build";
import { DEMAND } from "../../src/workbook/nursery/demand/demand";
import { PROGRAM } from "../../src/workbook/nursery/program/program";
import { START_TIMES } from "../../src/workbook/nursery/start-times/start-times";
import { memoryHost } from "../support/memory-host";

const SHEETS = [DEMAND, PROGRAM, START_TIMES];

/** Where the names of these sheets lead. */
export const PLACES: Record<string, Area> = Object.fromEntries(
  SHEETS.flatMap((spec) => [...namesOf(spec)].map(([name, address]) => [name, { sheet: spec.name, address }])),
);

/** A small nursery: three blocks at 60 mm/h, so that a depth of 1 mm is a minute, 100 L/min each, pump 200 L/min. */
export const SMALL: Record<string, Input[][]> = {
  Program_Month: [[7]],
  Pump_Flow_Lmin: [[200]],
  Program_Windows: [[20 / 24, 22 / 24]],
  Demand_Groups: [["ferns"]],
  Demand_Depths: Array.from({ length: 12 }, (_, month) => [month === 0 ? 90 : 30]),
  Program_Blocks: [
    ["Bed 1", "", 100, 60, 1, 20, "", "", ""],
    ["Bed 2", "", 100, 60, 1, 40, 20, 10, ""],
    ["=Bed 3", "ferns", 100, 60, 1, "", "", "", ""],
  ],
};

/** A workbook in memory with these entries by name; what the sheets calculate is not there. */
export function nightBook(entries: Record<string, Input[][]>) {
  const sheets: Record<string, Record<string, Input>> = Object.fromEntries(SHEETS.map(({ name }) => [name, {}]));
  for (const [name, lines] of Object.entries(entries)) {
    const area = PLACES[name]!;
    const { row, column } = boxOf(area);
    lines.forEach((line, i) => {
      line.forEach((input, j) => {
        const typed = typeof input === "string" && input.startsWith("=") ? `'${input}` : input;
        if (input !== "") sheets[area.sheet]![`${columnLetters(column + j)}${row + i}`] = typed;
      });
    });
  }
  return memoryHost(sheets, PLACES);
}

/** A cell of a named area by its line and column from 0. */
export const cellOf = (name: string, line: number, column: number): Area => {
  const { sheet } = PLACES[name]!;
  const { row, column: first } = boxOf(PLACES[name]!);
  return { sheet, address: boxAddress({ row: row + line, column: first + column, rows: 1, columns: 1 }) };
};
