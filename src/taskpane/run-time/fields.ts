import { within } from "../../core/checks";
import { typedNumber } from "../parts/typed-number";

/** An input of the workbook's Run time sheet. */
export type RunTimeField =
  | { name: string; label: string; read: (text: string) => number }
  | { name: string; label: string; of: readonly string[] };

/** Bounds as in the workbook's own checks, which hold for what is typed into cells only. */
const number = (
  name: string,
  label: string,
  what: string,
  unit: string,
  least: number,
  most: number,
): RunTimeField => ({
  name,
  label: unit ? `${label} [${unit}]` : label,
  read: typedNumber(what, unit, (parameter, value) => within(parameter, value, least, most, unit)),
});

/** What the run time is worked out from, in the order of the sheet. */
export const RUN_TIME_FIELDS: readonly RunTimeField[] = [
  number("Depth_Typed_mm", "Net depth wanted in each pot", "depth", "mm a day", 0.01, 1000),
  number("Pot_Use_mL", "Or the water that one pot uses", "water use", "mL a day", 0, 1e6),
  number("Capture_Factor", "Capture factor, 1 where left blank", "capture factor", "", 0.01, 20),
  { name: "Multiplier_Basis", label: "The run time is set by", of: ["driest can", "low quarter", "share of pots"] },
  number("Share_Wanted", "Share of the pots that must get the depth, 0.5 to 1", "share", "", 0.5, 1),
  { name: "Leaching_Rule", label: "How leaching counts", of: ["none", "larger", "both"] },
  number("Leaching_Fraction", "Leaching fraction wanted, 0 to 0.9", "leaching fraction", "", 0, 0.9),
  number("Take_Up_mm", "Depth that the mix takes up at once", "depth taken up", "mm", 0.1, 1000),
  number("Rest_min", "Rest between pulses, 0 where left blank", "rest", "min", 0, 1440),
];
