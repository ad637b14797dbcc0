import type { DataCheck } from "../../form/check-lines";
import { nestedIfs } from "../../form/nested-ifs";
import { CANS_GRID } from "./grid";
import { addressOf, LEAST_CATCH } from "./problems";

const R = "Cans_Readings";
const { countsAcross, countsAlong } = CANS_GRID;
const NO_CANS = ["Cans_Counted=0", '""'] as const;
const EDGE = 0.6;
/** Times apart from the middle can: common practice, no source. */
const VERY_WET = 3;
const VERY_DRY = 5;

/** A can's usual opening [mm]: common practice, no source. */
const LEAST_MOUTH = 40;
const MOST_MOUTH = 400;
/** An opening that is asked about. */
export const ODD_MOUTH = `IF(ISNUMBER(Can_Mouth_mm),OR(Can_Mouth_mm<${LEAST_MOUTH},Can_Mouth_mm>${MOST_MOUTH}),FALSE)`;
export const MOUTH_QUESTION = `"Is the opening of a can "&Can_Mouth_mm&" mm across? Most are ${LEAST_MOUTH} to ${MOST_MOUTH} mm. Rates change with its square."`;

/** A check that is silent without cans and says "ok" where nothing is to be done. */
const check = (label: string, ...pairs: readonly (readonly [string, string])[]): DataCheck => ({
  label,
  formula: nestedIfs([NO_CANS, ...pairs], '"ok"'),
});

const notChecked = (needs: string) =>
  `"not checked: needs "&IF(Readings_Problem<>"","readings that are numbers or x","${needs}")`;
const blanks = `(COUNT(${countsAcross})*COUNT(${countsAlong})-SUM(${countsAcross}))`;
const alike = (cans: string, heads: string, times: number) =>
  `IF(COUNT(${cans},${heads})=2,ABS(${cans}-${times}*${heads})<=0.05*${times}*${heads},FALSE)`;
const near = (times: number) =>
  `OR(${alike("Can_Spacing_m", "Head_Spacing_m", times)},${alike("Can_Row_Spacing_m", "Row_Spacing_m", times)})`;
const far = (gap: string) => `IF(ISNUMBER(${gap}),${gap}>${EDGE}+1/10^9,FALSE)`;
const SIDES = ["Left", "Right", "Top", "Bottom"] as const;
const farSides = SIDES.map((side) => `IF(${far(`Gap_${side}_m`)}," ${side.toLowerCase()}","")`).join("&");
const ratio = "Used_MAR*Block_Area_m2/Bed_Flow_Lh";
const clock = "MOD(Test_Stop-Test_Start,1)*1440";

const problem = (label: string, name: string): DataCheck => ({
  label,
  formula: nestedIfs([[`${name}<>""`, name], NO_CANS], '"ok"'),
});

/** Everything that is looked at before a figure is believed. */
export const CAN_CHECKS: readonly DataCheck[] = [
  problem("Readings", "Readings_Problem"),
  problem("Positions", "Positions_Problem"),
  problem("Pots", "Pots_Problem"),
  check("Walk-through", [
    'Walk_Through=""',
    '"Not done before the test: look for blocked, leaning, mixed and leaking heads, mend them or not, and say so on Block."',
  ]),
  check("Can opening", [ODD_MOUTH, MOUTH_QUESTION]),
  check("Leaves over the cans", [
    'Canopy_Over="yes"',
    '"Hanging baskets or a wet canopy were over the cans: the figures are of what dripped and fell into cans, not of the heads."',
  ]),
  check("Blank places", [
    `${blanks}>0`,
    `${blanks}&IF(${blanks}=1," place"," places")&" within the grid "&IF(${blanks}=1,"is","are")&" blank: type the reading, or x where a can was not read."`,
  ]),
  check(
    "Number of cans",
    [
      "Cans_Counted<16",
      '"Only "&Cans_Counted&IF(Cans_Counted=1," can"," cans")&": under 16 there is no verdict. Set out 24 or more."',
    ],
    ["Cans_Counted<24", '"Only "&Cans_Counted&" cans: verdicts are indicative. Set out 24 or more."'],
  ),
  check(
    "Can spacing",
    [
      "COUNT(Can_Spacing_m,Head_Spacing_m)+COUNT(Can_Row_Spacing_m,Row_Spacing_m)<4",
      '"not checked: needs positions here and head spacings on Block"',
    ],
    [near(1), '"Cans are as far apart as heads and see one part of their pattern: use about 0.6 of the head spacing."'],
    [near(0.5), '"Cans are half as far apart as heads, which misleads: use about 0.6 of the head spacing."'],
  ),
  check(
    "Edge cans",
    [
      `COUNT(${SIDES.map((side) => `Gap_${side}_m`).join(",")})<4`,
      '"not checked: needs positions here and the sides of the bed on Block"',
    ],
    [
      `${farSides}<>""`,
      `"No cans within ${EDGE} m of these edges: "&SUBSTITUTE(TRIM(${farSides})," ",", ")&". Add cans there, or say that the result is of the interior only."`,
    ],
  ),
  check(
    "Mean catch",
    ["NOT(ISNUMBER(Mean_Depth_mm))", notChecked("the mouth")],
    [
      "Mean_Depth_mm<2.3",
      '"Mean catch "&ROUND(Mean_Depth_mm,1)&" mm, under 2.3: run the test longer; 5 mm is better."',
    ],
  ),
  check(
    "Wind",
    ["NOT(ISNUMBER(Wind_Max_ms))", '"not checked: needs the wind log on Heads"'],
    ["Wind_Max_ms>4", '"Wind up to "&Wind_Max_ms&" m/s, over 4: stop watering, test again in calm air."'],
    ["Wind_Max_ms>2.2", '"Wind up to "&Wind_Max_ms&" m/s, over 2.2: it skews the pattern; test at a calmer hour."'],
  ),
  check(
    "Rate",
    ["NOT(ISNUMBER(Mean_Rate_mmh))", notChecked("mouth and minutes")],
    [
      "OR(Mean_Rate_mmh<2,Mean_Rate_mmh>60)",
      '"Mean rate "&ROUND(Mean_Rate_mmh,1)&" mm/h is outside 2 to 60: check mouth, minutes, and that readings are mL."',
    ],
  ),
  check(
    "Cans against heads",
    [
      "OR(COUNT(Used_MAR,Block_Area_m2,Bed_Flow_Lh)<3,N(Bed_Flow_Lh)<=0)",
      '"not checked: needs bucket flows on Heads, heads and sides on Block"',
    ],
    [
      `${ratio}>1`,
      `"Cans caught "&ROUND(100*${ratio},0)&" % of what the heads gave: check mouth, minutes, buckets, number of heads."`,
    ],
    [
      `${ratio}<0.5`,
      `"Cans caught only "&ROUND(100*${ratio},0)&" % of what the heads gave: check mouth, minutes; else overspray, leaks."`,
    ],
  ),
  check(
    "Clock",
    ["COUNT(Test_Start,Test_Stop,Test_Minutes)<3", '"not checked: needs start, stop and minutes"'],
    [
      `ABS(${clock}-Test_Minutes)>1`,
      `"From start to stop are "&ROUND(${clock},0)&" min, but "&Test_Minutes&" are typed: check both."`,
    ],
  ),
  check("A very wet can", [
    `IF(Readings_Problem="",MAX(${R})>${VERY_WET}*MEDIAN(${R}),FALSE)`,
    `"Can "&${addressOf("Wettest_Can_Place")}&" holds "&MAX(${R})&" mL, over ${VERY_WET} times the middle one: a leak, or a typing error?"`,
  ]),
  check("A very dry can", [
    `IF(Readings_Problem="",IF(MEDIAN(${R})>0,${VERY_DRY}*${LEAST_CATCH}<MEDIAN(${R}),FALSE),FALSE)`,
    `"Can "&${addressOf("Driest_Can_Place")}&" holds "&${LEAST_CATCH}&" mL, under 1/${VERY_DRY} of the middle one, and may set the run time: look at that can, its head and what was typed."`,
  ]),
];
