import { GROUP_ENTRIES } from "../../core/figures/entries";
import { entryLabel } from "../../core/figures/entry";
import { entryReader } from "../parts/fields/entry-reader";

const asked = <Name extends keyof typeof GROUP_ENTRIES>(name: Name, hint = "") => ({
  name,
  label: entryLabel(GROUP_ENTRIES[name]) + hint,
  read: entryReader(GROUP_ENTRIES[name]),
});

/** What the workbook asks of a pot group, in the order of its sheet. */
export const FACTS = [
  { name: "Demand_Groups", label: "Name of the group", read: String },
  asked("Demand_Tops_mm"),
  { name: "Demand_Shapes", label: "Shape, round where left blank", of: ["", "round", "square"] },
  asked("Demand_Captures", ", 1 where left blank"),
  asked("Demand_Coefficients"),
  asked("Demand_Areas_m2"),
  { name: "Demand_Rained", label: "Exposed to rain? (blank = yes)", of: ["", "yes", "no"] },
  asked("Demand_Take_Up_mm"),
] as const;

export type FactName = (typeof FACTS)[number]["name"];
