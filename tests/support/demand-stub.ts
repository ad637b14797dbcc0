import type { SheetSpec } from "../../src/workbook/form/sheet-spec";

const COLUMNS = ["B", "C", "D", "E", "F", "G"];

/** A sheet with nothing but the three names that Program reads from Demand: groups, depths by month, and take-ups. */
export const DEMAND_STUB: SheetSpec = {
  name: "Demand",
  widths: [12, 12],
  cells: Array.from({ length: 14 }, (_, row) =>
    COLUMNS.map((letter) => ({ at: `${letter}${row + 1}`, kind: "input" as const })),
  ).flat(),
  areas: { Demand_Groups: "B1:G1", Demand_Depths: "B2:G13", Demand_Take_Up_mm: "B14:G14" },
};
