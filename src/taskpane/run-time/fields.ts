import { ASKED_FIRST, ENTRIES, type EntryName } from "../../core/figures/entries";
import { entryLabel } from "../../core/figures/entry";
import { entryReader } from "../parts/fields/entry-reader";

/** An input of the workbook's Run time sheet. */
export type RunTimeField =
  | { name: string; label: string; read: (text: string) => number }
  | { name: string; label: string; of: readonly string[] };

const asked = (name: EntryName, hint = ""): RunTimeField => ({
  name,
  label: entryLabel(ENTRIES[name]) + hint,
  read: entryReader(ENTRIES[name]),
});

/** What the run time is calculated from, in the order of the sheet. */
export const RUN_TIME_FIELDS: readonly RunTimeField[] = [
  { ...asked("Depth_Typed_mm"), label: entryLabel(ASKED_FIRST.Depth_Typed_mm) },
  { ...asked("Pot_Use_mL"), label: entryLabel(ASKED_FIRST.Pot_Use_mL) },
  asked("Capture_Factor", ", 1 where left blank"),
  { name: "Multiplier_Basis", label: "The run time is set by", of: ["driest can", "low quarter", "share of pots"] },
  asked("Share_Wanted", ", 0.5 to 1"),
  { name: "Leaching_Rule", label: "Allowance for leaching", of: ["none", "larger", "both"] },
  asked("Leaching_Fraction", ", 0 to 0.9"),
  asked("Take_Up_mm"),
  asked("Rest_min", ", 0 where left blank"),
];
