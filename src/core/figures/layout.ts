import { asHeading, type Figure } from "./figure";
import { MEASURES } from "./measures";
import { RUN_TIME } from "./run-time";

const OWN = "own reasoning";

/** What a planned layout is judged by, computed from its heads over the cells of the bed. */
export const LAYOUT = {
  HEADS: { name: "Heads", short: "Heads", unit: "", digits: 0, least: 0, definition: "heads of the bed", source: OWN },
  FLOW: {
    name: "Flow of the bed",
    short: "Flow",
    unit: "L/h",
    digits: 0,
    least: 0,
    definition: "flow of all heads of the bed together",
    source: OWN,
  },
  PUMP: {
    name: "Of the pump's flow",
    short: "Of the pump",
    unit: "",
    digits: 0,
    least: 0,
    definition: "flow of the bed over the flow of the pump",
    source: OWN,
  },
  MAR: { ...MEASURES.MAR, name: MEASURES.MAR.short, definition: "mean rate of the cells", source: OWN },
  CU: { ...MEASURES.CU, name: MEASURES.CU.short, definition: "as of cans, over the cells" },
  DU: { ...MEASURES.DU, name: asHeading(MEASURES.DU), definition: "as of cans, over the cells" },
  SC_CELL: {
    ...MEASURES.SC_CAN,
    name: "SC, driest cell",
    short: "SC driest",
    definition: "mean of the cells over the driest one; it rises as cells shrink",
  },
  SC_QUARTER: {
    ...MEASURES.SC_QUARTER,
    name: asHeading(MEASURES.SC_QUARTER),
    definition: "mean of the cells over the mean of their driest quarter",
  },
  SC_PATCH: {
    ...MEASURES.SC_CAN,
    name: "SC, driest patch",
    short: "SC patch",
    definition: "mean of the cells over the mean of the driest connected patch",
    source: OWN,
  },
  IN_BED: {
    name: "Water in the bed",
    short: "In the bed",
    unit: "%",
    digits: 0,
    least: 0,
    most: 100,
    definition: "water that lands in the bed over the water from the heads",
    source: OWN,
  },
  WATER_CELL: {
    name: "Water factor, driest cell",
    short: "Water, driest",
    unit: "",
    digits: 2,
    least: 1,
    definition: "SC of the driest cell over the share of the water that lands in the bed",
    source: OWN,
  },
  WATER_QUARTER: {
    name: "Water factor, low quarter",
    short: "Water, quarter",
    unit: "",
    digits: 2,
    least: 1,
    definition: "SC of the low quarter over the share of the water that lands in the bed",
    source: OWN,
  },
  TIME_CELL: {
    ...RUN_TIME.TIME,
    name: `${RUN_TIME.TIME.name}, driest cell`,
    unit: "min",
    definition: "60 times net depth times SC of the driest cell / MAR",
  },
  TIME_QUARTER: {
    ...RUN_TIME.TIME,
    name: `${RUN_TIME.TIME.name}, low quarter`,
    unit: "min",
    definition: "60 times net depth times SC of the low quarter / MAR",
  },
} as const satisfies Record<string, Figure>;
