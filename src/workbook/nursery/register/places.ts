import { columnLetters, columnNumber } from "../../../cells/letters";
import { columnOf, FIRST_LINE, linesOf, REGISTER_COLUMNS } from "./columns";

export const LAST_INPUT = columnLetters(REGISTER_COLUMNS.length);
const ANSWERS_FROM = REGISTER_COLUMNS.length + 1;
const ANSWER_IDS = ["line", "earlier", "basis", "mar", "cu", "du", "sc", "water", "due", "drift", "retest"] as const;
export const WORKING_IDS = [
  "key",
  "rawDay",
  "day",
  "earlierDay",
  "earlierLine",
  "later",
  "pressureDay",
  "pressureBefore",
  "basisKey",
  "label",
  "order",
  "place",
] as const;
/** One column stays empty between answers and working. */
const WORKING_FROM = ANSWERS_FROM + ANSWER_IDS.length + 1;

export type Id = (typeof ANSWER_IDS)[number] | `w.${(typeof WORKING_IDS)[number]}`;

/** The letters of an answer's column, or of a working column by `w.id`. */
export function answerColumn(id: Id): string {
  const place = id.startsWith("w.")
    ? WORKING_FROM + WORKING_IDS.findIndex((one) => `w.${one}` === id)
    : ANSWERS_FROM + (ANSWER_IDS as readonly string[]).indexOf(id);
  return columnLetters(place);
}
export const LAST_ANSWER = columnNumber(answerColumn("retest"));
export const FIRST_WORKING = WORKING_FROM;
export const AFTER_WORKING = WORKING_FROM + WORKING_IDS.length;

export const input = (id: string, row: number) => `$${columnOf(id)}${row}`;
export const answer = (id: Id, row: number) => `$${answerColumn(id)}${row}`;
export const all = (id: Id) => linesOf(answerColumn(id));
export const PLACES = `(ROW(${all("w.key")})-${FIRST_LINE - 1})`;
export const sameKey = (row: number) => `(${all("w.key")}=${answer("w.key", row)})`;
export const counts = (row: number, formula: string) => `IF(${answer("w.day", row)}=0,"",${formula})`;
/** What is in a column of inputs in the line of the earlier audit. */
export const earlier = (id: string, row: number) => `INDEX(${linesOf(columnOf(id))},${answer("w.earlierLine", row)})`;
export const above = (id: Id, row: number) => `$${answerColumn(id)}$${FIRST_LINE}:$${answerColumn(id)}${row - 1}`;

/** A grid as text without blanks, × as x. */
export const plainGrid = (cell: string) => `LOWER(SUBSTITUTE(SUBSTITUTE(${cell}," ",""),"×","x"))`;
