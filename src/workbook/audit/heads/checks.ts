import type { DataCheck } from "../../form/check-lines";
import { nestedIfs } from "../../form/nested-ifs";

/** A check that is silent while a figure is missing and says "ok" where nothing is to be done. */
const check = (
  label: string,
  needed: readonly string[],
  ...pairs: readonly (readonly [string, string])[]
): DataCheck => ({
  label,
  formula: nestedIfs([[`COUNT(${needed.join(",")})<${needed.length}`, '""'], ...pairs], '"ok"'),
});

const place = (extreme: "MIN" | "MAX") => `INDEX(Head_Place,MATCH(${extreme}(Flow_Lh),Flow_Lh,0))`;
const share = (extreme: "MIN" | "MAX") => `ROUND(${extreme}(Flow_Share_Percent),0)`;
const drift = "(AVERAGE(Pressure_After_kPa)/AVERAGE(Pressure_Before_kPa)-1)";
const ofMaker = "Flow_Mean_Lh/Flow_Expected_Lh";
const given = "(Bed_Flow_Lh*Test_Minutes/60)";

/** The number of the first line that a rule picks. */
const firstHead = (rule: string) =>
  `(SUMPRODUCT(MIN((${rule})*(ROW(Head_Arc_deg)-1000)))+1001-SUMPRODUCT(MIN(ROW(Head_Arc_deg))))`;
const picks = (rule: string) => `SUMPRODUCT((${rule})*1)>0`;
const HALF_PLACED = "(ISNUMBER(Head_Across_m)<>ISNUMBER(Head_Along_m))*1";
const WITHOUT_WAY = '(Head_Arc_deg<>"")*(Head_Arc_deg>0)*(Head_Arc_deg<360)*(Head_Faces="")';

/** What the gauge, the bucket and the meter say about the heads. */
export const HEAD_CHECKS: readonly DataCheck[] = [
  {
    label: "Places of heads",
    formula: nestedIfs(
      [
        [
          picks(HALF_PLACED),
          `"Head "&${firstHead(HALF_PLACED)}&" has only one of across and along: type both, or neither."`,
        ],
        [picks(WITHOUT_WAY), `"Head "&${firstHead(WITHOUT_WAY)}&" throws a part circle: choose which way it faces."`],
      ],
      'IF(COUNT(Head_Across_m,Head_Along_m,Head_Arc_deg,Head_Spacing_m)=0,"","ok")',
    ),
  },
  check(
    "Pressure",
    ["Pressure_Range_Percent"],
    [
      "Pressure_Range_Percent>20",
      '"Range of pressure "&ROUND(Pressure_Range_Percent,0)&" %, over 20 (a limit from memory): larger pipe, a loop, or fewer heads on the valve."',
    ],
  ),
  {
    label: "Before and after",
    formula: nestedIfs(
      [
        ["OR(COUNT(Pressure_Before_kPa)=0,COUNT(Pressure_After_kPa)=0)", '""'],
        ["MIN(Pressure_Before_kPa)<=0", '"A pressure before the test is 0: was the water on?"'],
        [
          `ABS(${drift})>0.1`,
          `"Mean pressure changed by "&ROUND(100*${drift},0)&" % during the test: find out why, and test again when it is steady."`,
        ],
      ],
      '"ok"',
    ),
  },
  {
    label: "Buckets",
    formula: nestedIfs(
      [
        ["COUNT(Flow_Lh)=0", '""'],
        [
          "COUNT(Flow_Lh)<4",
          '"Only "&COUNT(Flow_Lh)&" flows: measure four to six heads, the first and the last among them."',
        ],
      ],
      '"ok"',
    ),
  },
  check(
    "Throw and spacing",
    ["Head_Throw_m"],
    [
      "MAX(N(Head_Spacing_m),N(Row_Spacing_m))>2*Head_Throw_m",
      '"Heads are "&MAX(N(Head_Spacing_m),N(Row_Spacing_m))&" m apart, over twice the throw of "&Head_Throw_m&" m: the circles of neighbours do not meet. Are both right?"',
    ],
  ),
  check(
    "Flow from head to head",
    ["Flow_Range_Percent"],
    [
      "MIN(Flow_Share_Percent)<90",
      `"Lowest flow, at "&${place("MIN")}&", is "&${share("MIN")}&" % of the mean: blocked or stopped? Clean or replace."`,
    ],
    [
      "MAX(Flow_Share_Percent)>110",
      `"Highest flow, at "&${place("MAX")}&", is "&${share("MAX")}&" % of the mean: worn, or another nozzle? Replace."`,
    ],
    [
      "Flow_Range_Percent>10",
      '"Range of flow "&ROUND(Flow_Range_Percent,0)&" %, over 10 (a limit from memory): even out the pressure, or look for mixed nozzles."',
    ],
  ),
  check(
    "Flow against the maker's",
    ["Flow_Mean_Lh", "Flow_Expected_Lh"],
    [
      `${ofMaker}>1.1`,
      `"Mean flow is "&ROUND(100*${ofMaker},0)&" % of the flow to expect: worn nozzles? Replace the whole set."`,
    ],
    [
      `${ofMaker}<0.9`,
      `"Mean flow is "&ROUND(100*${ofMaker},0)&" % of the flow to expect: filter, blocked nozzles, or other nozzles than written."`,
    ],
  ),
  check(
    "Meter",
    ["Metered_Test_L"],
    ["Metered_Test_L<=0", '"The meter did not move: check both readings."'],
    [
      `IF(COUNT(Bed_Flow_Lh,Test_Minutes)=2,ABS(Metered_Test_L-${given})>0.1*${given},FALSE)`,
      `"Metered "&ROUND(Metered_Test_L,0)&" L, but the heads gave "&ROUND(${given},0)&" L: leaks, other outlets, beds on the valve?"`,
    ],
  ),
  check(
    "Caught / metered",
    ["Caught_Metered_Share"],
    [
      "Caught_Metered_Share>1",
      '"More caught than metered: check mouth, minutes, both meter readings and the beds on the valve."',
    ],
    [
      "Caught_Metered_Share<0.5",
      '"Under half of the water fell on the bed: overspray, drift or leaks, or a wrong mouth or meter reading."',
    ],
  ),
];
