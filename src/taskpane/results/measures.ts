import type { Box } from "../../cells/box";

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
  /** Size of the answer in cells, from that of the readings; one cell where left out. */
  size?: (readings: Box) => { rows: number; columns: number };
}

const pair = () => ({ rows: 1, columns: 2 });
const alike = ({ rows, columns }: Box) => ({ rows, columns });
const SUMMARY_SIZE = { rows: 8, columns: 7 };

export const MEASURES: Measure[] = [
  { id: "RUNTIME", label: "Run time", unit: "min", needs: ["minutes", "mouth", "depth", "basis"] },
  {
    id: "SUMMARY",
    label: "Summary of the audit",
    unit: "table",
    needs: ["minutes", "mouth"],
    size: () => SUMMARY_SIZE,
  },
  { id: "SC.CAN", label: "SC (driest can)", unit: "ratio", needs: [] },
  { id: "SC.QUARTER", label: "SC (low quarter)", unit: "ratio", needs: [] },
  { id: "SC.SHARE", label: "SC (share of cans)", unit: "ratio", needs: ["share"] },
  { id: "CU.CHRISTIANSEN", label: "CU (Christiansen)", unit: "%", needs: [] },
  { id: "DU.QUARTER", label: "DU (low quarter)", unit: "%", needs: [] },
  { id: "MAR", label: "Mean application rate", unit: "mm/h", needs: ["minutes", "mouth"] },
  {
    id: "INTERVAL",
    label: "Interval of CU",
    unit: "%, low and high",
    needs: [],
    rest: ['"CU.CHRISTIANSEN"'],
    size: pair,
  },
  { id: "INTERVAL", label: "Interval of DU", unit: "%, low and high", needs: [], rest: ['"DU.QUARTER"'], size: pair },
  {
    id: "INTERVAL",
    label: "Interval of SC (low quarter)",
    unit: "ratio, low and high",
    needs: [],
    rest: ['"SC.QUARTER"'],
    size: pair,
  },
  { id: "DEPTH.CAUGHT", label: "Depth in each can", unit: "mm", needs: ["mouth"], size: alike },
  { id: "RATE.CAUGHT", label: "Rate at each can", unit: "mm/h", needs: ["minutes", "mouth"], size: alike },
];
