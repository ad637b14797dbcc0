import { tokenize, tokenTypes } from "@borgar/fx/xlsx";
import { describe, expect, it } from "vitest";
import { plainAddress } from "../../src/cells/letters";
import { firstCell, placesOf } from "../../src/cells/places";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { namesOf } from "../../src/workbook/form/build";
import { NURSERY_SHEETS } from "../../src/workbook/nursery/nursery-plan";

/** Functions that Excel 2010 and LibreOffice 7.4 both have, and that give the same value while nothing is typed. */
const FUNCTIONS = new Set(
  (
    "ABS ACOS ADDRESS AND AVEDEV AVERAGE CEILING CHOOSE COLUMN COLUMNS COS COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS EDATE EXACT EXP FALSE FIND FLOOR IF " +
    "IFERROR INDEX INT ISBLANK ISERROR ISLOGICAL ISNA ISNUMBER ISTEXT LARGE LEFT LEN LOOKUP LOWER MATCH MAX MEDIAN MID MIN MOD N NOT " +
    "OR PI PROPER RANK REPT RIGHT ROUND ROUNDDOWN ROUNDUP ROW ROWS SEARCH SIGN SIN SMALL SQRT STDEV SUBSTITUTE SUM SUMIF SUMIFS " +
    "SUMPRODUCT T TAN TEXT TRIM TRUE UPPER VALUE"
  ).split(" "),
);

interface Formula {
  place: string;
  formula: string;
}

/** Every cell of a range on another sheet, as `Cans!G6`. */
const placesFrom = (range: string) => {
  const sheet = range.slice(0, range.lastIndexOf("!")).replaceAll("'", "");
  return placesOf(plainAddress(range)).map((place) => `${sheet}!${place}`);
};
const tokensOf = ({ formula }: Formula) => tokenize(`=${formula}`);
const values = (formula: Formula, type: string) =>
  tokensOf(formula).flatMap((token) => (token.type === type ? [token.value] : []));

describe.each([
  { book: "audit workbook", sheets: AUDIT_SHEETS },
  { book: "nursery plan", sheets: NURSERY_SHEETS },
])("formulas of the $book", ({ sheets }) => {
  const written = sheets.map(({ name, cells, checks = [], shades = [] }) => ({
    name,
    cells: cells.flatMap(({ at, formula }): Formula[] => (formula ? [{ place: at, formula }] : [])),
    others: [
      ...checks.flatMap(({ range, rule }): Formula[] =>
        rule.kind === "formula" ? [{ place: range, formula: rule.formula }] : [],
      ),
      ...shades.map(({ range, formula }): Formula => ({ place: range, formula })),
    ],
  }));
  const NAMES = new Set(sheets.flatMap((sheet) => [...namesOf(sheet).keys()]));
  const NAMED_PLACES = new Set(
    sheets.flatMap((sheet) =>
      [...namesOf(sheet).values()].flatMap((range) => placesOf(range).map((place) => `${sheet.name}!${place}`)),
    ),
  );
  const areaOfName = new Map(
    sheets.flatMap((sheet) => [...namesOf(sheet)].map(([name, range]) => [name, `${sheet.name}!${range}`] as const)),
  );
  /** The cells that a formula reads: ranges, names, and of whole columns those that hold something. */
  const readIn = (formula: string, sheet: string): string[] =>
    tokensOf({ place: "", formula }).flatMap(({ type, value }) => {
      if (type === tokenTypes.REF_RANGE) return placesFrom(value.includes("!") ? value : `${sheet}!${value}`);
      if (type === tokenTypes.REF_NAMED) return areaOfName.has(value) ? placesFrom(areaOfName.get(value)!) : [];
      if (type !== tokenTypes.REF_BEAM) return [];
      const column = plainAddress(value).split(":")[0]!;
      const { cells } = sheets.find(({ name }) => name === sheet)!;
      return cells
        .map(({ at }) => firstCell(at))
        .flatMap((at) => (at.replace(/\d/g, "") === column ? [`${sheet}!${at}`] : []));
    });
  const isNamed = (place: string) => NAMED_PLACES.has(place);

  it.each(written)("on $name use only functions that old and free programs have too", ({ cells, others }) => {
    const unknown = [...cells, ...others].flatMap((one) =>
      values(one, tokenTypes.FUNCTION)
        .filter((name) => !FUNCTIONS.has(name.toUpperCase()))
        .map((name) => `${one.place}: ${name}`),
    );
    expect(unknown).toEqual([]);
  });

  it.each(written)(
    "on $name write small numbers as quotients, since the desk's grid reads 1E-9 as a text",
    ({ cells, others }) => {
      const small = [...cells, ...others].flatMap((one) =>
        values(one, tokenTypes.NUMBER).filter((number) => String(Number(number)).includes("e")),
      );
      expect(small).toEqual([]);
    },
  );

  it.each(written)("on $name reach other sheets only where those name their cells", ({ cells, others }) => {
    const astray = [...cells, ...others].flatMap((one) =>
      values(one, tokenTypes.REF_RANGE).filter((range) => range.includes("!") && !placesFrom(range).every(isNamed)),
    );
    expect(astray).toEqual([]);
  });

  it("never read themselves on the way, so that every program finds an order to calculate them in", () => {
    const readBy = new Map<string, string[]>(
      sheets.flatMap((sheet) =>
        sheet.cells.flatMap(({ at, formula }) =>
          formula ? [[`${sheet.name}!${firstCell(at)}`, readIn(formula, sheet.name)] as const] : [],
        ),
      ),
    );
    const done = new Set<string>();
    const doing: string[] = [];
    const rounds: string[] = [];
    const follow = (place: string) => {
      if (doing.includes(place)) rounds.push([...doing.slice(doing.indexOf(place)), place].join(" < "));
      if (done.has(place) || doing.includes(place)) return;
      doing.push(place);
      for (const read of readBy.get(place) ?? []) if (readBy.has(read)) follow(read);
      doing.pop();
      done.add(place);
    };
    for (const place of readBy.keys()) follow(place);
    expect(rounds).toEqual([]);
  });

  it.each(written)("on $name use only names that are for something", ({ cells, others }) => {
    const unknown = [...cells, ...others].flatMap((one) =>
      values(one, tokenTypes.REF_NAMED).filter((name) => !NAMES.has(name)),
    );
    expect(unknown).toEqual([]);
  });

  it.each(written)("on $name hold no text or formula longer than Excel takes", ({ cells, others }) => {
    const long = [...cells, ...others].filter(
      (one) => one.formula.length > 8000 || values(one, tokenTypes.STRING).some((text) => text.length > 255),
    );
    expect(long.map(({ place }) => place)).toEqual([]);
    expect(others.filter(({ formula }) => formula.length > 255).map(({ place }) => place)).toEqual([]);
  });
});
