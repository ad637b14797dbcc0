import { nestedIfs } from "../../form/nested-ifs";
import { BAND, FOUR, STEP } from "./places";

const badPrices = (row: number) =>
  `OR(IF(ISNUMBER(F${row}),F${row}<0,TRUE),${["E", "G"].map((column) => `IF(ISNUMBER(${column}${row}),${column}${row}<0,${column}${row}<>"")`).join(",")})`;
const lastOf = (filled: (index: number) => string) =>
  nestedIfs(
    [...FOUR].reverse().map((index) => [`COUNTA(${filled(index)})>0`, String(index + 1)] as const),
    "0",
  );

/** How many steps are filled in, and what is wrong with them. */
export const STEPS_IN_USE = lastOf((index) => `B${STEP + index},E${STEP + index}:G${STEP + index}`);
export const STEPS_PROBLEM = nestedIfs(
  FOUR.flatMap((index) => {
    const row = STEP + index;
    const before = index === 0 ? "0" : `B${row - 1}`;
    return [
      [`AND(Steps_In_Use>${index},${badPrices(row)})`, `"step ${index + 1} needs prices of 0 or more"`],
      [
        `AND(Steps_In_Use>${index + 1},IF(ISNUMBER(B${row}),B${row}<=${before},TRUE))`,
        `"step ${index + 1} needs an end above the one before"`,
      ],
      [`AND(Steps_In_Use=${index + 1},B${row}<>"")`, '"leave the end of the last step blank"'],
    ] as const;
  }),
  '""',
);

/** How many hours of power are filled in. */
export const BANDS_IN_USE = lastOf((index) => `B${BAND + index}:G${BAND + index}`);
const AREA_SHARES = `D${BAND}:D${BAND + 3}`;
const minute = (cell: string) => `MOD(ROUND(${cell}*1440,0),1440)`;
/** When the hours of a price begin, and how long they are [min]. */
export const bandStart = (index: number): string =>
  `IF(COUNT(B${BAND + index}:C${BAND + index})=2,${minute(`B${BAND + index}`)},0)`;
export const bandLength = (index: number, start: string): string =>
  `IF(COUNT(B${BAND + index}:C${BAND + index})=2,IF(${minute(`C${BAND + index}`)}>${start},0,1440)+${minute(`C${BAND + index}`)}-${start},0)`;
/** What is wrong with the hours of power. */
export const bandsProblem = (lengths: string, startOfRun: string): string => {
  const byShare = `COUNT(${AREA_SHARES})>0`;
  const each = FOUR.flatMap((index) => {
    const row = BAND + index;
    const used = `Bands_In_Use>${index}`;
    const times = `IF(COUNT(B${row}:C${row})=2,OR(MIN(B${row}:C${row})<0,MAX(B${row}:C${row})>1),TRUE)`;
    return [
      [`AND(${used},${badPrices(row)})`, `"hours ${index + 1} need prices of 0 or more"`],
      [
        `AND(${used},${byShare},IF(ISNUMBER(D${row}),OR(D${row}<0,D${row}>1),TRUE))`,
        `"hours ${index + 1} need a share from 0 to 1"`,
      ],
      [`AND(${used},NOT(${byShare}),${times})`, `"hours ${index + 1} need from and to"`],
    ] as const;
  });
  const apart = FOUR.slice(1).map((index) => {
    const [to, from] = [minute(`N(C${BAND + index - 1})`), minute(`N(B${BAND + index})`)];
    return [
      `AND(Bands_In_Use>${index},NOT(${byShare}),${to}<>${from})`,
      `"hours ${index + 1} must begin where the last ones end"`,
    ] as const;
  });
  return nestedIfs(
    [
      ["Bands_In_Use=0", '""'],
      ...each,
      [byShare, `IF(ABS(SUM(${AREA_SHARES})-1)>0.000001,"the shares of the run must add up to 1","")`],
      ...apart,
      [`SUM(${lengths})<>1440`, '"the hours must make up one day"'],
      [`NOT(ISNUMBER(${startOfRun}))`, '"needs the start of the run"'],
      [`OR(${startOfRun}<0,${startOfRun}>1)`, '"needs the start of the run"'],
    ],
    '""',
  );
};
