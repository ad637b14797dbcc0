import { MOST_COLUMNS, MOST_ROWS, type Rectangle, rectangle } from "./fake-excel-address";
import { chartsIn, insertFile } from "./fake-excel-file";
import { namedItems } from "./fake-excel-names";
import { protection, refuseStructure } from "./fake-excel-protection";
import { range } from "./fake-excel-range";
import { shapes } from "./fake-excel-shapes";
import type { Sheet } from "./fake-excel-sheet";
import { placeOf, type Workbook } from "./fake-excel-workbook";

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
  /** A file opened in a window of its own. */
  opened(base64: string): void;
}

function namesOf(workbook: Workbook, listener: Listener, names: Map<string, string>): Member {
  return namedItems(names, (formula) => {
    const place = placeOf(formula);
    const sheet = place && workbook.sheet(place.sheet);
    return sheet ? range(workbook, listener, sheet, rectangle(place.address)) : null;
  });
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
    names: namesOf(workbook, listener, sheet.names),
    protection: protection(sheet, workbook),
    shapes: shapes(sheet),
    activate: () => undefined,
    delete: () => {
      refuseStructure(workbook);
      workbook.ownUndo.length = 0;
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
        refuseStructure(workbook);
        workbook.ownUndo.length = 0;
        if (workbook.sheet(name))
          throw new Refusal("ItemAlreadyExists", "A resource with the same name already exists.");
        return worksheet(workbook, listener, workbook.add(name));
      },
    },
    names: namesOf(workbook, listener, workbook.names),
    insertWorksheetsFromBase64: async (base64: string) => {
      refuseStructure(workbook);
      if (workbook.refusesFiles) throw new Refusal("GeneralException", "There was an internal error.");
      if (workbook.refusesCharts && chartsIn(base64))
        throw new Refusal("GeneralException", "There was an internal error.");
      const ids = await insertFile(workbook, base64);
      workbook.ownUndo.length = 0;
      listener.changed();
      if (workbook.failsAfter !== null) throw new Refusal("GeneralException", "There was an internal error.");
      return ids;
    },
    application: {
      calculationMode: "Automatic",
      get cultureInfo() {
        return { numberFormat: { numberDecimalSeparator: workbook.separators.decimal } };
      },
      get calculationState() {
        return listener.calculationState();
      },
      createWorkbook: (base64: string) => {
        if (workbook.refusesWindows) throw new Refusal("AccessDenied", "You cannot perform the requested operation.");
        return { id: "1", open: () => listener.opened(base64) };
      },
    },
    getSelectedRange: () => range(workbook, listener, workbook.selection.sheet, workbook.selection.area),
  };
}
