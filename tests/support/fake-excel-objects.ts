import { Fault } from "./fake-excel-formula";
import {
  addressOf,
  MOST_COLUMNS,
  MOST_ROWS,
  type Rectangle,
  rectangle,
  type Sheet,
  type Workbook,
} from "./fake-excel-workbook";

/** An object of Excel's model, its members named as in Office.js. */
export type Member = Record<string, unknown> & { items?: () => Member[] };

/** What Excel answers when a request cannot be met. */
export class Refusal extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

/** What the objects tell the host: who listens, what has changed. */
export interface Listener {
  changed(): void;
  selected(): void;
  listen(event: string, on: boolean): void;
  registered: boolean;
  calculationState(): string;
}

function type({ value }: ReturnType<Sheet["cell"]>): string {
  if (value === null) return "Empty";
  if (value instanceof Fault) return "Error";
  return { number: "Double", string: "String", boolean: "Boolean" }[typeof value as "number" | "string" | "boolean"];
}

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
    rowCount: area.rows,
    columnCount: area.columns,
    get values() {
      return grid(({ value }) => (value instanceof Fault ? value.error : (value ?? "")));
    },
    get valueTypes() {
      return grid(type);
    },
    get formulas(): unknown[][] {
      return grid(({ input, anchor }) => stored(input ?? (anchor ? anchorInput(anchor) : "")));
    },
    set formulas(inputs: unknown[][]) {
      if (inputs.length !== area.rows || inputs.some((line) => line.length !== area.columns)) {
        throw new Refusal("InvalidArgument", "The argument is invalid or missing or has an incorrect format.");
      }
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

function worksheet(workbook: Workbook, listener: Listener, sheet: Sheet): Member {
  const at = (area: Rectangle) => range(workbook, listener, sheet, area);
  return {
    id: sheet.id,
    name: sheet.name,
    getRange: (address?: string) =>
      at(address ? rectangle(address) : { row: 0, column: 0, rows: MOST_ROWS, columns: MOST_COLUMNS }),
    getUsedRangeOrNullObject: () => {
      const used = sheet.used();
      return used && at(used);
    },
    activate: () => undefined,
    delete: () => {
      workbook.remove(sheet);
      listener.changed();
    },
  };
}

/** The root of the model. */
export function root(workbook: Workbook, listener: Listener): Member {
  const registers = Object.fromEntries(
    ["DataChanged", "Calculated"].flatMap((event) => [
      [`_Register${event}Event`, () => listener.listen(event, true)],
      [`_Unregister${event}Event`, () => listener.listen(event, false)],
    ]),
  );
  return {
    worksheets: {
      ...registers,
      items: () => workbook.sheets.map((sheet) => worksheet(workbook, listener, sheet)),
      item: (name: string) => {
        const sheet = workbook.sheet(name);
        if (!sheet) throw new Refusal("ItemNotFound", "The requested resource doesn't exist.");
        return worksheet(workbook, listener, sheet);
      },
      add: (name: string) => {
        if (workbook.sheet(name))
          throw new Refusal("ItemAlreadyExists", "A resource with the same name already exists.");
        return worksheet(workbook, listener, workbook.add(name));
      },
    },
    names: {
      getItemOrNullObject: (name: string) => {
        const area = workbook.names.get(name);
        const sheet = area && workbook.sheet(area.sheet);
        const found = sheet ? range(workbook, listener, sheet, rectangle(area!.address)) : null;
        return area ? { getRangeOrNullObject: () => found } : null;
      },
    },
    application: {
      calculationMode: "Automatic",
      get calculationState() {
        return listener.calculationState();
      },
    },
    getSelectedRange: () => range(workbook, listener, workbook.selection.sheet, workbook.selection.area),
  };
}
