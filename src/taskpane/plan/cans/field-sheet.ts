import { canPlaces } from "../../../core/layout/cans/places";
import type { CanPlan } from "../../../core/layout/cans/plan";
import type { CellSpec, SheetSpec } from "../../../workbook/form/sheet-spec";

const HEADINGS = ["Can", "Across [m]", "Along [m]", "Caught [mL]"];
const FIRST_LINE = 7;
/** Where the picture of the plan goes. */
export const PICTURE_CELL = "F6";

const facts = ["Block:", "Date:", "Start, stop:", "Mouth of the can [mm]:", "Wind [m/s]:"];

/** A sheet to take into the field: every can in walking order with its place and room for the reading. */
export function fieldSheet(name: string, plan: CanPlan): SheetSpec {
  const cans = canPlaces(plan);
  const cells: CellSpec[] = [
    { at: "A1:H1", kind: "title", value: "Field sheet: cans" },
    {
      at: "A2:H2",
      kind: "said",
      value: `${plan.count} cans, ${plan.across.length} across and ${plan.along.length} along. Numbers follow the way you walk: across, and back on the next row.`,
    },
    {
      at: "A3:H3",
      kind: "caution",
      value:
        "Recycled water: stand out of the spray, gloves on. No test while fertiliser is injected. Rims level, leaves out of the way.",
    },
    { at: "A4:H4", kind: "note", value: facts.join("                    ") },
    ...HEADINGS.map(
      (value, column): CellSpec => ({ at: `${"ABCD"[column]}${FIRST_LINE - 1}`, kind: "heading", value }),
    ),
    ...cans.flatMap(({ number, x, y }, index): CellSpec[] => {
      const row = FIRST_LINE + index;
      return [
        { at: `A${row}`, kind: "working", value: number, format: "0" },
        { at: `B${row}`, kind: "working", value: x, format: "0.00" },
        { at: `C${row}`, kind: "working", value: y, format: "0.00" },
        { at: `D${row}`, kind: "reading" },
      ];
    }),
  ];
  return {
    name,
    widths: [8, 11, 11, 13, 3, 20, 20, 20],
    heights: { 2: 32, 3: 32, 4: 24 },
    cells,
    pages: Math.ceil(cans.length / 50),
    frozenRows: FIRST_LINE - 1,
  };
}
