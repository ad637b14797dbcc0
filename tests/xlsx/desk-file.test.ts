import { Workbook } from "@cj-tech-master/excelts";
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import type { CellChange } from "../../src/xlsx/desk-file/book";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { callsOurs, storedFormula, typedFormula } from "../../src/xlsx/desk-file/formula";
import { chartFile, chartTitles } from "./chart-sample";
import { sampleFile, unseen } from "./xlsx-sample";

const FORMULAS: [typed: string, stored: string][] = [
  ["=CANFALL.SC.CAN(B2:B26)", "_xldudf_CANFALL_SC_CAN(B2:B26)"],
  [
    '=ROUND(CANFALL.RUNTIME(IF(B2:B26="","x",B2:B26),15,100,9.4),1)',
    'ROUND(_xldudf_CANFALL_RUNTIME(IF(B2:B26="","x",B2:B26),15,100,9.4),1)',
  ],
  ["=SORT(UNIQUE(A1:A9))", "_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A9))"],
  ["=IF(A1=\"CANFALL.MAR(\",1,'SORT(1)'!A1)", "IF(A1=\"CANFALL.MAR(\",1,'SORT(1)'!A1)"],
  ['=TEXTSPLIT("LET(x",",")&NORM.S.DIST(A1,TRUE)', '_xlfn.TEXTSPLIT("LET(x",",")&_xlfn.NORM.S.DIST(A1,TRUE)'],
  [
    '=LET(x,A1,f,LAMBDA(n,n*X),IF(x>0,f(x),"x")&x!A1)',
    '_xlfn.LET(_xlpm.x,A1,_xlpm.f,_xlfn.LAMBDA(_xlpm.n,_xlpm.n*_xlpm.X),IF(_xlpm.x>0,_xlpm.f(_xlpm.x),"x")&x!A1)',
  ],
  ["=STDEV.S(A1:A9)/STDEV(A1:A9)", "_xlfn.STDEV.S(A1:A9)/STDEV(A1:A9)"],
];

async function patched(change: CellChange[]) {
  const file = await XlsxFile.open(await sampleFile());
  const sheets = file.book().sheets.map(({ key, name }) => ({ key, name, widths: {}, cells: [] as CellChange[] }));
  sheets[0]!.cells = change;
  return file.save({ sheets, addedNames: [], removedNames: [] });
}

describe("formulas in files", () => {
  test.each(FORMULAS)("%s is stored as %s and read back", (typed, stored) => {
    expect(storedFormula(typed)).toBe(stored);
    expect(typedFormula(stored)).toBe(typed);
  });

  test("the plain form that some programs write is read too", () => {
    expect(typedFormula("CANFALL.SC.CAN(A1:A9)")).toBe("=CANFALL.SC.CAN(A1:A9)");
  });

  test("only a call of our own makes a cell a dynamic array", () => {
    expect(callsOurs("=canfall.mar(A1:A9,15,100)")).toBe(true);
    expect(callsOurs('="CANFALL.MAR("')).toBe(false);
  });
});

describe("xlsx files", () => {
  test("the cells of a spill are no inputs", async () => {
    const [sheet] = (await XlsxFile.open(await sampleFile())).book().sheets;
    const inputs = sheet!.cells.filter(({ column }) => column === 3).map(({ row, input }) => [row, input]);
    expect(inputs).toEqual([[0, '=CANFALL.DEPTH.CAUGHT(A2:A4,"mm")']]);
  });

  test("a file saved without a change keeps everything", async () => {
    expect(await unseen(await patched([]))).toEqual(await unseen(await sampleFile()));
  });

  test("a save that fails leaves nothing half done: the next one is as if it had never been tried", async () => {
    const save = (file: XlsxFile, cells: CellChange[]) => {
      const sheets = file.book().sheets.map(({ key, name }, i) => ({
        key,
        name,
        widths: {},
        cells: i === 0 ? cells : [],
        shifts: [{ axis: "rows", at: 2, count: 1 } as const],
      }));
      return file.save({ sheets, addedNames: [], removedNames: [] });
    };
    const cells = [{ row: 0, column: 0, input: 15 }];
    const bytes = await sampleFile();
    const once = await save(await XlsxFile.open(bytes), cells);
    const file = await XlsxFile.open(bytes);
    const broken = {
      row: 0,
      column: 0,
      look: {},
      get input(): number {
        throw new Error("no such value");
      },
    };
    await expect(save(file, [broken])).rejects.toThrow("no such value");
    expect(unzipSync(await save(file, cells))).toEqual(unzipSync(once));
  });

  test("charts stay when a file is opened and saved, also with a cell changed", async () => {
    for (const cells of [[], [{ row: 0, column: 0, input: 15 }]]) {
      const file = await XlsxFile.open(await chartFile());
      const sheets = file.book().sheets.map(({ key, name }) => ({ key, name, widths: {}, cells }));
      const saved = await file.save({ sheets, addedNames: [], removedNames: [] });
      expect(chartTitles(saved)).toEqual(["Chart of Cost", "Chart of Plan"]);
      expect((await XlsxFile.open(saved)).book().sheets[1]!.pictures).toHaveLength(1);
    }
  });

  test("charts come along with the sheets of another file", async () => {
    const file = await XlsxFile.open(await sampleFile());
    file.insert(await XlsxFile.open(await chartFile()));
    const sheets = file.book().sheets.map(({ key, name }) => ({ key, name, widths: {}, cells: [] }));
    expect(chartTitles(await file.save({ sheets, addedNames: [], removedNames: [] }))).toEqual([
      "Chart of Cost",
      "Chart of Plan",
    ]);
  });

  test("a spill that shrinks leaves no values behind", async () => {
    const change = { row: 0, column: 3, input: '=CANFALL.DEPTH.CAUGHT(A2:A3,"mm")', value: 20, spill: [[20], [30]] };
    const workbook = new Workbook();
    await workbook.xlsx.load(await patched([change]));
    const sheet = workbook.getWorksheet("Bed 7")!;
    expect(sheet.getCell("D1").value).toMatchObject({ ref: "D1:D2", isDynamicArray: true });
    expect(["D2", "D3"].map((address) => sheet.getCell(address).value)).toEqual([30, null]);
  });

  test("a spill that has no room is in its own cell, and what is in its way stays", async () => {
    const input = '=CANFALL.DEPTH.CAUGHT(A2:A4,"mm")';
    const changes: CellChange[] = [
      { row: 0, column: 3, input, value: { error: "#SPILL!" }, spill: [[{ error: "#SPILL!" }]] },
      { row: 1, column: 3, look: { bold: true }, was: {} },
      { row: 2, column: 3, input: "=A2*10", value: 200 },
    ];
    const workbook = new Workbook();
    await workbook.xlsx.load(await patched(changes));
    const sheet = workbook.getWorksheet("Bed 7")!;
    expect(sheet.getCell("D1").value).toMatchObject({ ref: "D1", isDynamicArray: true, result: { error: "#VALUE!" } });
    expect(sheet.getCell("D2").value).toBeNull();
    expect(sheet.getCell("D3").value).toEqual({ formula: "A2*10", result: 200 });
  });

  test("a removed sheet goes, a new one comes and a renamed one keeps what it held", async () => {
    const file = await XlsxFile.open(await sampleFile());
    const [bed] = file.book().sheets;
    const cells = [{ row: 0, column: 0, input: "new" }];
    const bytes = await file.save({
      sheets: [
        { key: bed!.key, name: "Bed 8", widths: {}, cells: [] },
        { key: "made at the desk", name: "More", widths: { 0: 75 }, cells },
      ],
      addedNames: [],
      removedNames: [],
    });
    const workbook = new Workbook();
    await workbook.xlsx.load(bytes);
    expect(workbook.worksheets.map(({ name }) => name)).toEqual(["Bed 8", "More"]);
    expect(workbook.getWorksheet("Bed 8")!.getCell("A3").note).toBeTruthy();
    expect(workbook.getWorksheet("More")!.getCell("A1").value).toBe("new");
    expect(workbook.getWorksheet("More")!.getColumn(1).width).toBe(10); // (75 px - 5 px) / 7 px
  });
});
