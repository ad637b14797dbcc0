import { within } from "../../core/checks";
import { typedNumber } from "../parts/typed-number";

/** Bounds as in the workbook's own checks, which hold for what is typed into cells only. */
const number = (what: string, unit: string, least: number, most: number) =>
  typedNumber(what, unit, (parameter, value) => within(parameter, value, least, most, unit));

/** What the workbook asks of a pot group, in the order of its sheet. */
export const FACTS = [
  { name: "Demand_Groups", label: "Name of the group", read: String },
  { name: "Demand_Tops_mm", label: "Pot's top, inside [mm]", read: number("pot top", "mm", 10, 3000) },
  { name: "Demand_Shapes", label: "Shape, round where left blank", of: ["", "round", "square"] },
  {
    name: "Demand_Captures",
    label: "Capture factor, 1 where left blank",
    read: number("capture factor", "", 0.01, 20),
  },
  { name: "Demand_Coefficients", label: "Coefficient", read: number("coefficient", "", 0.01, 20) },
  { name: "Demand_Areas_m2", label: "Its area, of one pot [m²]", read: number("area", "m²", 0.0001, 100) },
  { name: "Demand_Rained", label: "Rain falls on it, yes where left blank", of: ["", "yes", "no"] },
  {
    name: "Demand_Take_Up_mm",
    label: "Depth taken up at once [mm]",
    read: number("depth taken up", "mm", 0.1, 1000),
  },
] as const;

export type FactName = (typeof FACTS)[number]["name"];
