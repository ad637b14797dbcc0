import { Workbook } from "@cj-tech-master/excelts";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { beforeAll, describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { nativeFormula } from "../../src/share/copy/native-formula";
import { shareCopy } from "../../src/share/copy/share-copy";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { formulaResults } from "../support/formula-results";
import { converted } from "../support/libreoffice";

const NOW = new Date(2026, 10, 25, 14, 30);
const SHEET = "xl/worksheets/sheet1.xml";

/** Five cans, one of them not read; 10 m² in all. */
const CANS = [
  [3, 4],
  [1, 2],
  ["x", "none"],
  [8, 3],
  [9, 1],
];

/**
 * Mean (3·4 + 1·2 + 8·3 + 9·1) / 10 = 4.7. The driest quarter is 2 m² with 1 and 0.5 m² with 3: (2 + 1.5) / 2.5 = 1.4.
 * |x − m|: 1.7·4 + 3.7·2 + 3.3·3 + 4.3·1 = 28.4. Eight of ten m² get 3 or more.
 */
const FORMULAS: [address: string, formula: string, value: number][] = [
  ["D1", "_xldudf_CANFALL_CU_CHRISTIANSEN(A1:A5,B1:B5)", 100 * (1 - 28.4 / 47)],
  ["D2", "_xldudf_CANFALL_DU_QUARTER(A1:A5,B1:B5)", (100 * 1.4) / 4.7],
  ["D3", '_xldudf_CANFALL_SC_QUARTER(IF(A1:A5="","x",A1:A5),IF(B1:B5="","x",B1:B5))', 4.7 / 1.4],
  ["D4", "_xldudf_CANFALL_SC_SHARE(A1:A5,0.8,B1:B5)", 4.7 / 3],
  ["D5", '_xldudf_CANFALL_RUNTIME(A1:A5,60,"mm",4.7,"can",B1:B5)', 60 * 4.7],
  ["D6", "_xldudf_CANFALL_COST_ANNUAL(A1:A5,100,5,200,2,0.8,,B1:B5)", ((100 * 5 * 200 * 4.7) / 3 / 1000) * 2],
  ["D7", "_xldudf_CANFALL_SC_CAN(A1:A5,B1:B5)", 4.7],
  ["D8", '_xldudf_CANFALL_MAR(A1:A5,60,"mm",B1:B5)', 4.7],
];
const KEPT: typeof FORMULAS = [["D9", '_xldudf_CANFALL_MAR(A1:A5,60,"mm",B1:B5*1)', 4.7]];

async function bookWithAreas(): Promise<Uint8Array> {
  const book = new Workbook();
  const sheet = book.addWorksheet("Bed 7");
  CANS.forEach((row, r) => {
    row.forEach((value, c) => {
      sheet.getCell(r + 1, c + 1).value = value;
    });
  });
  for (const [address, formula, result] of [...FORMULAS, ...KEPT]) sheet.getCell(address).value = { formula, result };
  return new Uint8Array(await book.xlsx.writeBuffer());
}

describe("a share copy of a workbook whose functions take areas", () => {
  let copy: Uint8Array;
  let recalculated: Uint8Array;
  beforeAll(async () => {
    copy = await shareCopy(await bookWithAreas(), NOW);
    const planted = strFromU8(unzipSync(copy)[SHEET]!).replace(/(<\/f>)<v>[^<]*<\/v>/g, "$1<v>-1</v>");
    const wrong = zipSync({ ...unzipSync(copy), [SHEET]: strToU8(planted) });
    [recalculated] = (await converted([wrong], "xlsx")) as [Uint8Array];
  });

  it("gives the same in LibreOffice when all its cached values are wrong", () => {
    const results = formulaResults(recalculated);
    for (const [address, , value] of FORMULAS) {
      expect(results.get(`Bed 7!${address}`), address).toBeCloseTo(value, 9);
    }
  });

  it("has every figure recomputed from the readings and areas that the old formulas named", async () => {
    const { figures, findings } = await checkCopy(copy);
    expect(findings).toEqual([]);
    expect(figures.map(({ name, agrees }) => [name, agrees])).toEqual(
      FORMULAS.map(([address]) => [`'Bed 7'!${address}`, true]),
    );
    FORMULAS.forEach(([address, , value], i) => {
      expect(figures[i]!.recomputed, address).toBeCloseTo(value, 9);
    });
  });

  it("is found changed by an area", async () => {
    const sheet = strFromU8(unzipSync(copy)[SHEET]!);
    expect(sheet).toMatch(/<c r="B2"[^>]*><v>2<\/v>/);
    const other = sheet.replace(/(<c r="B2"[^>]*>)<v>2<\/v>/, "$1<v>4</v>");
    const { agrees, figures } = await checkCopy(zipSync({ ...unzipSync(copy), [SHEET]: strToU8(other) }));
    expect(agrees).toBe(false);
    expect(figures.some((figure) => !figure.agrees)).toBe(true);
  });

  it("keeps the value where the areas are no plain range, and says how it was computed", () => {
    const cells = openBook(copy).sheets[0]!.cells;
    expect(cells.get("D9")).toMatchObject({ value: 4.7 });
    expect(cells.get("D9")?.formula).toBeUndefined();
    const evidence = openBook(copy).sheets.find(({ name }) => name === "Evidence")!;
    const told = [...evidence.cells.values()].map(({ value }) => String(value)).join("\n");
    expect(told).toContain(
      "MAR: mean depth caught in an hour; where areas a are given, each catch x counts for its area",
    );
  });
});

it("a native formula with areas says in words where an area is not above 0", () => {
  expect(nativeFormula('CANFALL.MAR(A1:A5,60,"mm",B1:B5)')?.formula).toContain(
    "IF(SUMPRODUCT(ISNUMBER(A1:A5)*(1-ISNUMBER(B1:B5)*(B1:B5>0)))=0,SUMPRODUCT(A1:A5,B1:B5)",
  );
});
