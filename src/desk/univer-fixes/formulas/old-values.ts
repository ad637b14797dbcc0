import {
  ArrayValueObject,
  BaseReferenceObject,
  FORMULA_REF_TO_ARRAY_CACHE,
  FormulaRuntimeService,
  type Interpreter,
} from "@univerjs/preset-sheets-core";
import type { Fix } from "../fix";

type Lines = ReturnType<ArrayValueObject["getArrayValue"]>;
type Range = ReturnType<BaseReferenceObject["getRangePosition"]>;

/** What the grid keeps of the cell that it calculates. */
interface Running {
  currentUnitId: string;
  currentSubUnitId: string;
  currentRow: number;
  currentColumn: number;
  setRuntimeData(value: ReturnType<Interpreter["execute"]>): void;
  setRuntimeFeatureCellData(feature: string, cells: unknown): void;
  reset(): void;
}

/** What was read of ranges in the running calculation, by their sheet and then by their address. */
const read = new Map<string, Map<string, { range: Range; lines: Lines }>>();
let anew = 0;

const placeOf = (unit: string, sheet: string) => `${unit} ${sheet}`;
const isOneCell = ({ startRow, endRow, startColumn, endColumn }: Range) =>
  startRow === endRow && startColumn === endColumn;

/** Reads cells as they are now, whatever a calculation that goes on has read before. */
export function readAnew<T>(work: () => T): T {
  anew += 1;
  try {
    return work();
  } finally {
    anew -= 1;
  }
}

/** Forgets the ranges that hold a cell whose value has come. */
function forget({ currentUnitId, currentSubUnitId, currentRow: row, currentColumn: column }: Running): void {
  const ofSheet = read.get(placeOf(currentUnitId, currentSubUnitId));
  for (const [address, { range }] of ofSheet ?? []) {
    const { startRow, endRow, startColumn, endColumn } = range;
    if (row >= startRow && row <= endRow && column >= startColumn && column <= endColumn) ofSheet!.delete(address);
  }
}

/** Some functions change the lines that they are given, such as SORT: each gets its own. */
const copyOf = (lines: Lines, place: { unitId: string; sheetId: string; row: number; column: number }) =>
  ArrayValueObject.create({
    calculateValueList: lines.map((line) => [...line]),
    rowCount: lines.length,
    columnCount: lines[0]?.length ?? 0,
    ...place,
  });

const running = FormulaRuntimeService.prototype as unknown as Running;

/** A range that is read again is what it was, until one of its cells gets another value. */
export const oldValues: Fix = {
  name: "old-values",
  wrong:
    "To find what depends on what, the grid evaluates references such as A1:INDEX(A:A,B11) before it calculates anything, and keeps what it read: formulas then see the old value of such a cell.",
  seen: "0.25.1",
  members: () => [
    ...["set", "clear"].map((name): [string, object, string] => [
      "FORMULA_REF_TO_ARRAY_CACHE",
      FORMULA_REF_TO_ARRAY_CACHE,
      name,
    ]),
    ["BaseReferenceObject", BaseReferenceObject.prototype, "toArrayValueObject"],
    ...["setRuntimeData", "reset", "setRuntimeFeatureCellData"].map((name): [string, object, string] => [
      "FormulaRuntimeService",
      running,
      name,
    ]),
  ],
  mend() {
    const { toArrayValueObject } = BaseReferenceObject.prototype;
    const { setRuntimeData, setRuntimeFeatureCellData, reset } = running;
    const { clear } = FORMULA_REF_TO_ARRAY_CACHE;
    FORMULA_REF_TO_ARRAY_CACHE.set = () => {};
    FORMULA_REF_TO_ARRAY_CACHE.clear = function () {
      read.clear();
      clear.call(this);
    };
    running.reset = function () {
      read.clear();
      reset.call(this);
    };
    running.setRuntimeData = function (value) {
      setRuntimeData.call(this, value);
      const filling = value.isReferenceObject() || (value as ArrayValueObject).isArray();
      if (filling && !isOneCell((value as ArrayValueObject).getRangePosition())) read.clear();
      else forget(this);
    };
    running.setRuntimeFeatureCellData = function (...given) {
      setRuntimeFeatureCellData.apply(this, given);
      read.clear();
    };
    BaseReferenceObject.prototype.toArrayValueObject = function (useCache = true) {
      const range = this.getRangePosition();
      if (!useCache || anew > 0 || isOneCell(range)) return toArrayValueObject.call(this, useCache);
      const [unitId, sheetId] = [this.getUnitId(), this.getSheetId()];
      const { startRow, endRow, startColumn, endColumn } = range;
      const place = placeOf(unitId, sheetId);
      const ofSheet = read.get(place) ?? new Map();
      read.set(place, ofSheet);
      const address = [startRow, endRow, startColumn, endColumn].join(" ");
      const known = ofSheet.get(address);
      if (known) return copyOf(known.lines, { unitId, sheetId, row: startRow, column: startColumn });
      const array = toArrayValueObject.call(this, useCache);
      ofSheet.set(address, { range, lines: array.getArrayValue().map((line) => [...line]) });
      return array;
    };
  },
};
