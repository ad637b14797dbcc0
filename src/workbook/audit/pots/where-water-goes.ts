import type { CellSpec } from "../../form/sheet-spec";
import { POT_AREA } from "../run-time/pot-area";
import { ifNumber } from "../water-cost/formulas";
import { ALL_FROM, column, GROUPS, nameOf, rowOf, WHERE } from "./places";
import { FACTOR, POTS_PROBLEM } from "./problems";

const ONE_SIZE = `IF(COUNT(Pot_Top_mm,Pot_Spacing_mm)<2,"needs pot top and spacing",IF(OR(MIN(Pot_Top_mm,Pot_Spacing_mm)<=0,${FACTOR}<=0),"needs pot top and spacing above 0",MIN(1,${FACTOR}*${POT_AREA}/Pot_Spacing_mm^2)))`;
const GROUPS_REACHED = `IF(Groups_Problem<>"",Groups_Problem,IF(COUNT(${column("P")})<Groups_In_Use,"needs top and spacing of each group",SUMPRODUCT(${column("I")},${column("P")})))`;

interface Part {
  label: string;
  share?: readonly [name: string, formula: string];
  kL: readonly [name: string, formula: string];
  fertiliser?: readonly [name: string, formula: string];
  note: string;
}

const ofBed = (share: string) => ifNumber("Needed_Now_Bed_kL", ifNumber(share, `Needed_Now_Bed_kL*${share}`));
const fertiliser = (kL: string, content: string) =>
  `IF(AND(ISNUMBER(${kL}),ISNUMBER(${content})),${kL}*${content}/1000,"")`;

const PARTS: readonly Part[] = [
  {
    label: "Beside the bed",
    kL: [
      "Beside_Bed_kL",
      ifNumber("Needed_Now_Bed_kL", ifNumber("Needed_Now_Heads_kL", "Needed_Now_Heads_kL-Needed_Now_Bed_kL")),
    ],
    note: "Needed from the heads - needed on the bed (Water and cost).",
  },
  {
    label: "Between the pots",
    share: ["Between_Pots_Share", ifNumber("Reached_Share", "1-Reached_Share")],
    kL: ["Between_Pots_kL", ofBed("Between_Pots_Share")],
    fertiliser: ["Between_Pots_Fertiliser_kg", fertiliser("Between_Pots_kL", "Fertiliser_Water_mgL")],
    note: "1 - capture factor · pot top's area / spacing². kg: kL · mg/L of the irrigation water / 1000.",
  },
  {
    label: "Drains from the pots",
    share: [
      "Pots_Drained_Share",
      ifNumber("Mean_Drained_Share", ifNumber("Reached_Share", "Reached_Share*Mean_Drained_Share")),
    ],
    kL: ["Pots_Drained_kL", ofBed("Pots_Drained_Share")],
    fertiliser: ["Pots_Drained_Fertiliser_kg", fertiliser("Pots_Drained_kL", "Fertiliser_mgL")],
    note: "What reaches the pots · share of it that drains (Run time). kg: kL · mg/L of what drains / 1000.",
  },
  {
    label: "Stays in the pots",
    share: ["Pots_Kept_Share", ifNumber("Pots_Drained_Share", "Reached_Share-Pots_Drained_Share")],
    kL: ["Pots_Kept_kL", ofBed("Pots_Kept_Share")],
    note: "The rest: what the plants use.",
  },
];

const named = (at: string, [name, formula]: readonly [string, string], format: string): CellSpec => ({
  at,
  kind: "answer",
  name,
  formula,
  format,
});

const parts = PARTS.flatMap(({ label, share, kL, fertiliser: kilograms, note }, index): CellSpec[] => {
  const row = WHERE + 1 + index;
  return [
    { at: `A${row}:C${row}`, kind: "label", value: label },
    ...(share ? [named(`D${row}`, share, "0 %")] : []),
    named(`E${row}:F${row}`, kL, "#,##0.0"),
    ...(kilograms ? [named(`G${row}`, kilograms, "0.0")] : []),
    { at: `H${row}:L${row}`, kind: "note", value: note },
  ];
});

const said = (group: number) => {
  const row = rowOf(group);
  return `IF(ISNUMBER(L${row}),${nameOf(group)}&" ("&ROUND(100*I${row},0)&" % of the area) needs "&ROUND(H${row},1)&" mm and gets "&ROUND(K${row},2)&" times that, "&ROUND(100*L${row},0)&" % of it drains; ","")`;
};
const neediest = GROUPS.map((group) => `IF(H${rowOf(group)}=MAX(${column("H")}),${nameOf(group)},`).join("");

const ALL: readonly [label: string, name: string, formula: string][] = [
  ["Groups filled in", "Groups_In_Use", `SUM(${column("N")})`],
  ["Every group has an area", "Groups_Areas_Known", `COUNTIF(${column("G")},">0")=Groups_In_Use`],
  [
    "What the groups still need",
    "Groups_Problem",
    `IF(Groups_In_Use=0,"",IF(COUNT(${column("H")})<Groups_In_Use,"needs the depth of every pot group: see Pots",IF(Groups_Areas_Known,"","needs the area of every pot group: see Pots")))`,
  ],
  [
    "Depth of the neediest [mm]",
    "Groups_Depth_mm",
    `IF(Groups_In_Use=0,"",IF(Groups_Problem<>"",Groups_Problem,MAX(${column("H")})))`,
  ],
  ["The neediest", "Groups_Neediest", `IF(ISNUMBER(Groups_Depth_mm),${neediest}""${")".repeat(GROUPS.length)},"")`],
  ["Share of the water that reaches pots", "Reached_Share", `IF(Groups_In_Use=0,${ONE_SIZE},${GROUPS_REACHED})`],
  [
    "Share of it that drains",
    "Groups_Drained",
    `IF(Groups_Problem<>"",Groups_Problem,IF(AND(Groups_In_Use>0,COUNT(${column("L")})=Groups_In_Use),SUMPRODUCT(${column("Q")},${column("L")})/SUM(${column("Q")}),""))`,
  ],
  [
    "The same after the change",
    "Groups_Drained_After",
    `IF(Groups_Problem<>"",Groups_Problem,IF(AND(Groups_In_Use>0,COUNT(${column("U")})=Groups_In_Use),SUMPRODUCT(${column("Q")},${column("U")})/SUM(${column("Q")}),""))`,
  ],
  ["What looks wrong about the pots", "Pots_Problem", POTS_PROBLEM],
  [
    "In words",
    "Groups_Words",
    `IF(ISNUMBER(Groups_Depth_mm),"Pot groups: "&${GROUPS.map(said).join("&")}&"the run time is that of "&Groups_Neediest&".","")`,
  ],
];

/** What of the water the pots keep, what drains from them, and what never reaches them. */
export const whereCells = (): CellSpec[] => [
  { at: `A${WHERE}:C${WHERE}`, kind: "heading", value: "Where the water goes" },
  { at: `D${WHERE}`, kind: "heading", value: "of the bed's water" },
  { at: `E${WHERE}:F${WHERE}`, kind: "heading", value: "needed now, kL a year" },
  { at: `G${WHERE}`, kind: "heading", value: "fertiliser, kg a year" },
  { at: `H${WHERE}:L${WHERE}`, kind: "heading", value: "" },
  ...parts,
  { at: `A${ALL_FROM}:L${ALL_FROM}`, kind: "heading", value: "Intermediate results; not printed" },
  ...ALL.flatMap(([label, called, formula], index): CellSpec[] => {
    const row = ALL_FROM + 1 + index;
    const words = /Problem|Words|Neediest/.test(called);
    return [
      { at: `A${row}:C${row}`, kind: "label", value: label },
      {
        at: `D${row}:L${row}`,
        kind: words ? "note" : "working",
        name: called,
        formula,
        ...(words ? {} : { align: "left" as const }),
      },
    ];
  }),
];
