import { within } from "../../core/checks";
import { typedNumber } from "../parts/typed-number";

/** An input of the sheets Cost and Water and cost. */
export interface CostField {
  name: string;
  label: string;
  read: (text: string) => number;
}

/** Bounds as in the workbook's own checks, which hold for what is typed into cells only. */
const number = (name: string, label: string, what: string, unit: string, least: number, most: number): CostField => ({
  name,
  label: unit ? `${label} [${unit}]` : label,
  read: typedNumber(what, unit, (parameter, value) => within(parameter, value, least, most, unit)),
});

/** The main inputs, in the order of the sheets; price steps and hours of power are typed on the sheet. */
export const COST_FIELDS: readonly CostField[] = [
  number("Water_Days", "Watering days", "days", "days a year", 0.01, 366),
  number("Water_Price", "Price of water, likely", "price", "per kL", 0, 1e6),
  number("Power_Tariff", "Tariff of power", "tariff", "per kWh", 0, 1e6),
  number("Fertiliser_mgL", "Fertiliser in what drains", "fertiliser", "mg/L", 0, 1e6),
  number("Fertiliser_Price", "Price of fertiliser", "price", "per kg", 0, 1e6),
  number("Labour_Hours", "Work on this watering now", "hours", "h a year", 0, 8784),
  number("After_Labour_Hours", "Work after, as now where blank", "hours", "h a year", 0, 8784),
  number("Wage", "Price of an hour", "price", "per h", 0, 1e6),
  number("Plants_Lost", "Plants lost now", "plants", "plants a year", 0, 1e9),
  number("After_Plants_Lost", "Plants lost after, as now where blank", "plants", "plants a year", 0, 1e9),
  number("Plant_Worth", "What a plant is worth", "worth", "each", 0, 1e6),
  number("After_SC", "SC after the change", "SC", "", 1, 1000),
  number("After_Capital", "What the change costs", "cost", "once", 0, 1e9),
  number("Upgrade_Labour", "Own labour on top", "labour", "once", 0, 1e9),
  number("Upgrade_Grant", "Grant", "grant", "once", 0, 1e9),
  number("Upgrade_Life_years", "Life", "life", "years", 0.1, 1000),
  number("Upgrade_Rate", "Discount rate a year, 0.07 for 7 %", "discount rate", "", 0, 1),
];
