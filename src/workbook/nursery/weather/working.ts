import { columnLetters } from "../../../cells/letters";
import type { CellSpec } from "../../form/sheet-spec";
import { FIRST_MONTH, NOTE_COLUMN, WORKING_FROM } from "./places";

interface Step {
  label: string;
  /** The equation of FAO-56, and what is done. */
  note: string;
  formula: (at: (label: string) => string, typed: (letter: string) => string, month: number) => string;
  format?: string;
}

const ifAll = (count: number, cells: string, formula: string) => `IF(COUNT(${cells})=${count},${formula},"")`;
const LATITUDE = "PI()/180*Latitude_deg";

/** From the month's weather to its reference evapotranspiration, in the order of FAO-56. */
const STEPS: readonly Step[] = [
  {
    label: "Day of the year J",
    note: "Middle of the month: integer(30.4 month - 15), FAO-56 annex table 2.5.",
    formula: (_, __, month) => `INT(30.4*${month}-15)`,
    format: "0",
  },
  {
    label: "Mean temperature [°C]",
    note: "Eq. 9: (Tmax + Tmin) / 2",
    formula: (_, typed) =>
      ifAll(
        2,
        `${typed("B")},${typed("C")}`,
        `IF(AND(${typed("B")}>=-60,${typed("B")}<=${typed("C")},${typed("C")}<=60),(${typed("C")}+${typed("B")})/2,"")`,
      ),
    format: "0.0",
  },
  {
    label: "Distance of the sun dr",
    note: "Eq. 23: 1 + 0.033 cos(2 π J / 365)",
    formula: (at) => `1+0.033*COS(2*PI()/365*${at("Day of the year J")})`,
  },
  {
    label: "Declination [rad]",
    note: "Eq. 24: 0.409 sin(2 π J / 365 - 1.39)",
    formula: (at) => `0.409*SIN(2*PI()/365*${at("Day of the year J")}-1.39)`,
  },
  {
    label: "Sunset angle ωs [rad]",
    note: "Eq. 25: arccos(-tan(latitude) tan(declination)), latitude in rad by eq. 22",
    formula: (at) =>
      `IF(ISNUMBER(Latitude_deg),IF(ABS(Latitude_deg)<=66.5,ACOS(-TAN(${LATITUDE})*TAN(${at("Declination [rad]")})),""),"")`,
  },
  {
    label: "Radiation above the air Ra",
    note: "Eq. 21, MJ/m²/day: 24 · 60 / π · 0.0820 dr (ωs sin lat sin dec + cos lat cos dec sin ωs)",
    formula: (at) => {
      const [sunset, dec] = [at("Sunset angle ωs [rad]"), at("Declination [rad]")];
      return `IF(ISNUMBER(${sunset}),24*60/PI()*0.082*${at("Distance of the sun dr")}*(${sunset}*SIN(${LATITUDE})*SIN(${dec})+COS(${LATITUDE})*COS(${dec})*SIN(${sunset})),"")`;
    },
  },
  {
    label: "Daylight N [h]",
    note: "Eq. 34: 24 ωs / π",
    formula: (at) => ifAll(1, at("Sunset angle ωs [rad]"), `24/PI()*${at("Sunset angle ωs [rad]")}`),
    format: "0.00",
  },
  {
    label: "Saturation at Tmax [kPa]",
    note: "Eq. 11: 0.6108 exp(17.27 T / (T + 237.3))",
    formula: (at, typed) => ifAll(1, at("Mean temperature [°C]"), saturation(typed("C"))),
  },
  {
    label: "Saturation at Tmin [kPa]",
    note: "Eq. 11",
    formula: (at, typed) => ifAll(1, at("Mean temperature [°C]"), saturation(typed("B"))),
  },
  {
    label: "Mean saturation es [kPa]",
    note: "Eq. 12: mean of the two above",
    formula: (at) => {
      const [most, least] = [at("Saturation at Tmax [kPa]"), at("Saturation at Tmin [kPa]")];
      return ifAll(2, `${most},${least}`, `(${most}+${least})/2`);
    },
  },
  {
    label: "Vapour pressure ea [kPa]",
    note: "Eq. 17: (e(Tmin) RHmax + e(Tmax) RHmin) / 200",
    formula: (at, typed) => {
      const [low, high] = [typed("D"), typed("E")];
      const right = `IF(AND(${low}>=0,${low}<=${high},${high}<=100),`;
      const pressure = `(${at("Saturation at Tmin [kPa]")}*${high}/100+${at("Saturation at Tmax [kPa]")}*${low}/100)/2`;
      return ifAll(3, `${at("Mean temperature [°C]")},${low},${high}`, `${right}${pressure},"")`);
    },
  },
  {
    label: "Slope Δ [kPa/°C]",
    note: "Eq. 13: 4098 e(T) / (T + 237.3)² at the mean temperature",
    formula: (at) => {
      const mean = at("Mean temperature [°C]");
      return ifAll(1, mean, `4098*${saturation(mean)}/(${mean}+237.3)^2`);
    },
  },
  {
    label: "Air pressure P [kPa]",
    note: "Eq. 7: 101.3 ((293 - 0.0065 elevation) / 293)^5.26",
    formula: () =>
      'IF(ISNUMBER(Elevation_m),IF(AND(Elevation_m>=-500,Elevation_m<=6000),101.3*((293-0.0065*Elevation_m)/293)^5.26,""),"")',
    format: "0.0",
  },
  {
    label: "Psychrometric γ [kPa/°C]",
    note: "Eq. 8: 0.000665 P",
    formula: (at) => ifAll(1, at("Air pressure P [kPa]"), `0.000665*${at("Air pressure P [kPa]")}`),
    format: "0.0000",
  },
  {
    label: "Solar radiation Rs",
    note: "Eq. 35, MJ/m²/day: (0.25 + 0.50 sun / N) Ra",
    formula: (at, typed) => {
      const [sun, day, above] = [typed("G"), at("Daylight N [h]"), at("Radiation above the air Ra")];
      return ifAll(
        3,
        `${sun},${day},${above}`,
        `IF(AND(${sun}>=0,${sun}<=${day}),(0.25+0.5*${sun}/${day})*${above},"")`,
      );
    },
  },
  {
    label: "Clear sky Rso",
    note: "Eq. 37, MJ/m²/day: (0.75 + 0.00002 elevation) Ra",
    formula: (at) => {
      const [pressure, above] = [at("Air pressure P [kPa]"), at("Radiation above the air Ra")];
      return ifAll(2, `${pressure},${above}`, `(0.75+0.00002*Elevation_m)*${above}`);
    },
  },
  {
    label: "Net radiation Rn",
    note: "Eq. 38 to 40, MJ/m²/day: 0.77 Rs minus net longwave radiation; Stefan-Boltzmann constant 4.903 · 10⁻⁹ per K⁴; Rs / Rso at most 1",
    formula: (at, typed) => {
      const [solar, clear, air] = [at("Solar radiation Rs"), at("Clear sky Rso"), at("Vapour pressure ea [kPa]")];
      const black = `4.903/10^9*((${typed("C")}+273.16)^4+(${typed("B")}+273.16)^4)/2`;
      return ifAll(
        3,
        `${solar},${clear},${air}`,
        `0.77*${solar}-${black}*(0.34-0.14*SQRT(${air}))*(1.35*MIN(1,${solar}/${clear})-0.35)`,
      );
    },
  },
  {
    label: "Soil heat G",
    note: "Eq. 43, MJ/m²/day: 0.07 (T of next month - T of month before); eq. 44 without the next: 0.14 (T - T before); without the month before: 0. December is before January",
    formula: (at, _, month) => {
      const of = (other: number) => workingCell("Mean temperature [°C]", (other + 12) % 12);
      const [before, now, next] = [of(month - 2), at("Mean temperature [°C]"), of(month)];
      const known = `IF(ISNUMBER(${before}),IF(ISNUMBER(${next}),0.07*(${next}-${before}),0.14*(${now}-${before})),0)`;
      return ifAll(1, now, known);
    },
  },
  {
    label: "ET0, full weather [mm]",
    note: "Eq. 6, Penman-Monteith: (0.408 Δ (Rn - G) + γ 900 / (T + 273) u (es - ea)) / (Δ + γ (1 + 0.34 u))",
    formula: (at, typed) => {
      const [net, slope, gamma] = [at("Net radiation Rn"), at("Slope Δ [kPa/°C]"), at("Psychrometric γ [kPa/°C]")];
      const [wind, mean] = [typed("F"), at("Mean temperature [°C]")];
      const drying = `${gamma}*900/(${mean}+273)*${wind}*(${at("Mean saturation es [kPa]")}-${at("Vapour pressure ea [kPa]")})`;
      return ifAll(
        2,
        `${net},${wind}`,
        `IF(AND(${wind}>=0,${wind}<=100),(0.408*${slope}*(${net}-${at("Soil heat G")})+${drying})/(${slope}+${gamma}*(1+0.34*${wind})),"")`,
      );
    },
    format: "0.00",
  },
  {
    label: "ET0, temperatures [mm]",
    note: "Eq. 52, Hargreaves: 0.0023 (T + 17.8) (Tmax - Tmin)^0.5 · 0.408 Ra (eq. 20)",
    formula: (at, typed) => {
      const [mean, above] = [at("Mean temperature [°C]"), at("Radiation above the air Ra")];
      return ifAll(
        2,
        `${mean},${above}`,
        `IF(${mean}>=-17.8,0.0023*(${mean}+17.8)*SQRT(${typed("C")}-${typed("B")})*0.408*${above},"")`,
      );
    },
    format: "0.00",
  },
];

function saturation(temperature: string): string {
  return `0.6108*EXP(17.27*${temperature}/(${temperature}+237.3))`;
}

/** A cell of the working part, by the label of its line and the month from 0. */
export function workingCell(label: string, month: number): string {
  const line = STEPS.findIndex((step) => step.label === label);
  if (line < 0) throw new Error(`there is no line ${label}`);
  return `$${columnLetters(month + 2)}$${WORKING_FROM + line}`;
}

/** The soil heat of the months. */
export const SOIL_HEAT = `${workingCell("Soil heat G", 0)}:${workingCell("Soil heat G", 11)}`.replaceAll("$", "");

/** The lines of the working part: a month a column. */
export const WORKING_CELLS: readonly CellSpec[] = STEPS.flatMap(({ label, note, formula, format = "0.000" }, line) => {
  const row = WORKING_FROM + line;
  return [
    { at: `A${row}`, kind: "label", value: label },
    ...Array.from({ length: 12 }, (_, month): CellSpec => {
      const typed = (letter: string) => `$${letter}$${FIRST_MONTH + month}`;
      const text = formula((other) => workingCell(other, month), typed, month + 1);
      return { at: `${columnLetters(month + 2)}${row}`, kind: "working", formula: text, format };
    }),
    { at: `${NOTE_COLUMN}${row}`, kind: "note", value: note },
  ];
});

export const WORKING_HEIGHTS = Object.fromEntries(
  STEPS.map(({ label }, line) => [WORKING_FROM + line, label === "Soil heat G" ? 39 : 26]),
);
