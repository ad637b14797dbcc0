import { expect, it } from "vitest";
import { cellAt } from "../../src/cells/places";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { CANS } from "../../src/workbook/audit/cans/cans";
import { oddReading } from "../../src/workbook/audit/cans/grid";
import type { CellSpec } from "../../src/workbook/form/sheet-spec";
import { calculated } from "../support/audits";
import { SQUARE_AUDIT } from "../support/square-audit";

const [ROWS, COLUMNS] = [30, 20];
const [TOP, LEFT, ASIDE] = [6, 7, 60];

/** A full grid of 20 to 24 mL with cans ten times their neighbours in a corner, on each edge, inside and beside odd ones. */
const READINGS = Array.from({ length: ROWS }, (_, i) =>
  Array.from({ length: COLUMNS }, (_, j): number | string => 20 + ((3 * i + 2 * j) % 5)),
);
for (const [i, j, reading] of [
  ...[
    [0, 0],
    [0, 9],
    [29, 10],
    [14, 0],
    [15, 19],
    [29, 19],
    [7, 7],
    [20, 4],
  ].map(([i, j]) => [i, j, 240]),
  ...[
    [10, 12],
    [10, 13],
  ].map(([i, j]) => [i, j, 240]), // side by side: neither is ten times its neighbours
  ...[
    [21, 4, "x"],
    [19, 5, "x"],
    [24, 10, 180],
    [25, 15, ""],
    [26, 15, 0],
  ],
] as [number, number, number | string][])
  READINGS[i]![j] = reading;

const numbers = READINGS.flat().filter((one) => typeof one === "number");
const mean = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;

function expected(i: number, j: number): boolean {
  const reading = READINGS[i]![j];
  if (typeof reading !== "number" || reading <= 3 * mean) return false;
  const beside = [-1, 0, 1].flatMap((down) =>
    [-1, 0, 1].filter((right) => down !== 0 || right !== 0).map((right) => READINGS[i + down]?.[j + right]),
  );
  const read = beside.filter((one) => typeof one === "number");
  return reading > 9.9 * (read.reduce((sum, one) => sum + one, 0) / read.length);
}

it("LibreOffice shades the cans that hold ten times their neighbours, on every edge, and no other", async () => {
  const asked = READINGS.flatMap((line, i) =>
    line.map(
      (_, j): CellSpec => ({
        at: cellAt(TOP + i, ASIDE + j),
        kind: "working",
        formula: oddReading(TOP + i, LEFT + j),
      }),
    ),
  );
  const sheets = AUDIT_SHEETS.map((sheet) => (sheet === CANS ? { ...CANS, cells: [...CANS.cells, ...asked] } : sheet));
  const [audit] = await calculated([{ ...SQUARE_AUDIT, Cans_Readings: READINGS }], sheets);
  const odd = READINGS.map((line, i) => line.map((_, j) => expected(i, j)));
  expect(READINGS.map((line, i) => line.map((_, j) => audit!.at(`Cans!${cellAt(TOP + i, ASIDE + j)}`)))).toEqual(odd);
  expect(odd.flat().filter(Boolean)).toHaveLength(8);
});
