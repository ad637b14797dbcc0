import { ENTRIES, GROUP_ENTRIES } from "../../../core/figures/entries";
import { entryLabel } from "../../../core/figures/entry";
import { shortWithUnit } from "../../../core/figures/figure";
import { RUN_TIME } from "../../../core/figures/run-time";
import { number, words } from "../../form/allowed";
import { allowedOf } from "../../form/entry-field";
import type { CellSpec, CheckSpec, SheetSpec } from "../../form/sheet-spec";
import { groupCells } from "./group-cells";
import { ALL_FROM, column, GROUPS, rowOf, TYPED, WHERE } from "./places";
import { whereCells } from "./where-water-goes";

const HEADINGS = [
  "Group [words]",
  "Pot top [mm]",
  "Pot spacing [mm]",
  "Water use [mL a day]",
  `${ENTRIES.Capture_Factor.label} [${ENTRIES.Capture_Factor.unitWords}]`,
  entryLabel(ENTRIES.Depth_Typed_mm),
  "Area [m², share or %]",
  shortWithUnit(RUN_TIME.NET_DEPTH),
  "Share of the area",
  "Run that it needs [min]",
  "Gets / needs [ratio]",
  "Drains [share]",
];

const absolute = (letter: string) => column(letter).replaceAll("$", "");
const check = (letter: string, allowed: (cell: string) => Omit<CheckSpec, "range">): CheckSpec => ({
  range: absolute(letter),
  ...allowed(`${letter}${rowOf(1)}`),
});

/** Pots of several sizes in one block, and where the water goes. */
export const POTS: SheetSpec = {
  name: "Pots",
  roomy: true,
  landscape: true,
  widths: [20, 10, 10, 17, 11, 14, 12, 13, 10, 12, 10, 10, 3, 9, 9, 9, 9, 9, 9, 9, 9],
  printed: `A1:L${ALL_FROM - 1}`,
  heights: { 2: 30, 4: 45, [WHERE]: 30 },
  cells: [
    { at: "A1:L1", kind: "title", value: "Pots" },
    {
      at: "A2:L2",
      kind: "said",
      value:
        "Only where the block has pots of several sizes: one line a group, in place of the depth on Run time. The run time is that of the neediest group; the others get more, and drain more. Each group is taken to be spread over the whole bed. One size: leave these lines blank; what is typed on Block and Run time is used.",
    },
    {
      at: "A3:L3",
      kind: "note",
      value:
        "Give a depth, or top and use: 1000 · mL / area of the top / capture factor, pot shape from Block. Area: in m², shares or per cent, the same for all groups. Gets / needs: mean over the bed.",
    },
    ...HEADINGS.map((value, index): CellSpec => ({ at: `${"ABCDEFGHIJKL"[index]}4`, kind: "heading", value })),
    ...["in use", "top mm²", "reached", "weight", "just enough", "after", "just enough", "drains"].map(
      (value, index): CellSpec => ({ at: `${"NOPQRSTU"[index]}4`, kind: "heading", value }),
    ),
    { at: "N3", kind: "note", value: "Not printed" },
    ...GROUPS.flatMap((group) =>
      Object.values(TYPED).map((letter): CellSpec => ({ at: `${letter}${rowOf(group)}`, kind: "input" })),
    ),
    ...groupCells(),
    ...whereCells(),
  ],
  areas: {
    Groups_Names: absolute("A"),
    Groups_Tops_mm: absolute("B"),
    Groups_Spacings_mm: absolute("C"),
    Groups_Uses_mL: absolute("D"),
    Groups_Captures: absolute("E"),
    Groups_Depths_mm: absolute("F"),
    Groups_Areas: absolute("G"),
  },
  checks: [
    check("A", words(30)),
    check("B", allowedOf(GROUP_ENTRIES.Demand_Tops_mm)),
    check("C", number(20, 5000, "mm")),
    check("D", number(0.01, 1e6, "mL a day")),
    check("E", allowedOf(GROUP_ENTRIES.Demand_Captures)),
    check("F", number(0.01, 1000, "mm a day")),
    check("G", number(0.0001, 1e6, "")),
  ],
};
