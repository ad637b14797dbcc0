import type { FileBook } from "../../../xlsx/parts/workbook-file";
import { within, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { type Finding, misleading } from "../../finding";
import { shortened } from "../../shortened";

/** Functions that fetch or run something outside the file. */
const REACHING_OUT =
  /\b(WEBSERVICE|RTD|DDE|DDEAUTO|CALL|REGISTER|EXEC|IMPORTXML|IMPORTDATA|IMAGE|STOCKHISTORY|CUBE\w+|FILTERXML|SQL\.REQUEST|INFO)\s*\(|\|'?[^'"]*'?!|\[\d+\]/i;
export const STRINGS = /"(?:[^"]|"")*"/g;
/** Whether a formula fetches or runs something outside the file. */
export const reachesOut = (formula: string) => REACHING_OUT.test(formula.replace(STRINGS, '""'));

const IN_RULES = ["formula", "formula1", "formula2"];

/** Rules of a sheet, of any cells, that fetch something from outside the file. */
function reachingRules(frames: ReadonlyMap<string, XmlElement>): Finding[] {
  return [...frames].flatMap(([name, frame]) =>
    [...within(frame)]
      .filter((one) => IN_RULES.includes(one.name) && reachesOut(one.text))
      .map(({ text }) =>
        misleading(name, "a rule fetches something from outside the file", "", shortened(text, 60), "out"),
      ),
  );
}

function reachingCells({ sheets }: FileBook): Finding[] {
  return sheets.flatMap(({ name, cells }) =>
    [...cells].flatMap(([address, { formula }]) =>
      formula && reachesOut(formula)
        ? [
            misleading(
              `${name}!${address}`,
              "its formula fetches something from outside the file",
              "",
              shortened(formula, 60),
              "out",
            ),
          ]
        : [],
    ),
  );
}

/** Formulas and rules of a file that fetch something from outside it. */
export const reachingFindings = (book: FileBook, frames: ReadonlyMap<string, XmlElement>): Finding[] => [
  ...reachingCells(book),
  ...reachingRules(frames),
];
