import { ENTRIES, type EntryName } from "../../core/figures/entries";
import { entryLabel } from "../../core/figures/entry";
import { entryReader } from "../parts/fields/entry-reader";

/** An input of the sheets Cost and Water and cost. */
export interface CostField {
  name: string;
  label: string;
  read: (text: string) => number;
}

const asked = (name: EntryName, hint = ""): CostField => ({
  name,
  label: entryLabel(ENTRIES[name]) + hint,
  read: entryReader(ENTRIES[name]),
});

/** The main inputs, in the order of the sheets; price steps and hours of power are typed on the sheet. */
export const COST_FIELDS: readonly CostField[] = [
  asked("Water_Days"),
  asked("Water_Price"),
  asked("Power_Tariff"),
  asked("Fertiliser_mgL"),
  asked("Fertiliser_Water_mgL", ", none where blank"),
  asked("Fertiliser_Price"),
  asked("Labour_Hours", " now"),
  asked("After_Labour_Hours", ", as now where blank"),
  asked("Wage"),
  asked("Plants_Lost", " now"),
  asked("After_Plants_Lost", ", as now where blank"),
  asked("Plant_Worth"),
  asked("After_SC"),
  asked("After_Capital"),
  asked("Upgrade_Labour"),
  asked("Upgrade_Grant"),
  asked("Upgrade_Life_years"),
  asked("Upgrade_Rate", " a year, 0.07 for 7 %"),
];
