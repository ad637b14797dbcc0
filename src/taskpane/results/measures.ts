import type { Box } from "../../cells/box";
import { MEASURES as FIGURES } from "../../core/figures/measures";
import { RUN_TIME } from "../../core/figures/run-time";

/** What a formula needs besides the readings. */
export type Need = "minutes" | "mouth" | "depth" | "basis" | "share";

/** A measure that the pane can insert as a live function. */
export interface Measure {
  id: string;
  label: string;
  unit: string;
  needs: Need[];
  /** Fixed last arguments, as written in the formula. */
  rest?: string[];
  /** Arguments between the others and the areas of the cans, where it takes areas. */
  beforeAreas?: string[];
  /** Size of the answer in cells, from that of the readings; one cell where left out. */
  size?: (readings: Box) => { rows: number; columns: number };
}

const pair = () => ({ rows: 1, columns: 2 });
const alike = ({ rows, columns }: Box) => ({ rows, columns });
const SUMMARY_SIZE = { rows: 8, columns: 7 };

export const MEASURES: Measure[] = [
  {
    id: "RUNTIME",
    label: RUN_TIME.TIME.name,
    unit: "min",
    needs: ["minutes", "mouth", "depth", "basis"],
    beforeAreas: [],
  },
  {
    id: "SUMMARY",
    label: "Summary of the audit",
    unit: "table",
    needs: ["minutes", "mouth"],
    beforeAreas: [""],
    size: () => SUMMARY_SIZE,
  },
  { id: "SC.CAN", label: FIGURES.SC_CAN.name, unit: FIGURES.SC_CAN.unit || "ratio", needs: [], beforeAreas: [] },
  {
    id: "SC.QUARTER",
    label: FIGURES.SC_QUARTER.name,
    unit: FIGURES.SC_QUARTER.unit || "ratio",
    needs: [],
    beforeAreas: [],
  },
  { id: "SC.SHARE", label: "SC (share of cans)", unit: "ratio", needs: ["share"], beforeAreas: [] },
  { id: "CU.CHRISTIANSEN", label: FIGURES.CU.name, unit: FIGURES.CU.unit || "ratio", needs: [], beforeAreas: [] },
  { id: "DU.QUARTER", label: FIGURES.DU.name, unit: FIGURES.DU.unit || "ratio", needs: [], beforeAreas: [] },
  {
    id: "MAR",
    label: FIGURES.MAR.name,
    unit: FIGURES.MAR.unit || "ratio",
    needs: ["minutes", "mouth"],
    beforeAreas: [],
  },
  {
    id: "INTERVAL",
    label: `Interval of ${FIGURES.CU.short}`,
    unit: "%, low and high",
    needs: [],
    rest: ['"CU.CHRISTIANSEN"'],
    beforeAreas: ["0.9"],
    size: pair,
  },
  {
    id: "INTERVAL",
    label: `Interval of ${FIGURES.DU.short}`,
    unit: "%, low and high",
    needs: [],
    rest: ['"DU.QUARTER"'],
    beforeAreas: ["0.9"],
    size: pair,
  },
  {
    id: "INTERVAL",
    label: `Interval of ${FIGURES.SC_QUARTER.name}`,
    unit: "ratio, low and high",
    needs: [],
    rest: ['"SC.QUARTER"'],
    beforeAreas: ["0.9"],
    size: pair,
  },
  { id: "DEPTH.CAUGHT", label: "Depth in each can", unit: "mm", needs: ["mouth"], size: alike },
  { id: "RATE.CAUGHT", label: "Rate at each can", unit: "mm/h", needs: ["minutes", "mouth"], size: alike },
];
