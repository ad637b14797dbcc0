import { addressOf, type Rectangle } from "./fake-excel-address";
import { Fault } from "./fake-excel-formula";
import { type Listener, type Member, Refusal, worksheet } from "./fake-excel-objects";
import { refuseProtected } from "./fake-excel-protection";
import type { Sheet } from "./fake-excel-sheet";
import type { Workbook } from "./fake-excel-workbook";

/** Of every cell, in points. */
const [WIDTH, HEIGHT] = [48, 15];

function type({ value }: ReturnType<Sheet["cell"]>): string {
  if (value === null) return "Empty";
  if (value instanceof Fault) return "Error";
  return { number: "Double", string: "String", boolean: "Boolean" }[typeof value as "number" | "string" | "boolean"];
}

/** A range as Office.js shows it. */
export function range(workbook: Workbook, listener: Listener, sheet: Sheet, area: Rectangle): Member {
  const at = (part: Rectangle) => range(workbook, listener, sheet, part);
  const grid = <T>(of: (cell: ReturnType<Sheet["cell"]>) => T) =>
    sheet.grid(area, (row, column) => of(sheet.cell(row, column)));
  const stored = (formula: unknown) =>
    typeof formula === "string" && !listener.registered
      ? formula.replace(/CANFALL\.([A-Z.]+)/g, (_, id: string) => `_xldudf_CANFALL_${id.replaceAll(".", "_")}`)
      : formula;
  const anchorInput = (anchor: string) => {
    const [row, column] = anchor.split(",").map(Number);
    return sheet.cell(row!, column!).input;
  };
  return {
    kind: "range",
    area,
    get address() {
      const name = /^\w+$/.test(sheet.name) ? sheet.name : `'${sheet.name.replaceAll("'", "''")}'`;
      return `${name}!${addressOf(area)}`;
    },
    rowIndex: area.row,
    columnIndex: area.column,
    rowCount: area.rows,
    columnCount: area.columns,
    left: area.column * WIDTH,
    top: area.row * HEIGHT,
    get values() {
      return grid(({ value }) => (value instanceof Fault ? value.error : (value ?? "")));
    },
    get valueTypes() {
      return grid(type);
    },
    get formulas(): unknown[][] {
      return grid(({ input, anchor }) => stored(input ?? (anchor ? anchorInput(anchor) : "")));
    },
    get formulasLocal(): unknown[][] {
      const { list } = workbook.separators;
      const local = (part: string, index: number) => (index % 2 === 1 ? part : part.replaceAll(",", list));
      return grid(({ input }) =>
        String(input ?? "")
          .split(/("[^"]*")/)
          .map(local)
          .join(""),
      );
    },
    set formulas(inputs: unknown[][]) {
      if (inputs.length !== area.rows || inputs.some((line) => line.length !== area.columns)) {
        throw new Refusal("InvalidArgument", "The argument is invalid or missing or has an incorrect format.");
      }
      refuseProtected(sheet, area);
      workbook.ownUndo.push(`${sheet.name}!${addressOf(area)}`);
      inputs.forEach((line, r) => {
        line.forEach((input, c) => {
          sheet.set(area.row + r, area.column + c, input as number | string | boolean);
        });
      });
      listener.changed();
    },
    get hasSpill() {
      const spills = grid(({ anchor }) => anchor !== undefined).flat();
      return spills.every((spill) => spill === spills[0]) ? spills[0] : null;
    },
    get worksheet() {
      return worksheet(workbook, listener, sheet);
    },
    getCell: (row: number, column: number) =>
      at({ row: area.row + row, column: area.column + column, rows: 1, columns: 1 }),
    getResizedRange: (rows: number, columns: number) =>
      at({ ...area, rows: area.rows + rows, columns: area.columns + columns }),
    getIntersectionOrNullObject: (other: { area: Rectangle }) => {
      const row = Math.max(area.row, other.area.row);
      const column = Math.max(area.column, other.area.column);
      const rows = Math.min(area.row + area.rows, other.area.row + other.area.rows) - row;
      const columns = Math.min(area.column + area.columns, other.area.column + other.area.columns) - column;
      return rows > 0 && columns > 0 ? at({ row, column, rows, columns }) : null;
    },
    getSpillParentOrNullObject: () => {
      const { anchor } = sheet.cell(area.row, area.column);
      if (!anchor) return null;
      const [row, column] = anchor.split(",").map(Number);
      return at({ row: row!, column: column!, rows: 1, columns: 1 });
    },
    select: () => {
      workbook.selection = { sheet, area };
      listener.selected();
    },
    _KeepReference: () => undefined,
  };
}
