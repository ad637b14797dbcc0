import { areaCell } from "../../form/area-cell";
import { HEADS, WIND_LINES } from "../heads/heads";

/** Areas of which every value and its place matters, and cells, of the cans and their test. */
const CAN_AREAS = ["Cans_Readings", "Cans_Across_m", "Cans_Along_m"];
const CAN_CELLS = ["Test_Minutes", "Can_Mouth_mm", "Bed_Width_m", "Bed_Length_m"];
/** Those of the heads and of what was measured at them. */
const HEAD_AREAS = ["Head_Across_m", "Head_Along_m", "Head_Arc_deg", "Flow_Lh", "Pressure_kPa", "Wind_ms"];
const HEAD_CELLS = [
  ...["Bed_Bearing_deg", "Head_Layout", "Head_Spacing_m", "Row_Spacing_m", "Head_Throw_m", "Head_Arc", "Supply_Side"],
  ...["Maker_Flow_Lh", "Maker_Pressure_kPa"],
];
/** Those that the answer adds: what is typed, and figures that may be words. */
const ANSWER_AREAS = ["Pressure_Before_kPa", "Pressure_After_kPa"];
const ANSWER_CELLS = ["Block_Name", "Test_State", "Valve_Step_min"];
const ANSWER_FIGURES = [
  ...["Valve_Run_min", "Result_Run_Time_min", "Pulse_Count", "Saved_kL", "Used_Now_kL", "Used_Now_Heads_kL"],
  ...["Result_Water_kL", "Needed_After_kL", "Positions_Problem"],
];
const LIMIT_CELLS = [
  ...["Limit_MAR_Low", "Limit_MAR_High"],
  ...["Limit_CU_Low", "Limit_DU_Low", "Limit_SC_High", "Limit_SCQ_High"],
];

const places = (area: string) => `(ROW(${area})*40+COLUMN(${area}))`;
const written = (sum: string) => `ROUND(${sum},3)`;

/** Sums of an area by place: of its numbers, of where they are, and of where words are. */
const ofArea = (area: string) => [
  written(`SUMPRODUCT(${area},${places(area)})`),
  `SUMPRODUCT(ISNUMBER(${area})*${places(area)})`,
  `SUMPRODUCT(ISTEXT(${area})*${places(area)})`,
];

const joined = (parts: readonly string[]) => parts.join('&"|"&');
/** Of words alone: the length of a number is that of its format in some programs. */
const lengths = (area: string) => `SUMPRODUCT(ISTEXT(${area})*LEN(${area})*${places(area)})`;
const figure = (name: string) => `IF(ISNUMBER(${name}),${written(name)},${name}&"")`;

/**
 * What the readings, places, heads and measurements at them are, as one text: another one as soon as any is changed.
 * What the pane keeps beside it is true as long as both are the same.
 */
export const INPUTS_STAMP = joined([
  ...[...CAN_AREAS, ...HEAD_AREAS].flatMap(ofArea),
  lengths("Head_Faces"),
  ...[...CAN_CELLS, ...HEAD_CELLS],
  ...Array.from({ length: WIND_LINES }, (_, line) => areaCell(HEADS, "Wind_From", line + 1, 1)),
]);

/** The same with all else that the answer says. */
export const ANSWER_INPUTS = joined([
  "Inputs_Stamp",
  ...ANSWER_AREAS.flatMap(ofArea),
  written(`SUMPRODUCT(Actions_Table,${places("Actions_Table")})`),
  lengths("Actions_Table"),
  ...ANSWER_CELLS,
  ...[...ANSWER_FIGURES, ...LIMIT_CELLS].map(figure),
]);

/** A formula that shows what the pane kept while its stamp is the one of now, else what to do. */
export function whileFresh(
  [stamp, now]: readonly [stamp: string, now: string],
  shown: string,
  { none, stale }: { none: string; stale: string },
): string {
  return `IF(${stamp}&""="",${none},IF(${stamp}=${now},${shown},${stale}))`;
}
