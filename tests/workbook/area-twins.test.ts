import { Workbook } from "@cj-tech-master/excelts";
import { beforeAll, describe, expect, it } from "vitest";
import { soundAreas, twin } from "../../src/workbook/form/twins";
import { published } from "../support/case-files";
import { converted } from "../support/libreoffice";

type Many = Record<string, number>;

interface Bed {
  bed: string;
  readings: unknown[][];
  areas: unknown[][];
  expected: Record<string, number | Many>;
}

interface Cases {
  test: Many;
  beds: Bed[];
}

const { test, beds: kept } = published("areas-numpy.json") as Cases;
const beds = [...kept, ...(published("areas-held.json") as Cases).beds];
const PLANTED_WRONG = -1;

/** Where a range of the shape of a bed lies, from a column on. */
function rangeOf({ readings }: Bed, firstColumn: string): string {
  const last = String.fromCharCode(firstColumn.charCodeAt(0) + readings[0]!.length - 1);
  return `$${firstColumn}$1:$${last}$${readings.length}`;
}

/** Every formula of a bed with the value that numpy has for it. */
function cases(bed: Bed): { title: string; formula: string | null; expected: number }[] {
  const [r, a] = [rangeOf(bed, "B"), rangeOf(bed, "N")];
  const { minutes, mouth, depth, area, days, price, share } = test;
  const shown = (basis: string) => (Number(basis) > 0 ? basis : `"${basis}"`);
  const between = (name: string, basis: string): unknown[] => {
    if (name === "MAR") return [minutes, mouth];
    if (name === "SC.SHARE") return [basis];
    if (name === "RUNTIME") return [minutes, mouth, depth, shown(basis)];
    if (name === "WATER.ANNUAL") return [area, depth, days, shown(basis), share];
    return name === "COST.ANNUAL" ? [area, depth, days, price, shown(basis), share] : [];
  };
  return Object.entries(bed.expected).flatMap(([name, value]) =>
    Object.entries(typeof value === "number" ? { "": value } : value).map(([basis, expected]) => ({
      title: `${name} ${basis}`,
      formula: twin(name, [r, ...between(name, basis).map(String), a]),
      expected,
    })),
  );
}

async function recalculated(): Promise<Workbook> {
  const book = new Workbook();
  beds.forEach((bed, i) => {
    const sheet = book.addWorksheet(`Bed ${i + 1}`);
    const put = (rows: unknown[][], left: number) => {
      rows.forEach((row, r) => {
        row.forEach((value, c) => {
          if (value !== "") sheet.getCell(r + 1, left + c).value = value as number | string;
        });
      });
    };
    put(bed.readings, 2);
    put(bed.areas, 14);
    cases(bed).forEach(({ formula }, row) => {
      sheet.getCell(row + 1, 26).value = { formula: formula!, result: PLANTED_WRONG };
    });
    sheet.getCell(1, 27).value = { formula: soundAreas(rangeOf(bed, "B"), rangeOf(bed, "N")), result: PLANTED_WRONG };
  });
  const bad = book.addWorksheet("Bad");
  [0, "x", -1, null, 3].forEach((area, row) => {
    bad.getCell(row + 1, 2).value = 8;
    bad.getCell(row + 1, 3).value = area;
    const formula = soundAreas(`B${row + 1}:B${row + 1}`, `C${row + 1}:C${row + 1}`);
    bad.getCell(row + 1, 4).value = { formula, result: PLANTED_WRONG };
  });
  const [file] = await converted([new Uint8Array(await book.xlsx.writeBuffer())], "xlsx");
  const opened = new Workbook();
  await opened.xlsx.load(file!);
  return opened;
}

describe("LibreOffice, recalculating native formulas by area, gives what numpy gives", () => {
  let book: Workbook;
  beforeAll(async () => {
    book = await recalculated();
  });

  it.each(beds.map((bed, i) => ({ bed, i, title: bed.bed })))("$title", ({ bed, i }) => {
    const sheet = book.getWorksheet(`Bed ${i + 1}`)!;
    expect(sheet.getCell(1, 27).result).toBe(true);
    const found = cases(bed);
    const shares = Object.keys(bed.expected["SC.SHARE"]!).length;
    expect(found).toHaveLength(5 + shares + 3 * (shares + 2));
    found.forEach(({ title, expected }, row) => {
      const theirs = sheet.getCell(row + 1, 26).result as number;
      const miss = Math.abs(theirs - expected) / Math.abs(expected);
      expect(miss, `${title}: LibreOffice ${String(theirs)}, numpy ${expected}`).toBeLessThan(1e-9);
    });
  });

  it("an area of 0, a word, one under 0 and a blank one are told from a sound one", () => {
    const sheet = book.getWorksheet("Bad")!;
    expect([1, 2, 3, 4, 5].map((row) => sheet.getCell(row, 4).result)).toEqual([false, false, false, false, true]);
  });
});

it("a native twin by area is missing where areas or readings are no plain range, since SUMIF takes none else", () => {
  expect(twin("DU.QUARTER", ["A1:A9", "C1:C9*2"])).toBeNull();
  expect(twin("DU.QUARTER", ['IF(A1:A9="","x",A1:A9)', "C1:C9"])).toBeNull();
  expect(twin("MAR", ["A1:A9", "15", "104", "{1;2}"])).toBeNull();
  expect(twin("DU.QUARTER", ["'Bed, 7'!A1:A9", "Areas_m2"])).toContain("SUMIF('Bed, 7'!A1:A9,");
});
