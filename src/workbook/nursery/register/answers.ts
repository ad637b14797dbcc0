import { changeFormat } from "../../../core/figures/figure";
import { MEASURES } from "../../../core/figures/measures";
import { WATER } from "../../../core/figures/water";
import { SAME_BASIS } from "../../../core/register/basis";
import { OTHER_AREA } from "../../../core/register/change";
import { columnOf, linesOf } from "./columns";
import { basisOf, lineCheck, retestOf } from "./line-formulas";
import { all, answer, counts, earlier, type Id, input, PLACES, sameKey } from "./places";

/** What is calculated for a line, a column each. */
export interface RegisterAnswer {
  id: string;
  heading: string;
  width: number;
  format?: string;
  align?: "left";
  formula: (row: number) => string;
}

const difference = (id: string, row: number) =>
  `IF(COUNT(${input(id, row)},${earlier(id, row)})=2,${input(id, row)}-${earlier(id, row)},"")`;
const whereSame = (row: number, formula: string) => `IF(${answer("basis", row)}="${SAME_BASIS}",${formula},"")`;

/** What is beside the lines. */
export const REGISTER_ANSWERS: readonly RegisterAnswer[] = [
  { id: "line", heading: "This line", width: 38, align: "left", formula: lineCheck },
  {
    id: "earlier",
    heading: "Earlier audit of this block",
    width: 11.5,
    format: "yyyy-mm-dd",
    formula: (row) => counts(row, `IF(${answer("w.earlierLine", row)}=0,"",${answer("w.earlierDay", row)})`),
  },
  { id: "basis", heading: "Can it be compared with that one?", width: 54, align: "left", formula: basisOf },
  ...(
    [
      ["mar", MEASURES.MAR, MEASURES.MAR.unit],
      ["cu", MEASURES.CU, "points"],
      ["du", MEASURES.DU, "points"],
    ] as const
  ).map(
    ([id, figure, unit]): RegisterAnswer => ({
      id,
      heading: `${figure.short}, change [${unit}]`,
      width: 8.5,
      format: changeFormat(figure),
      formula: (row) => whereSame(row, difference(id, row)),
    }),
  ),
  {
    id: "sc",
    heading: "SC, change",
    width: 8.5,
    format: changeFormat(MEASURES.SC_QUARTER),
    formula: (row) =>
      whereSame(
        row,
        `IF(${input("kind", row)}="low quarter",${difference("scQuarter", row)},${difference("scCan", row)})`,
      ),
  },
  {
    id: "water",
    heading: `${WATER.NOW.short}, change [${WATER.NOW.unit}]`,
    width: 10,
    format: "+#,##0;-#,##0;0",
    formula: (row) =>
      whereSame(row, `IF(${input("area", row)}<>${earlier("area", row)},"${OTHER_AREA}",${difference("water", row)})`),
  },
  {
    id: "due",
    heading: "Re-test due",
    width: 11.5,
    format: "yyyy-mm-dd",
    formula: (row) =>
      counts(
        row,
        `IF(${answer("w.later", row)}>0,"",IF(Retest_Months_Used="","",EDATE(${answer("w.day", row)},Retest_Months_Used)))`,
      ),
  },
  {
    id: "drift",
    heading: "Pressure drift [%]",
    width: 9,
    format: "+0.0;-0.0;0.0",
    formula: (row) => {
      const at = (day: Id) =>
        `INDEX(${linesOf(columnOf("pressure"))},SUMPRODUCT(${sameKey(row)}*(${all("w.day")}=${answer(day, row)})*${PLACES}))`;
      return counts(
        row,
        `IF(${answer("w.pressureBefore", row)}=0,"",ROUND(100*(${at("w.pressureDay")}/${at("w.pressureBefore")}-1),9))`,
      );
    },
  },
  { id: "retest", heading: "Re-test", width: 40, align: "left", formula: retestOf },
];
