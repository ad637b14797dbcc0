import type { Grid } from "../../hosts/desk/grid";
import { barNames } from "./bar-names";
import { calculation } from "./calculation";
import { checks } from "./checks";
import { circles } from "./circles";
import { closedBooks } from "./closed-books";
import { comparison } from "./comparison";
import { dependencies } from "./dependencies";
import { drawing } from "./drawing";
import { editing } from "./editing";
import { emptyTexts } from "./empty-texts";
import { endless } from "./endless";
import { failures } from "./failures";
import type { Fix } from "./fix";
import { formulaCache } from "./formula-cache";
import { listOpening } from "./list-opening";
import { listSpelling } from "./list-spelling";
import { listValues } from "./list-values";
import { oldValues } from "./old-values";
import { parsedFormulas } from "./parsed-formulas";
import { plainPaste } from "./plain-paste";
import { plainTexts } from "./plain-texts";
import { rangeEnds } from "./range-ends";
import { refusals } from "./refusals";
import { shades } from "./shades";
import { sort } from "./sort";
import { tabStart } from "./tab-start";
import { typedValues } from "./typed-values";
import { wholeRanges } from "./whole-ranges";

/** In the order in which they are put in: later ones may lean on earlier ones. */
export const FIXES: Fix[] = [
  calculation,
  failures,
  endless,
  wholeRanges,
  circles,
  sort,
  comparison,
  rangeEnds,
  oldValues,
  emptyTexts,
  plainTexts,
  dependencies,
  drawing,
  editing,
  formulaCache,
  parsedFormulas,
  checks,
  closedBooks,
  listValues,
  listSpelling,
  listOpening,
  typedValues,
  refusals,
  plainPaste,
  shades,
  tabStart,
  barNames,
];

/** The parts of the grid that a fix needs and this version of the grid lacks. */
export const lacking = (fix: Fix, grid: Grid): string[] =>
  fix.members(grid).flatMap(([owner, of, name]) => (of && name in of ? [] : [`${owner}.${name}`]));

/** Puts the fixes in, but for those named; answers in words which could not be, since the grid has changed. */
export function mendGrid(grid: Grid, left: string[], fixes = FIXES): string[] {
  return fixes.flatMap((fix) => {
    if (left.includes(fix.name)) return [];
    const missing = lacking(fix, grid);
    if (missing.length === 0) {
      fix.mend(grid);
      return [];
    }
    return [`The grid of this page has no ${missing.join(" and no ")}, so a fault of it remains: ${fix.wrong}`];
  });
}
