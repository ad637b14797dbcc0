import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { columnLetters } from "../../src/cells/letters";
import { placesOf } from "../../src/cells/places";
import { addressParts } from "../../src/cells/sheet-area";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { lookOfKind } from "../../src/workbook/form/cell-looks";
import { hiddenColumns } from "../../src/workbook/form/hidden-columns";
import type { CellSpec, SheetSpec } from "../../src/workbook/form/sheet-spec";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";
import { openBook } from "../../src/xlsx/parts/workbook-file";

const SHEETS = [...AUDIT_SHEETS, ...NURSERY_SHEETS];

const edgesOf = ({ at }: CellSpec) => {
  const [first, last = first] = at.split(":").map(addressParts);
  return { row: first!.row, left: first!.column, right: last!.column };
};
const alignOf = ({ kind, align }: CellSpec) => align ?? lookOfKind(kind).alignment?.horizontal;
/** Text starts at the left edge itself, without an indent. */
const startsAtEdge = (cell: CellSpec) => {
  const { alignment } = lookOfKind(cell.kind);
  return alignOf(cell) === "left" && !(alignment?.indent ?? 0);
};

/** Pairs of neighbours of which the left ends and the right begins at the edge between them. */
function runTogether(spec: SheetSpec): string[] {
  const { name } = spec;
  const hidden = new Set(hiddenColumns(spec));
  const cells = spec.cells.filter((cell) => !hidden.has(edgesOf(cell).left));
  const starts = new Map(
    cells.filter(startsAtEdge).map((cell) => [`${edgesOf(cell).row} ${edgesOf(cell).left}`, cell.at]),
  );
  return cells
    .filter((cell) => alignOf(cell) === "right" && cell.kind !== "label")
    .flatMap((cell) => {
      const next = starts.get(`${edgesOf(cell).row} ${edgesOf(cell).right + 1}`);
      return next ? [`${name}: ${cell.at} ${next}`] : [];
    });
}

describe("the sheets as a reader and a printer see them", () => {
  it("have no figure at the right edge beside words at the left edge of the next cell", () => {
    expect(SHEETS.flatMap(runTogether)).toEqual([]);
  });

  it("show no figure of the example with more digits than a reader can use", () => {
    const book = openBook(new Uint8Array(readFileSync("templates/example-audit.xlsx")));
    const long = AUDIT_SHEETS.flatMap(({ name, cells, printed }) => {
      const values = book.sheets.find((sheet) => sheet.name === name)!.cells;
      const onPaper = printed ? new Set(placesOf(printed)) : null;
      return cells.flatMap(({ at, format }) => {
        const address = at.split(":")[0]!;
        const value = values.get(address)?.value;
        if (format || typeof value !== "number" || (onPaper && !onPaper.has(address))) return [];
        return String(value).length > 7 ? [`${name}!${address}: ${value}`] : [];
      });
    });
    expect(long).toEqual([]);
  });

  it("hide the columns of intermediate results, which hold nothing to type and nothing that is printed", () => {
    const hiding = SHEETS.filter(({ hidden }) => hidden);
    expect(hiding.map(({ name, hidden }) => [name, hidden])).toEqual([
      ["Coverage", ["W:BJ"]],
      ["Report", ["Y:Z"]],
      ["Register", ["AE:BQ"]],
      ["Program", ["S:W"]],
      ["Start times", ["K:R", "AN:AP"]],
    ]);
    for (const sheet of hiding) {
      const hidden = new Set(hiddenColumns(sheet));
      const cells = sheet.cells.filter(({ at }) => hidden.has(edgesOf({ at } as CellSpec).left));
      expect(cells.length, sheet.name).toBeGreaterThan(0);
      expect(cells.filter(({ kind }) => kind === "input" || kind === "reading")).toEqual([]);
      const printed = new Set(placesOf(sheet.printed!).map((at) => addressParts(at).column));
      expect([...hidden].filter((column) => printed.has(column)).map(columnLetters)).toEqual([]);
    }
  });
});
