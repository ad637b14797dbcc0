import { areaCell } from "../../form/area-cell";
import { nestedIfs } from "../../form/nested-ifs";
import { aboveZero } from "../../form/typed-words";
import { WEATHER } from "../weather/weather";
import { WEIGHINGS } from "../weighings/weighings";
import { GROUP_COLUMNS, NAME_ROW } from "./places";

export const TOP_ROW = NAME_ROW + 1;
export const SHAPE_ROW = TOP_ROW + 1;
export const CAPTURE_ROW = SHAPE_ROW + 1;
export const COEFFICIENT_ROW = CAPTURE_ROW + 1;
export const AREA_ROW = COEFFICIENT_ROW + 1;
export const RAINED_ROW = AREA_ROW + 1;
export const TAKE_UP_ROW = RAINED_ROW + 1;
export const NOTE_ROW = TAKE_UP_ROW + 1;
export const LITRE_ROW = NOTE_ROW + 1;
export const MILLIMETRE_ROW = LITRE_ROW + 1;
/** Rows of January in the three tables of the sheet, and the first row of the chart between them. */
export const DEPTH_FROM = MILLIMETRE_ROW + 4;
export const USE_FROM = DEPTH_FROM + 15;
export const CHART_FROM = USE_FROM + 13;
export const HOW_FROM = CHART_FROM + 30;

const at = (group: number, row: number) => `${GROUP_COLUMNS[group]}$${row}`;
const filled = (group: number) => `COUNTA(${at(group, NAME_ROW)}:${at(group, NOTE_ROW)})`;
/** "" for a column that is not used; what is missing where it has no name or shares it. */
const unnamed = (group: number): [string, string][] => [
  [`${filled(group)}=0`, '""'],
  [`${at(group, NAME_ROW)}=""`, '"needs a name"'],
  [`SUMPRODUCT(--(Demand_Groups=${at(group, NAME_ROW)}))>1`, '"needs a name of its own"'],
];

const UNDER_COVER = "weather does not hold under cover";
const underCover = (group: number) => `${at(group, RAINED_ROW)}="no"`;
/** No coefficient is typed, and none is asked for. */
const underCoverOnly = (group: number) => `AND(${underCover(group)},${at(group, COEFFICIENT_ROW)}="")`;
const weighed = (name: string, group: number, month: number) => areaCell(WEIGHINGS, name, month + 1, group + 1);

/** Depth that a litre makes in a pot of the group [mm], or what is missing or wrong. */
export function litreFormula(group: number): string {
  const [top, shape] = [at(group, TOP_ROW), at(group, SHAPE_ROW)];
  const [capture, rained] = [at(group, CAPTURE_ROW), at(group, RAINED_ROW)];
  return nestedIfs(
    [
      ...unnamed(group),
      [`${top}=""`, '"needs pot top"'],
      aboveZero("pot top", top, "mm"),
      [
        `AND(${shape}<>"",${shape}<>"round",${shape}<>"square")`,
        `"shape in ${shape.replace("$", "")} must be round or square, got "&${shape}`,
      ],
      aboveZero("capture factor", capture, ""),
      [
        `AND(${rained}<>"",${rained}<>"yes",${rained}<>"no")`,
        `"rain in ${rained.replace("$", "")} must be yes or no, got "&${rained}`,
      ],
    ],
    `1000000/(${top}^2*IF(${shape}="square",1,PI()/4))/IF(${capture}="",1,${capture})`,
  );
}

/** Water that a millimetre of ET0 takes from a pot of the group [mL], or what is missing or wrong. */
export function millimetreFormula(group: number): string {
  const [coefficient, area] = [at(group, COEFFICIENT_ROW), at(group, AREA_ROW)];
  return nestedIfs(
    [
      ...unnamed(group),
      aboveZero("coefficient", coefficient, ""),
      aboveZero("area", area, "m²"),
      [
        underCoverOnly(group),
        `IF(SUM(${weighed("Weighed_Pots", group, 0)}:${weighed("Weighed_Pots", group, 11).split("!")[1]})>0,"from weighings only (under cover)","needs weighings: ${UNDER_COVER}")`,
      ],
      [`AND(${coefficient}="",${area}="")`, '"needs coefficient and area"'],
      [`${coefficient}=""`, '"needs coefficient"'],
      [`${area}=""`, '"needs the area of the coefficient"'],
    ],
    `1000*${coefficient}*${area}`,
  );
}

const et0 = (month: number) => areaCell(WEATHER, "Weather_ET0", month + 1, 1);
/** Where Weather says what is wrong with a month. */
const whyCell = (month: number) => areaCell(WEATHER, "Weather_How", month + 1, 1);
const rain = (group: number, month: number) =>
  `IF(${at(group, RAINED_ROW)}="no",0,${areaCell(WEATHER, "Weather_Rain", month + 1, 1)})`;

/** Water that a pot of the group uses in a month [mL a day], or in few words what is missing. */
export function useFormula(group: number, month: number): string {
  const [pots, mean] = [weighed("Weighed_Pots", group, month), weighed("Weighed_Mean_mL", group, month)];
  const litre = at(group, LITRE_ROW);
  const millimetre = at(group, MILLIMETRE_ROW);
  return nestedIfs(
    [
      [`${litre}=""`, '""'],
      [`LEFT(${litre},12)="needs a name"`, '"needs a name"'],
      [`${pots}=1`, '"needs 2nd pot"'],
      [`${pots}>1`, mean],
      [underCoverOnly(group), '"needs weighings"'],
      [`NOT(ISNUMBER(${et0(month)}))`, `IF(${et0(month)}="needs weather","needs weather","needs ${whyCell(month)}")`],
      [`ISNUMBER(${millimetre})`, `${et0(month)}*${millimetre}`],
      [`LEFT(${millimetre},17)="needs coefficient"`, '"needs coefficient"'],
      [`LEFT(${millimetre},5)="needs"`, '"needs its area"'],
    ],
    '"needs mending"',
  );
}

/** Net depth of a group in a month [mm a day], or in few words what is missing. */
export function depthFormula(group: number, month: number): string {
  const [use, litre] = [`${GROUP_COLUMNS[group]}${USE_FROM + month}`, at(group, LITRE_ROW)];
  return nestedIfs(
    [
      [`NOT(ISNUMBER(${use}))`, use],
      [`NOT(ISNUMBER(${litre}))`, `IF(LEFT(${litre},5)="needs",${litre},"needs mending")`],
      [`NOT(ISNUMBER(${rain(group, month)}))`, '"needs mending"'],
    ],
    `MAX(0,${use}*${litre}/1000-${rain(group, month)})`,
  );
}

const IN_DOUBT = "in doubt under cover";
/** The weather does not hold for the depth of a group in a month, by how it came about. */
export const inDoubt = (how: string): string => `ISNUMBER(SEARCH("${IN_DOUBT}",${how}))`;

/** How the depth came about, or where the missing figure is typed. */
export function howFormula(group: number, month: number): string {
  const [use, litre] = [`${GROUP_COLUMNS[group]}${USE_FROM + month}`, at(group, LITRE_ROW)];
  const [pots, error] = [weighed("Weighed_Pots", group, month), weighed("Weighed_Error_mL", group, month)];
  const why = `"${whyCell(month)} says why"`;
  const millimetre = at(group, MILLIMETRE_ROW);
  return nestedIfs(
    [
      [`${use}=""`, '""'],
      [`${pots}=1`, '"1 pot weighed: see Weighings"'],
      [`AND(${pots}=0,${underCoverOnly(group)})`, `"needs weighings: ${UNDER_COVER}"`],
      [`AND(${pots}=0,NOT(ISNUMBER(${et0(month)})))`, why],
      [`AND(${pots}=0,NOT(ISNUMBER(${millimetre})))`, millimetre],
      [`NOT(ISNUMBER(${litre}))`, litre],
      [`NOT(ISNUMBER(${rain(group, month)}))`, why],
      [`${pots}>1`, `IF(${pots}<5,"only ","")&${pots}&" pots weighed: "&ROUND(${use},0)&" ± "&ROUND(${error},0)&" mL"`],
    ],
    `"weather: "&ROUND(${use},0)&" mL"&IF(${underCover(group)},", ${IN_DOUBT}","")`,
  ).concat(
    `&IF(ISNUMBER(${GROUP_COLUMNS[group]}${DEPTH_FROM + month}),IF(${rain(group, month)}>0,", less rain",""),"")`,
  );
}
