import { areaCell } from "../../form/area-cell";
import { isIdle, isWarning } from "../../form/check-lines";
import { CANS, CHECK_ROWS } from "../cans/cans";
import { CAN_CHECKS } from "../cans/checks";
import { HEAD_CHECKS } from "../heads/checks";
import { HEADS } from "../heads/heads";

/** Every data check by its label, and the cell that says what came of it. */
const CHECKS = [
  ...CAN_CHECKS.map(({ label }, index) => [label, areaCell(CANS, "Can_Checks", index * CHECK_ROWS + 1, 2)] as const),
  ...HEAD_CHECKS.map(({ label }, index) => [label, areaCell(HEADS, "Head_Checks", index + 1, 2)] as const),
];

/** The labels of the checks for which something holds, or "none". */
function listed(words: string, holds: (cell: string) => string): string {
  const labels = CHECKS.map(([label, cell]) => `IF(${holds(cell)},"; ${label}","")`).join("&");
  const some = `OR(${CHECKS.map(([, cell]) => holds(cell)).join(",")})`;
  return `"${words}: "&IF(${some},MID(${labels},3,500),"none")&"."`;
}

/** The data checks that warn, and those that lack something, in words for the report. */
export const WARNING_CHECKS = listed("Data checks that warn", isWarning);
export const IDLE_CHECKS = listed("Data checks not done because entries are missing", isIdle);
