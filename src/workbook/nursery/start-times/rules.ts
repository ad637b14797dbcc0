import { nestedIfs, quoted } from "../../form/nested-ifs";
import { isPositive } from "../program/places";
import { column, NOWHEN, PAIR_ONE, PAIR_OTHER } from "./places";

const MINUTE = "1/10^6";
const LITRE = 0.01;
/** What is said of a line whose name the Program does not have. */
export const NO_BLOCK = "no such block";

const outsideHours = (row: number) =>
  `SUMPRODUCT((MOD(K${row}+Night_First_min-Window_Starts_min,1440)+E${row}<=Window_Lengths_min+${MINUTE})*1)=0`;

const overThePump = (row: number) => `IF(COUNT(Pump_Flow_Lmin)=1,H${row}>Pump_Flow_Lmin+0.001,TRUE)`;

/** The line in the Program of a block that runs with this one although kept apart, else 0; a valve counts until its change-over is over. */
export const withOneKeptApart = (row: number): string => {
  const partner = `((${column("N")}=${PAIR_OTHER})*(${PAIR_ONE}=N${row})+(${column("N")}=${PAIR_ONE})*(${PAIR_OTHER}=N${row}))`;
  const together = `(${column("K")}<L${row}-${MINUTE})*(${column("L")}>K${row}+${MINUTE})`;
  return `IF(COUNTIF(${PAIR_ONE},N${row})+COUNTIF(${PAIR_OTHER},N${row})=0,0,SUMPRODUCT(MAX(${partner}*${together}*${column("N")})))`;
};

const restTooShort = (row: number) => {
  const least = `MAX(N(INDEX(Program_Blocks,N${row},8)),Change_Over_Used_min)`;
  const before = `(${column("N")}=N${row})*(${column("C")}=C${row}-1)*(${column("L")}>=0)`;
  return `SUMPRODUCT(${before}*(${column("O")}+${least}-${MINUTE}>K${row}))>0`;
};

/** Which pulse of its block a line is, by the numbers of the others. */
const pulseDue = (row: number) =>
  `1+SUMPRODUCT((${column("N")}=N${row})*((${column("C")}<C${row})+(${column("C")}=C${row})*(ROW(${column("C")})<${row})))`;

const runTime = (row: number) => `INDEX(Program_Answers,N${row},2)`;
const pulses = (row: number) => `INDEX(Program_Answers,N${row},3)`;
const compared = (row: number, wrong: string) =>
  `IF(COUNT(${runTime(row)},${pulses(row)},Step_Used_min)=3,IF(${pulses(row)}>0,${wrong},FALSE),FALSE)`;
const tooFewMinutes = (row: number) => compared(row, `E${row}<${runTime(row)}/${pulses(row)}-${MINUTE}`);
const tooManyMinutes = (row: number) =>
  compared(row, `E${row}>=${runTime(row)}/${pulses(row)}+Step_Used_min+${MINUTE}`);

/** The tank is full at the first start of the night; what comes in runs on. */
const tankEmpty = (row: number) => {
  const ran = `(${column("K")}<O${row})*((${column("O")}<=O${row})*(${column("O")}-${column("K")})+(${column("O")}>O${row})*(O${row}-${column("K")}))`;
  return `IF(${isPositive("Tank_kL")},SUMPRODUCT(${ran},${column("G")})>1000*Tank_kL+N(Tank_Refill_Lmin)*O${row}+${LITRE},FALSE)`;
};

/** What all lines take [L]. */
export const LITRES = `SUMPRODUCT(${column("O")}-${column("K")},${column("G")})`;
export const OVER_THE_LIMIT = `IF(${isPositive("Day_Limit_kL")},${LITRES}>1000*Day_Limit_kL+${LITRE},FALSE)`;

/** The first rule that a line breaks; "ok" where it keeps all, "" where it is blank. */
export const check = (row: number): string =>
  nestedIfs(
    [
      [`COUNTA(B${row}:E${row})=0`, '""'],
      [`M${row}=""`, '"needs a block"'],
      [`N${row}=0`, quoted(NO_BLOCK)],
      [`G${row}=""`, '"its block has no flow yet"'],
      [`K${row}=${NOWHEN}`, '"needs start and minutes"'],
      [`COUNT(C${row})=0`, '"needs the number of its pulse"'],
      [outsideHours(row), '"outside the hours"'],
      [overThePump(row), '"over the pump\'s flow"'],
      [`R${row}>0`, `"runs with "&INDEX(Program_Names,MAX(1,R${row}))&", kept apart"`],
      [restTooShort(row), '"rest too short"'],
      [`C${row}<>${pulseDue(row)}`, `"should be pulse "&${pulseDue(row)}`],
      [tooFewMinutes(row), '"too few minutes"'],
      [tooManyMinutes(row), '"more minutes than needed"'],
      [tankEmpty(row), '"tank empty before its end"'],
    ],
    '"ok"',
  );
