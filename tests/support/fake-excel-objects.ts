import { MOST_COLUMNS, MOST_ROWS, type Rectangle, rectangle } from "./fake-excel-address";
import { range } from "./fake-excel-range";
import type { Sheet, Workbook } from "./fake-excel-workbook";

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

export function worksheet(workbook: Workbook, listener: Listener, sheet: Sheet): Member {
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
