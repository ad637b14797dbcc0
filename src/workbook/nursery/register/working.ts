import { SHARE_KIND } from "../../../core/register/basis";
import { columnOf, FIRST_LINE, LAST_DAY, linesOf } from "./columns";
import { above, all, answer, counts, input, PLACES, plainGrid, sameKey, type WORKING_IDS } from "./places";

const lastDay = (row: number, condition: string) => `SUMPRODUCT(MAX(${sameKey(row)}*${condition}*${all("w.day")}))`;
const measured = `ISNUMBER(${linesOf(columnOf("pressure"))})`;

/** The formula of a working column in a row. */
export const REGISTER_WORKING: Readonly<Record<(typeof WORKING_IDS)[number], (row: number) => string>> = {
  key: (row) =>
    `IF(OR(TRIM(${input("block", row)})="",${answer("w.rawDay", row)}=0),"",LOWER(TRIM(${input("site", row)}))&"|"&LOWER(TRIM(${input("block", row)})))`,
  rawDay: (row) =>
    `IF(ISNUMBER(${input("day", row)}),IF(AND(${input("day", row)}>=1,${input("day", row)}<${LAST_DAY + 1}),INT(${input("day", row)}),0),0)`,
  day: (row) => `IF(${answer("line", row)}="ok",${answer("w.rawDay", row)},0)`,
  earlierDay: (row) => `IF(${answer("w.day", row)}=0,0,${lastDay(row, `(${all("w.day")}<${answer("w.day", row)})`)})`,
  earlierLine: (row) =>
    `IF(${answer("w.earlierDay", row)}=0,0,SUMPRODUCT(${sameKey(row)}*(${all("w.day")}=${answer("w.earlierDay", row)})*${PLACES}))`,
  later: (row) =>
    `IF(${answer("w.day", row)}=0,0,SUMPRODUCT(${sameKey(row)}*(${all("w.day")}>${answer("w.day", row)})))`,
  pressureDay: (row) =>
    `IF(${answer("w.day", row)}=0,0,${lastDay(row, `(${all("w.day")}<=${answer("w.day", row)})*${measured}`)})`,
  pressureBefore: (row) =>
    `IF(${answer("w.pressureDay", row)}=0,0,${lastDay(row, `(${all("w.day")}<${answer("w.pressureDay", row)})*${measured}`)})`,
  basisKey: (row) => {
    const [grid, cans, wind, kind] = ["grid", "cans", "wind", "kind"].map((id) => input(id, row));
    return `IF(OR(${grid}="",${cans}="",${wind}="",${kind}="",${kind}="${SHARE_KIND}"),"",${plainGrid(grid!)}&"|"&${cans}&"|"&${wind}&"|"&${kind})`;
  },
  label: (row) => {
    const before =
      row === FIRST_LINE
        ? "0"
        : `SUMPRODUCT((${above("w.key", row)}=${answer("w.key", row)})*(${above("w.day", row)}>0))`;
    const [site, block] = [`TRIM(${input("site", row)})`, `TRIM(${input("block", row)})`];
    return counts(row, `IF(${before}>0,"",${block}&IF(${site}="",""," · "&${site}))`);
  },
  order: (row) =>
    `IF(AND(${answer("w.day", row)}>0,${answer("w.key", row)}=Trend_Key),1+SUMPRODUCT((${all("w.key")}=Trend_Key)*(${all("w.day")}>${answer("w.day", row)})),0)`,
  place: (row) => `IF(${answer("w.label", row)}="","",ROW()-${FIRST_LINE - 1})`,
};
