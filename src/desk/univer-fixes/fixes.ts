import type { Grid } from "../../hosts/desk/grid";
import { barNames } from "./drawing/bar-names";
import { barRoles } from "./drawing/bar-roles";
import { drawing } from "./drawing/drawing";
import { insertedLooks } from "./drawing/inserted-looks";
import { shades } from "./drawing/shades";
import type { Fix } from "./fix";
import { brackets } from "./formulas/brackets";
import { calculation } from "./formulas/calculation";
import { changedNames } from "./formulas/changed-names";
import { circles } from "./formulas/circles";
import { closedBooks } from "./formulas/closed-books";
import { comparison } from "./formulas/comparison";
import { deletedSheets } from "./formulas/deleted-sheets";
import { dependencies } from "./formulas/dependencies";
import { emptyTexts } from "./formulas/empty-texts";
import { endless } from "./formulas/endless";
import { failures } from "./formulas/failures";
import { formulaCache } from "./formulas/formula-cache";
import { keptValues } from "./formulas/kept-values";
import { oldValues } from "./formulas/old-values";
import { ownNamesFix } from "./formulas/own-names";
import { parsedFormulas } from "./formulas/parsed-formulas";
import { rangeEnds } from "./formulas/range-ends";
import { shownNumbers } from "./formulas/shown-numbers";
import { sort } from "./formulas/sort";
import { spillErrors } from "./formulas/spill-errors";
import { wholeRanges } from "./formulas/whole-ranges";
import { checks } from "./typing/checks";
import { editing } from "./typing/editing";
import { functionList } from "./typing/function-list";
import { listOpening } from "./typing/list-opening";
import { listSpelling } from "./typing/list-spelling";
import { listValues } from "./typing/list-values";
import { namesList } from "./typing/names-list";
import { plainPaste } from "./typing/plain-paste";
import { plainTexts } from "./typing/plain-texts";
import { refusals } from "./typing/refusals";
import { tabStart } from "./typing/tab-start";
import { typedValues } from "./typing/typed-values";

/** In the order in which they are put in: later ones may lean on earlier ones. */
export const FIXES: Fix[] = [
  calculation,
  failures,
  brackets,
  endless,
  wholeRanges,
  circles,
  sort,
  shownNumbers,
  comparison,
  rangeEnds,
  oldValues,
  spillErrors,
  keptValues,
  emptyTexts,
  plainTexts,
  dependencies,
  drawing,
  insertedLooks,
  editing,
  formulaCache,
  changedNames,
  deletedSheets,
  ownNamesFix,
  parsedFormulas,
  checks,
  closedBooks,
  listValues,
  listSpelling,
  listOpening,
  functionList,
  namesList,
  typedValues,
  refusals,
  plainPaste,
  shades,
  tabStart,
  barNames,
  barRoles,
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
