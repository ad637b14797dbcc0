import { namesOf } from "../../form/build";
import { nestedIfs } from "../../form/nested-ifs";
import { bounded, outside, wrong } from "../../form/typed-words";
import { NURSERY } from "../start/start";
import { NOTE_COLUMN } from "./places";
import { workingCell } from "./working";

const TYPED = "typed";
const FULL = "full weather (Penman-Monteith)";
const TEMPERATURES = "temperatures only (Hargreaves)";
const LATITUDE = `Nursery!${namesOf(NURSERY).get("Latitude_deg")}`;
const ELEVATION = `Nursery!${namesOf(NURSERY).get("Elevation_m")}`;
const NAMES_OF_FIVE = [
  ["D", "RHmin"],
  ["E", "RHmax"],
  ["F", "wind"],
  ["G", "sun"],
] as const;

/** How ET0 of a month came about, or what is missing or wrong; then what is wrong with its rain. */
export function wayFormula(row: number, month: number): string {
  const cell = (letter: string) => `$${letter}${row}`;
  const [b, c, d, e, f, g, h] = [..."BCDEFGH"].map(cell) as [string, string, string, string, string, string, string];
  const six = `COUNT(${b}:${g})=6`;
  const [full, hargreaves] = [
    workingCell("ET0, full weather [mm]", month),
    workingCell("ET0, temperatures [mm]", month),
  ];
  const daylight = workingCell("Daylight N [h]", month);
  const lacking = NAMES_OF_FIVE.map(([letter, name]) => `IF(${cell(letter)}=""," ${name}","")`).join("&");
  const lacked = `IF(${six},"; the full formula needs elevation: see ${ELEVATION}",IF(COUNT(${d}:${g})>0,"; the full formula needs"&${lacking},""))`;
  return nestedIfs(
    [
      bounded("ET0", h, 0, 30, "mm a day"),
      [`ISNUMBER(${h})`, `"${TYPED}"`],
      bounded("Tmin", b, -60, 60, "°C"),
      bounded("Tmax", c, -60, 60, "°C"),
      [
        `AND(COUNT(${b}:${c})=2,${b}>${c})`,
        `"Tmin in B${row} must be at most Tmax, "&${c}&" °C in C${row}, got "&${b}`,
      ],
      bounded("RHmin", d, 0, 100, "%"),
      bounded("RHmax", e, 0, 100, "%"),
      [
        `AND(COUNT(${d}:${e})=2,${d}>${e})`,
        `"RHmin in D${row} must be at most RHmax, "&${e}&" % in E${row}, got "&${d}`,
      ],
      bounded("wind", f, 0, 100, "m/s"),
      bounded("sun", g, 0, 24, "h"),
      [
        `AND(COUNT(${g},${daylight})=2,${g}>${daylight})`,
        `"sun in G${row} must be at most the "&ROUNDDOWN(${daylight},2)&" h of daylight, got "&${g}`,
      ],
      [`COUNT(${b}:${c})<2`, '"needs ET0, or Tmin and Tmax"'],
      [
        outside("Latitude_deg", -66.5, 66.5),
        wrong("latitude", "Latitude_deg", "be from -66.5 to 66.5 °").replace("in Latitude_deg", `in ${LATITUDE}`),
      ],
      ["NOT(ISNUMBER(Latitude_deg))", `"needs latitude: see ${LATITUDE}"`],
      [
        `AND(${six},${outside("Elevation_m", -500, 6000)})`,
        wrong("elevation", "Elevation_m", "be from -500 to 6000 m").replace("in Elevation_m", `in ${ELEVATION}`),
      ],
      [
        `IF(ISNUMBER(${full}),OR(${full}<0,${full}>30),FALSE)`,
        `"calculates at "&ROUND(${full},2)&" mm a day: type ET0 in H${row} instead"`,
      ],
      [`ISNUMBER(${full})`, `"${FULL}"`],
      [`ISNUMBER(${hargreaves})`, `"${TEMPERATURES}"&${lacked}`],
    ],
    `"Tmin in B${row} and Tmax must have a mean of -17.8 °C or more"`,
  ).concat(`&${rainWords(row)}`);
}

function rainWords(row: number): string {
  const [rain, share] = [`$I${row}`, `$J${row}`];
  const [rainOut, rainSaid] = bounded("rain", rain, 0, 10000, "mm");
  const [shareOut, shareSaid] = bounded("useful share", share, 0, 1, "");
  return nestedIfs(
    [
      [rainOut, `"; ${rainSaid.slice(1)}`],
      [shareOut, `"; ${shareSaid.slice(1)}`],
      [`AND(ISNUMBER(${rain}),${share}="")`, `"; rain is left out: needs the useful share in J${row}"`],
    ],
    '""',
  );
}

const begins = (row: number, words: string) => `LEFT($${NOTE_COLUMN}${row},${words.length})="${words}"`;

/** ET0 of a month, or in few words why there is none. */
export const usedFormula = (row: number, month: number): string =>
  nestedIfs(
    [
      [begins(row, TYPED), `$H${row}`],
      [begins(row, FULL), workingCell("ET0, full weather [mm]", month)],
      [begins(row, TEMPERATURES), workingCell("ET0, temperatures [mm]", month)],
      [begins(row, "needs"), '"needs weather"'],
    ],
    '"to fix"',
  );

/** Useful rain of a month [mm a day]; 0 where none is typed. */
export const usefulRainFormula = (row: number, days: number): string =>
  nestedIfs(
    [
      [outside(`$I${row}`, 0, 10000), '"to fix"'],
      [outside(`$J${row}`, 0, 1), '"to fix"'],
      [`COUNT($I${row}:$J${row})=2`, `$I${row}*$J${row}/${days}`],
    ],
    "0",
  );
