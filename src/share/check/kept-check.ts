import { cellAt } from "../../cells/places";
import { bedsDrawn, wholeBedOf } from "../../core/bed/interval/whole-bed";
import { readBed } from "../../core/bed/read-bed";
import type { FittedBed } from "../../core/summary/by-fit";
import { keptAnswer } from "../../workbook/answer/kept-answer";
import { endsOf, ratedBed, testSummary } from "../../workbook/answer/test-summary";
import { bedCans } from "../../workbook/bed/bed-cans";
import { bedOfWorkbook } from "../../workbook/bed/bed-of-workbook";
import { type BedVerdict, causesOf, verdictOf } from "../../workbook/bed/bed-verdict";
import { type CellsOf, firstOf, textOf } from "../../workbook/bed/cells-of";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { cellsOfFile } from "../figures/cells-of-file";
import { type Finding, saying } from "../finding";
import { orNull } from "../or-null";
import { shortened } from "../shortened";
import { sameValue } from "./agreement";

/** The stamps of what is kept, each with the one that it must be, and how the names of what it is of start. */
const KINDS = [
  { kept: "Cause_Stamp", now: "Inputs_Stamp", start: "Cause_" },
  { kept: "Ends_Stamp", now: "Inputs_Stamp", start: "Ends_" },
  { kept: "Answer_Stamp", now: "Answer_Inputs", start: "Answer_" },
] as const;

/** The whole bed by fit, where the ends that are kept are not those of the cans alone. */
function wholeIn(cells: CellsOf): FittedBed | undefined {
  const ofCans = Object.entries(endsOf(testSummary(cells)));
  if (ofCans.every(([name, end]) => sameValue(statedIn(cells, name), end))) return undefined;
  const bed = ratedBed(cells);
  return (
    bed &&
    (orNull(() => {
      const read = readBed(bed.input);
      return wholeBedOf(read, bedsDrawn(read));
    }) ??
      undefined)
  );
}

function verdictIn(cells: CellsOf): BedVerdict | undefined {
  const { input, measured } = bedOfWorkbook(cells);
  return input && (orNull(() => verdictOf(causesOf(bedCans(cells), { input, measured }))) ?? undefined);
}

const statedIn = (cells: CellsOf, name: string) => (firstOf(cells, name) ?? "") as string | number;

const NO_CAUSE = { Cause_Text: "", Cause_Next: "", Cause_Measured: "", Cause_Head: "" };

function shown(value: string | number): string {
  if (value === "") return "nothing";
  return typeof value === "number" ? String(value) : `"${shortened(value, 90)}"`;
}

/** What is in cells that the pane alone fills, with no stamp that it did. */
function withoutStamp(book: FileBook, cells: CellsOf): Finding[] {
  const blank = KINDS.filter(({ kept }) => textOf(cells, kept) === "");
  return [...book.names.keys()].flatMap((name) => {
    const place = blank.some(({ start }) => name.startsWith(start)) && namedArea(book, name);
    const cell = place ? cellsIn(book, place)[0]?.cell : undefined;
    if (!cell || cell.formula !== undefined || cell.value === null || cell.value === "") return [];
    const stated = cell.value as string | number;
    return [saying("changed", name, `${name} says ${shown(stated)}; nothing was kept there.`, "", String(stated))];
  });
}

/**
 * What a file keeps of cause, intervals and answer that its readings and heads do not give; silent where it says itself
 * that they are out of date. An answer without its cause, which may not have been read, is no other one.
 */
export function keptFindings(book: FileBook): Finding[] {
  const cells = cellsOfFile(book);
  const fresh = KINDS.filter(({ kept, now }) => {
    const stamp = textOf(cells, kept);
    return stamp !== "" && stamp === textOf(cells, now);
  });
  const loose = withoutStamp(book, cells);
  if (fresh.length === 0) return loose;
  const cans = namedArea(book, "Cans_Readings");
  const canCell = (row: number, column: number) => (cans ? cellAt(cans.top + row, cans.left + column) : "");
  const has = (start: string) => fresh.some((kind) => kind.start === start);
  const verdict = has("Cause_") || has("Answer_") ? verdictIn(cells) : undefined;
  const whole = has("Ends_") ? wholeIn(cells) : undefined;
  const given: Record<string, string | number> = { ...NO_CAUSE, ...keptAnswer(cells, { verdict, whole }, canCell) };
  const uncertain = keptAnswer(cells, { whole }, canCell).Answer_Text;
  const untrue = fresh.flatMap(({ start, kept }) =>
    Object.entries(given).flatMap(([name, value]) => {
      if (!name.startsWith(start) || name === kept) return [];
      const stated = statedIn(cells, name);
      if (sameValue(stated, value) || (name === "Answer_Text" && stated === uncertain)) return [];
      const [is, was] = [shown(stated), shown(value)];
      const text = `${name} says ${is}; readings and heads give ${was}.`;
      return [saying("changed", name, text, String(value), String(stated))];
    }),
  );
  return [...loose, ...untrue];
}
