import type { Stated } from "../../cells/stated";
import { windClass } from "../../core/register/basis";
import type { AuditLine } from "../copy-report";
import { type AuditInputs, ifAll } from "./audit-inputs";
import { bedFlow } from "./bed-flow";

const MINUTES_AN_HOUR = 60;

const average = (values: readonly number[]): number | null =>
  values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;

/** Mean over the places at which pressure was read, before or after the test or both. */
function meanPressure(inputs: AuditInputs): number | null {
  const [before, after] = [inputs.numbers("Pressure_Before_kPa"), inputs.numbers("Pressure_After_kPa")];
  const places = [...new Set([...before.keys(), ...after.keys()])];
  const pressure = average(places.map((place) => average([before, after].flatMap((read) => read.get(place) ?? []))!));
  return pressure !== null && pressure > 0 ? pressure : null;
}

/** Columns and rows that hold readings, such as `5 × 5`; with the weighting where it is not equal. */
function gridOf(inputs: AuditInputs, byArea: boolean): string | null {
  const read = inputs.cells("Cans_Readings").filter(({ cell }) => typeof cell.value === "number");
  if (read.length === 0) return null;
  const lines = (place: "row" | "column") => new Set(read.map((cell) => cell[place])).size;
  return `${lines("column")} × ${lines("row")}${byArea ? ", by area" : ""}`;
}

/** What a register keeps of an audit, from what was typed and the figures recomputed from it. */
export function auditLine(inputs: AuditInputs, figures: ReadonlyMap<string, Stated>): AuditLine {
  const number = (name: string) => {
    const value = figures.get(name);
    return typeof value === "number" ? value : null;
  };
  const beds = Math.max(1, inputs.number("Beds_On_Valve") ?? 1);
  const wind = average([...inputs.numbers("Wind_ms").values()]);
  const water = number("Result_Water_kL");
  const times = (value: number | null) => (value === null ? null : value * beds);
  return {
    cans: number("Cans_Counted") || null,
    grid: gridOf(inputs, (figures.get("By_Area") ?? figures.get("Positions_Uneven")) === true),
    wind: wind === null || wind < 0 ? null : windClass(wind),
    pressure: meanPressure(inputs),
    mar: number("Used_MAR"),
    cu: number("Used_CU"),
    du: number("Used_DU"),
    scCan: number("Used_SC_Can"),
    scQuarter: number("Used_SC_Quarter"),
    kind: inputs.text("Multiplier_Basis") || null,
    multiplier: number("Valve_Multiplier") ?? number("Gross_Multiplier"),
    water: figures.has("Valve_Multiplier") ? water : times(water),
    area: times(number("Block_Area_m2")),
    flow: times(ifAll([bedFlow(inputs)], (flow) => flow / MINUTES_AN_HOUR)),
  };
}
