import { areaTwins, equalTwins, type MeasureTwins } from "./measure-twins";
import { depthOfMillilitre } from "./millilitres";

/** The arguments of a worksheet function as they are in a formula; "" for one that is left out. */
type Arguments = readonly string[];

/** An argument that can be put beside any operator. */
function operand(text: string): string {
  return /^[\w$.!':]+$/.test(text) ? text : `(${text})`;
}

/** The text of a literal such as `"mm"`, in small letters. */
function literalText(argument: string): string | null {
  const [, text] = /^"([^"]*)"$/.exec(argument) ?? [];
  return text === undefined ? null : text.trim().toLowerCase();
}

/** Millimetres that a reading of 1 is for, as a factor. */
function depthOfOneUnit(mouth: string): string | null {
  const millilitres = depthOfMillilitre(operand(mouth));
  const text = literalText(mouth);
  if (text !== null) return text === "mm" ? "1" : null;
  return /^[\d.]+$/.test(mouth) ? millilitres : `IF(TRIM(${mouth})="mm",1,${millilitres})`;
}

function measures(r: string, areas = ""): MeasureTwins | null {
  return areas === "" ? equalTwins(r) : areaTwins(r, areas);
}

/** The multiplier that a literal basis names; null where the basis is no literal, or none that is known. */
function multiplier(of: MeasureTwins, basis = ""): string | null {
  const text = literalText(basis);
  if (basis === "" || text === "can") return of.ofDriestCan;
  if (text === "quarter") return of.ofLowQuarter;
  const [, digits, percent] = /^(\d*\.?\d+)(%?)$/.exec(basis) ?? [];
  const share = Number(digits) / (percent ? 100 : 1);
  return share >= 0.5 && share <= 1 ? of.ofShare(basis) : null;
}

function rate(of: MeasureTwins, minutes: string, mouth: string): string | null {
  const unit = depthOfOneUnit(mouth);
  return unit && `${of.mean}*${unit}*60/${operand(minutes)}`;
}

function water([r = "", area = "", depth = "", days = "", basis, share = "", areas]: Arguments): string | null {
  const of = measures(r, areas);
  const times = of && multiplier(of, basis);
  const net = [area, depth, days].map(operand).join("*");
  return times && `${net}*${times}${share === "" ? "" : `/${operand(share)}`}/1000`;
}

function cost([r = "", area = "", depth = "", days = "", price = "", ...rest]: Arguments): string | null {
  const volume = water([r, area, depth, days, ...rest]);
  return volume && `${volume}*${operand(price)}`;
}

function ofCell(cell: string, mouth: string, times: string): string | null {
  const unit = depthOfOneUnit(mouth);
  return unit && `IF(ISNUMBER(${cell}),${operand(cell)}*${unit}${times},"")`;
}

/** FAO-56 (1998), eq. 9 and 20 to 25 in eq. 52. */
function hargreaves([tmin = "", tmax = "", latitude = "", day = ""]: Arguments): string {
  const [least, most] = [operand(tmin), operand(tmax)];
  const turn = `2*PI()/365*${operand(day)}`;
  const lat = `(PI()/180*${operand(latitude)})`;
  const dec = `(0.409*SIN(${turn}-1.39))`;
  const sunset = `ACOS(-TAN${lat}*TAN${dec})`;
  const sky = `${sunset}*SIN${lat}*SIN${dec}+COS${lat}*COS${dec}*SIN(${sunset})`;
  const radiation = `24*60/PI()*0.082*(1+0.033*COS(${turn}))*(${sky})`;
  return `0.0023*((${most}+${least})/2+17.8)*SQRT(${most}-${least})*0.408*${radiation}`;
}

const TWINS: Record<string, (given: Arguments) => string | null> = {
  "CU.CHRISTIANSEN": ([r = "", areas]) => measures(r, areas)?.christiansen ?? null,
  "DU.QUARTER": ([r = "", areas]) => measures(r, areas)?.distribution ?? null,
  "SC.CAN": ([r = "", areas]) => measures(r, areas)?.ofDriestCan ?? null,
  "SC.QUARTER": ([r = "", areas]) => measures(r, areas)?.ofLowQuarter ?? null,
  "SC.SHARE": ([r = "", share = "", areas]) => measures(r, areas)?.ofShare(operand(share)) ?? null,
  "DEPTH.CAUGHT": ([cell = "", mouth = ""]) => ofCell(cell, mouth, ""),
  "RATE.CAUGHT": ([cell = "", minutes = "", mouth = ""]) => ofCell(cell, mouth, `*60/${operand(minutes)}`),
  MAR: ([r = "", minutes = "", mouth = "", areas]) => {
    const of = measures(r, areas);
    return of && rate(of, minutes, mouth);
  },
  "RATE.HEAD": ([flow = "", spacing = "", rows = ""]) => `${operand(flow)}/(${operand(spacing)}*${operand(rows)})`,
  RUNTIME: ([r = "", minutes = "", mouth = "", depth = "", basis, areas]) => {
    const of = measures(r, areas);
    const times = of && multiplier(of, basis);
    const mean = of && rate(of, minutes, mouth);
    return times && mean && `60*${operand(depth)}/(${mean})*${times}`;
  },
  "WATER.ANNUAL": water,
  "COST.ANNUAL": cost,
  "POT.DEPTH": ([volume = "", top = "", capture = ""]) =>
    `1000*${operand(volume)}/(PI()*${operand(top)}^2/4)${capture === "" ? "" : `/${operand(capture)}`}`,
  "ETO.HARGREAVES": hargreaves,
};

/**
 * The native formula, without `=`, that gives what a worksheet function gives, in functions that Excel 2010 and
 * LibreOffice 7.4 both know; null where there is none. It is an expression of `*` and `/`: bracket it beside others.
 *
 * DEPTH.CAUGHT and RATE.CAUGHT answer for one cell: give each cell of their readings instead of the range. A native
 * formula passes over text and takes negatives, so `soundReadings` belongs in front, and `soundAreas` where areas are given.
 *
 * @param name Name of the function without its namespace, such as `SC.CAN`
 * @param given Its arguments as they are in the formula, "" for one that is left out
 */
export function twin(name: string, given: readonly string[]): string | null {
  if (!Object.hasOwn(TWINS, name)) return null;
  return TWINS[name]!(given.map((argument) => argument.trim()));
}

/**
 * A native condition: true where a range holds nothing but numbers of 0 or more, `x` and blank cells. LibreOffice does
 * not tell a TRUE in a range from 1.
 */
export function soundReadings(range: string): string {
  const words = `ISTEXT(${range})*(TRIM(${range})<>"x")*(TRIM(${range})<>"")`;
  return `SUMPRODUCT(${words}+ISLOGICAL(${range})+ISNUMBER(${range})*(${range}<0))=0`;
}

/** A native condition: true where each can that was read has an area above 0. */
export function soundAreas(range: string, areas: string): string {
  return `SUMPRODUCT(ISNUMBER(${range})*(1-ISNUMBER(${areas})*(${areas}>0)))=0`;
}

/** The place of the areas among the arguments of the functions that have a twin and take them. */
const AREAS_AT: Readonly<Record<string, number>> = {
  "CU.CHRISTIANSEN": 1,
  "DU.QUARTER": 1,
  "SC.CAN": 1,
  "SC.QUARTER": 1,
  "SC.SHARE": 2,
  MAR: 3,
  RUNTIME: 5,
  "WATER.ANNUAL": 6,
  "COST.ANNUAL": 7,
};

/** Where a function takes the areas of its cans, counted from 0; -1 where it takes none or has no twin. */
export function areasAt(name: string): number {
  return AREAS_AT[name] ?? -1;
}
