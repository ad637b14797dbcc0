import { nestedIfs, quoted } from "../../form/nested-ifs";
import type { CellSpec } from "../../form/sheet-spec";
import type { LimitedMeasure } from "./limit-sets";
import { LINES, READ, setColumn, TABLE } from "./places";

const DIGITS = [...".0123456789"].map(quoted).join(",");

/** The number in a text of digits and a point, in any language of the program; "" where it is none. */
const numberIn = (cell: string) =>
  nestedIfs(
    [
      [`LEN(${cell})=0`, '""'],
      [`SUMPRODUCT(LEN(${cell})-LEN(SUBSTITUTE(${cell},{${DIGITS}},"")))<LEN(${cell})`, '""'],
      [`LEN(${cell})-LEN(SUBSTITUTE(${cell},".",""))>1`, '""'],
      [`OR(LEFT(${cell},1)=".",RIGHT(${cell},1)=".")`, '""'],
    ],
    `VALUE(SUBSTITUTE(${cell},".",MID(1/2,2,1)))`,
  );

/** How the text of a limit is read: its sign and its numbers. */
export function readLine({ measure }: LimitedMeasure, index: number): CellSpec[] {
  const [row, text] = [READ + index, `$B${TABLE + index}`];
  const to = `SEARCH(" to ",${text})`;
  return [
    { at: `A${row}`, kind: "label", value: measure },
    {
      at: `B${row}`,
      kind: "working",
      formula: `IF(OR(LEFT(${text},2)="<=",LEFT(${text},2)=">="),LEFT(${text},2),IF(ISNUMBER(${to}),"to",""))`,
    },
    {
      at: `C${row}`,
      kind: "working",
      formula: `IF(B${row}="to",TRIM(LEFT(${text},${to})),IF(B${row}="","",TRIM(MID(${text},3,20))))`,
    },
    { at: `D${row}`, kind: "working", formula: `IF(B${row}="to",TRIM(MID(${text},${to}+4,20)),"")` },
    { at: `E${row}`, kind: "working", formula: numberIn(`C${row}`) },
    { at: `F${row}`, kind: "working", formula: numberIn(`D${row}`) },
    {
      at: `G${row}`,
      kind: "working",
      formula: `SUMPRODUCT((${setColumn("C")}=Limit_Set)*(${setColumn("A")}=A${row})*(ROW(${setColumn("A")})-${LINES - 1}))`,
    },
  ];
}
