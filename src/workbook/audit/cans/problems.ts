import { nestedIfs } from "../../form/nested-ifs";
import { CANS_GRID } from "./grid";

const R = "Cans_Readings";
/** A range of Cans, as the sheet Working names it. */
const onCans = (range: string) => `Cans!${range}`;
const [countsAcross, countsAlong] = [CANS_GRID.countsAcross, CANS_GRID.countsAlong].map(onCans) as [string, string];
const neighboursOf = ([before, after]: readonly [string, string]) => [onCans(before), onCans(after)] as const;
const neighboursAcross = neighboursOf(CANS_GRID.neighboursAcross);
const neighboursAlong = neighboursOf(CANS_GRID.neighboursAlong);

/** 1 for each place of the grid that holds neither a number from 0 up nor x. */
const WRONG = `(ISTEXT(${R})*(UPPER(TRIM(${R}))<>"X")+ISNUMBER(${R})*(${R}<0)+ISLOGICAL(${R}))`;

/** The first place of an area where something counts 1 and not 0, as 1000 × row + column, in reading order. */
const first = (counts: string, area = R) => `SUMPRODUCT(MIN(1E6*(${counts}=0)+1000*ROW(${area})+COLUMN(${area})))`;
/** The address of a place that is given as 1000 × row + column. */
export const addressOf = (place: string) => `ADDRESS(INT(${place}/1000),MOD(${place},1000),4)`;

/** How many readings are wrong, and the first of them. */
const WRONG_COUNT = `IF(SUMPRODUCT(--ISERROR(${R}))>0,0,SUMPRODUCT(${WRONG}))`;
const firstWrong = (count: string) => `IF(${count}=0,"",${first(WRONG)})`;

/** The least that any can caught, dry cans apart, and the first can that caught no more. */
export const LEAST_CATCH = `SMALL(${R},1+Cans_Dry)`;
const DRIEST_CAN = `IF(OR(Readings_Problem<>"",N(Cans_Dry)>=Cans_Counted),"",${first(`(ISNUMBER(${R})*(${R}=${LEAST_CATCH}))`)})`;

/** What is wrong with the readings, in words; "" where nothing is. */
function readingsProblem(count: string, place: string): string {
  const row = `INT(${place}/1000)`;
  const column = `MOD(${place},1000)`;
  const value = `INDEX(${R},${row}-MIN(ROW(${R}))+1,${column}-MIN(COLUMN(${R}))+1)`;
  const kind = nestedIfs(
    [
      [`ISNUMBER(${value})`, '"below 0"'],
      [`ISLOGICAL(${value})`, '"TRUE or FALSE"'],
      [`ISNUMBER(VALUE(${value}))`, '"a number stored as text"'],
    ],
    '"text"',
  );
  return nestedIfs(
    [
      [
        `SUMPRODUCT(--ISERROR(${R}))>0`,
        `SUMPRODUCT(--ISERROR(${R}))&IF(SUMPRODUCT(--ISERROR(${R}))=1," reading shows"," readings show")&" an error: type again."`,
      ],
      [`${count}=0`, '""'],
    ],
    `${count}&IF(${count}=1," reading is"," readings are")&" neither a number from 0 up nor x, first in "&${addressOf(place)}&" ("&${kind}&"): type again."`,
  );
}

const pairs = ([before, after]: readonly [string, string], condition: (b: string, a: string) => string) =>
  `SUMPRODUCT(${condition(before, after)})`;
const gap = (before: string, after: string) => `(1-ISNUMBER(${before}))*ISNUMBER(${after})`;
const falling = (before: string, after: string) => `ISNUMBER(${before})*ISNUMBER(${after})*(${after}<=${before})`;
const counted = (count: string, noun: string) => `${count}&IF(${count}=1," ${noun}"," ${noun}s")`;
const unplaced = (counts: string, positions: string) => `SUMPRODUCT((${counts}<>"")*(1-ISNUMBER(${positions})))`;
const beyond = (positions: string, side: string) =>
  `AND(ISNUMBER(${side}),COUNT(${positions})>0,MAX(${positions})>N(${side})+1/10^9)`;
const POSITIONS = ["Cans_Across_m", "Cans_Along_m"] as const;
const NEIGHBOURS = [neighboursAcross, neighboursAlong] as const;
/** The address of the first wrong place: across the bed, else along it. */
const firstOf = ([across, along]: readonly [counts: string, area: string][]) =>
  `IF(SUMPRODUCT(1*(${across![0]}))>0,${addressOf(first(...across!))},${addressOf(first(...along!))})`;
const firstPosition = (counts: (positions: string) => string) =>
  firstOf(POSITIONS.map((positions) => [counts(positions), positions]));
const OTHER_THAN_NUMBER = (positions: string) => `(${positions}<>"")*(1-ISNUMBER(${positions}))`;
const BELOW_0 = (positions: string) => `ISNUMBER(${positions})*(${positions}<0)`;
/** The first place of one way that lies beyond the bed. */
const firstBeyond = (positions: string, side: string) =>
  addressOf(first(`ISNUMBER(${positions})*(${positions}>N(${side})+1/10^9)`, positions));

/** What is wrong with the positions, in words; "" where nothing is. */
const POSITIONS_PROBLEM = nestedIfs(
  [
    [`COUNT(${countsAcross})=0`, '""'],
    [
      "COUNT(Cans_Across_m)+COUNT(Cans_Along_m)=0",
      '"No positions: type the metres from the left and top edges; map and weighting need them."',
    ],
    [
      "COUNT(Cans_Across_m)+COUNT(Cans_Along_m)<>COUNTA(Cans_Across_m)+COUNTA(Cans_Along_m)",
      `"The position in "&${firstPosition(OTHER_THAN_NUMBER)}&" is not a number: type metres."`,
    ],
    [
      `${unplaced(countsAcross, "Cans_Across_m")}+${unplaced(countsAlong, "Cans_Along_m")}>0`,
      `"No position is typed for "&${counted(unplaced(countsAcross, "Cans_Across_m"), "column")}&" and "&${counted(unplaced(countsAlong, "Cans_Along_m"), "row")}&" with readings: type metres."`,
    ],
    [
      `${pairs(neighboursAcross, gap)}+${pairs(neighboursAlong, gap)}>0`,
      `"A position is missing before "&${firstOf(NEIGHBOURS.map((pair) => [gap(...pair), pair[1]]))}&": start at the first column and row."`,
    ],
    [
      `${pairs(neighboursAcross, falling)}+${pairs(neighboursAlong, falling)}>0`,
      `"The position in "&${firstOf(NEIGHBOURS.map((pair) => [falling(...pair), pair[1]]))}&" must be more than the one before it: they grow from left to right and from top to bottom."`,
    ],
    [
      "MIN(Cans_Across_m,Cans_Along_m)<0",
      `"The position in "&${firstPosition(BELOW_0)}&" is below 0: measure from the left and top edges."`,
    ],
    [
      beyond("Cans_Across_m", "Bed_Width_m"),
      `"The position in "&${firstBeyond("Cans_Across_m", "Bed_Width_m")}&" lies beyond the bed, "&Bed_Width_m&" m wide (Block)."`,
    ],
    [
      beyond("Cans_Along_m", "Bed_Length_m"),
      `"The position in "&${firstBeyond("Cans_Along_m", "Bed_Length_m")}&" lies beyond the bed, "&Bed_Length_m&" m long (Block)."`,
    ],
  ],
  '""',
);

/** The wettest can, as 1000 × row + column. */
const WETTEST_CAN = `IF(OR(Readings_Problem<>"",Cans_Counted=0),"",${first(`(ISNUMBER(${R})*(${R}=MAX(${R})))`)})`;

/** What the sheet Working finds wrong, and the cans that checks name. */
export const PROBLEM_LINES: readonly [label: string, name: string, formula: string][] = [
  ["How many readings are wrong", "Wrong_Readings", WRONG_COUNT],
  ["The first of them: 1000 × row + column on Cans", "First_Wrong_Place", firstWrong("Wrong_Readings")],
  ["What is wrong with readings", "Readings_Problem", readingsProblem("Wrong_Readings", "First_Wrong_Place")],
  ["What is wrong with positions", "Positions_Problem", POSITIONS_PROBLEM],
  ["The driest can: 1000 × row + column on Cans", "Driest_Can_Place", DRIEST_CAN],
  ["The wettest can: 1000 × row + column on Cans", "Wettest_Can_Place", WETTEST_CAN],
];
