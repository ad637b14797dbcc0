import { areaCell } from "../../form/area-cell";
import { HEADS, WIND_LINES } from "../heads/heads";

/** Areas of which every value and its place matters. */
const AREAS = [
  ...["Cans_Readings", "Cans_Across_m", "Cans_Along_m"],
  ...["Head_Across_m", "Head_Along_m", "Head_Arc_deg", "Flow_Lh", "Pressure_kPa", "Wind_ms"],
];
const CELLS = [
  ...["Test_Minutes", "Can_Mouth_mm", "Bed_Width_m", "Bed_Length_m", "Bed_Bearing_deg"],
  ...["Head_Layout", "Head_Spacing_m", "Row_Spacing_m", "Head_Throw_m", "Head_Arc", "Supply_Side"],
  ...["Maker_Flow_Lh", "Maker_Pressure_kPa"],
];

const places = (area: string) => `(ROW(${area})*40+COLUMN(${area}))`;
const written = (sum: string) => `ROUND(${sum},3)`;

/** Sums of an area by place: of its numbers, of where they are, and of where words are. */
const ofArea = (area: string) => [
  written(`SUMPRODUCT(${area},${places(area)})`),
  `SUMPRODUCT(ISNUMBER(${area})*${places(area)})`,
  `SUMPRODUCT(ISTEXT(${area})*${places(area)})`,
];

/**
 * What the readings, places, heads and measurements at them are, as one text: another one as soon as any is changed.
 * What the pane keeps beside it holds as long as both are the same.
 */
export const STAMP = [
  ...AREAS.flatMap(ofArea),
  `SUMPRODUCT(LEN(Head_Faces)*${places("Head_Faces")})`,
  ...CELLS,
  ...Array.from({ length: WIND_LINES }, (_, line) => areaCell(HEADS, "Wind_From", line + 1, 1)),
].join('&"|"&');

/** A formula that shows what the pane kept while its stamp is that of the inputs, else what to do. */
export function whileFresh(stamp: string, shown: string, { none, stale }: { none: string; stale: string }): string {
  return `IF(${stamp}&""="",${none},IF(${stamp}=Inputs_Stamp,${shown},${stale}))`;
}
