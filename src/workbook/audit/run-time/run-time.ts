import { formLines } from "../../form/entry-lines";
import type { SheetSpec } from "../../form/sheet-spec";
import { RUN_TIME_LINES } from "./lines";

const { cells, checks, heights } = formLines(
  3,
  { label: "A", entry: "B", unit: "C", note: "D", noteLine: 60 },
  RUN_TIME_LINES,
);

/** How long to run so that the pots that count get their depth. */
export const RUN_TIME: SheetSpec = {
  name: "Run time",
  roomy: true,
  widths: [34, 22, 11, 52],
  heights,
  cells: [
    { at: "A1:D1", kind: "title", value: "Run time" },
    {
      at: "A2:D2",
      kind: "said",
      value: "How long this bed must run on a watering day so that the pots that count get their depth.",
    },
    ...cells,
  ],
  checks,
};
