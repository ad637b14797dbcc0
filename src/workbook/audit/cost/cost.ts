import { joined } from "../../form/entry-lines";
import type { SheetSpec } from "../../form/sheet-spec";
import { AMOUNT_LINES } from "./amounts";
import { AMOUNTS, CHART, CHART_LAST, KINDS, UPGRADE, WORKING, YEAR } from "./places";
import { PRICE_AREAS, PRICES } from "./prices";
import { SAVING } from "./saving";
import { UPGRADE_LINES } from "./upgrade";
import { WORKING_LINES } from "./working";
import { COSTS_OF_YEAR } from "./year";

/** Apart in grey print too: dark, pale, middle, paler, darker. */
const COLOURS = ["#003c30", "#80cdc1", "#bf812d", "#f6e8c3", "#8c510a"] as const;

const { cells, checks, heights } = joined(PRICES, AMOUNT_LINES, COSTS_OF_YEAR, SAVING, UPGRADE_LINES, WORKING_LINES);

/** What a year's watering costs, kind by kind, and whether a change pays. */
export const COST: SheetSpec = {
  name: "Cost",
  roomy: true,
  widths: [30, 22, 22, 20, 14, 14, 14, 44],
  heights,
  landscape: true,
  printed: `A1:H${CHART_LAST}`,
  repeated: "1:1",
  pageEnds: [AMOUNTS - 1, YEAR - 1, UPGRADE - 1],
  areas: PRICE_AREAS,
  cells: [
    { at: "A1:H1", kind: "title", value: "Cost" },
    {
      at: "A2:H2",
      kind: "said",
      formula:
        '"What a year of watering costs for "&Valve_Words&", each kind apart, and whether a change pays. In any one currency. Fill in what you have: what is left blank is not counted, and the sheet says so."',
    },
    ...cells,
  ],
  checks,
  charts: [
    {
      over: `A${CHART + 1}:G${CHART_LAST}`,
      type: "bar",
      stacked: true,
      title: "Cost of a year, needed now and after",
      axes: ["", "Currency a year"],
      series: KINDS.map((_, index) => ({
        name: `=D${WORKING + 1 + index}`,
        across: `F${WORKING}:G${WORKING}`,
        values: `F${WORKING + 1 + index}:G${WORKING + 1 + index}`,
        colour: COLOURS[index]!,
      })),
    },
  ],
};
