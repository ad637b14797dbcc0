import { PAYING } from "../../../core/figures/costs";
import { numberFormat, withUnit } from "../../../core/figures/figure";
import { entryField } from "../../form/entry-field";
import { type Field, type FormPart, formLines, joined } from "../../form/entry-lines";
import type { CellSpec } from "../../form/sheet-spec";
import { KINDS, LEVELS, type Level, NONE, PAYS, savedCell, UPGRADE } from "./places";

const MONEY = "#,##0.00";
const COLUMNS = { label: "A", entry: "B", unit: "C:D", note: "E:H", noteLine: 90 };

const LINES: readonly (string | Field)[] = [
  "Does the change pay?",
  {
    label: "Parts, and work that is bought",
    unit: "once",
    format: MONEY,
    formula: 'IF(ISNUMBER(Capital_Used),Capital_Used,"–")',
    note: "From Water and cost (what the change costs), else the sum on Actions.",
  },
  entryField("Upgrade_Labour", {
    format: MONEY,
    note: "Blank: 0.",
  }),
  entryField("Upgrade_Grant", {
    format: MONEY,
    note: "Blank: 0.",
  }),
  {
    label: "Capital",
    unit: "once",
    name: "Upgrade_Capital",
    format: MONEY,
    formula:
      'IF(COUNT(Capital_Used,Upgrade_Labour)=0,"–",IF(MIN(N(Capital_Used),N(Upgrade_Labour),N(Upgrade_Grant))<0,"–",IF(N(Upgrade_Grant)>N(Capital_Used)+N(Upgrade_Labour),"–",N(Capital_Used)+N(Upgrade_Labour)-N(Upgrade_Grant))))',
    note: "Parts + labour - grant.",
  },
  entryField("Upgrade_Life_years", {
    note: "Until it would have to be done again.",
  }),
  entryField("Upgrade_Rate", {
    unit: "0 to 1 a year",
    format: "0.0##",
    note: "What the money would earn elsewhere, or what a loan costs: 0.07 is 7 % a year. 0, or 0.001 and more.",
  }),
];

/** What 1 at the end of each year of its life is worth today. */
export const WORTH_TODAY =
  'IF(ISNUMBER(Upgrade_Life_years),IF(Upgrade_Life_years>0,IF(ISNUMBER(Upgrade_Rate),IF(Upgrade_Rate=0,Upgrade_Life_years,IF(AND(Upgrade_Rate>=0.001,Upgrade_Rate<=1),(1-1/(1+Upgrade_Rate)^Upgrade_Life_years)/Upgrade_Rate,"needs a rate of 0, or 0.001 to 1")),"needs a discount rate"),"needs years above 0"),"needs the years of life")';

const payback = (level: Level) =>
  `IF(COUNT(Saved_${level},Upgrade_Capital)=2,IF(Saved_${level}>0,Upgrade_Capital/Saved_${level},"never"),"${NONE}")`;
const worth = (level: Level) =>
  `IF(COUNT(Saved_${level},Upgrade_Capital,Upgrade_Worth)=3,Saved_${level}*Upgrade_Worth-Upgrade_Capital,"${NONE}")`;
const paying = (level: Level) => {
  const other = KINDS.filter((kind) => kind !== "Water").map((kind) => savedCell(kind, level));
  return `IF(COUNT(Saved_kL,Upgrade_Capital,Upgrade_Worth)=3,IF(Saved_kL>0,(Upgrade_Capital/Upgrade_Worth-SUM(${other.join(",")}))/Saved_kL,"never"),"${NONE}")`;
};
const lacks = (needsWorth: boolean) =>
  `IF(ISNUMBER(Upgrade_Capital),"",IF(COUNT(Capital_Used,Upgrade_Labour)=0,"Needs what it costs. ","Needs costs of 0 or more, and a grant that is not over them. "))${needsWorth ? '&IF(ISNUMBER(Upgrade_Worth),"","N"&MID(Upgrade_Worth,2,60)&". ")' : ""}`;

const ANSWERS: readonly {
  label: string;
  name: string;
  format: string;
  formula: (level: Level) => string;
  note: string;
}[] = [
  {
    label: withUnit(PAYING.Payback),
    name: "Payback",
    format: numberFormat(PAYING.Payback),
    formula: payback,
    note: `${lacks(false)}&"Capital / what is saved a year together."`,
  },
  {
    label: withUnit(PAYING.NPV),
    name: "NPV",
    format: MONEY,
    formula: worth,
    note: `${lacks(true)}&"Saved a year · (1 - (1 + rate)^-life) / rate - capital. Above 0 it pays."`,
  },
  {
    label: withUnit(PAYING.Paying_Price),
    name: "Paying_Price",
    format: MONEY,
    formula: paying,
    note: `${lacks(true)}&"(Capital / worth today of 1 a year - saved but for water) / kL saved. 0 or less: even where water is free."`,
  },
];

const answers: CellSpec[] = [
  ...["At prices", "low", "likely", "high"].map(
    (value, index): CellSpec => ({ at: `${"ABCD"[index]}${PAYS}`, kind: "heading", value }),
  ),
  { at: `E${PAYS}:H${PAYS}`, kind: "heading", value: "" },
  ...ANSWERS.flatMap(({ label, name, format, formula, note }, index): CellSpec[] => {
    const row = PAYS + 1 + index;
    return [
      { at: `A${row}`, kind: "label", value: label },
      ...LEVELS.map(
        (level, column): CellSpec => ({
          at: `${"BCD"[column]}${row}`,
          kind: "answer",
          name: `${name}_${level}`,
          formula: formula(level),
          format,
        }),
      ),
      { at: `E${row}:H${row}`, kind: "note", formula: note },
    ];
  }),
];

/** What the change costs, and when it pays. */
export const UPGRADE_LINES: FormPart = joined(formLines(UPGRADE, COLUMNS, LINES), {
  cells: answers,
  heights: Object.fromEntries(ANSWERS.map((_, index) => [PAYS + 1 + index, 28])),
});
