// @vitest-environment jsdom
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { fromBase64 } from "../../src/hosts/base64";
import { contractFile } from "../../src/hosts/contract/file";
import { excelHost } from "../../src/hosts/excel/excel";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { bookContents } from "../../src/xlsx/parts/book-contents";
import { FakeExcel } from "../support/fake-excel";
import type { Arrival } from "../support/fake-excel-file";
import { chartFile, chartTitles, partsOf } from "../xlsx/chart-sample";

const FILE = contractFile("Cans", "Results", "Cans_Readings");
let excel: FakeExcel;
const host = excelHost();

beforeAll(() => {
  excel = new FakeExcel();
});

beforeEach(async () => {
  excel.workbook.arrival = "workbook";
  excel.workbook.names.clear();
  excel.workbook.refusesFiles = false;
  excel.workbook.refusesCharts = false;
  excel.workbook.failsAfter = null;
  excel.workbook.links = false;
  excel.windows.length = 0;
  excel.office.lacks.clear();
  excel.office.damagedSlice = null;
  excel.office.largestSlice = Infinity;
  excel.office.context.platform = "PC";
  for (const sheet of excel.workbook.sheets.slice(1)) excel.workbook.remove(sheet);
});

describe("inserted sheets", () => {
  test.each<Arrival>(["workbook", "sheet", "lost", "missing"])(
    "have their names for the whole workbook, also where Excel brings them in as: %s",
    async (arrival) => {
      excel.workbook.arrival = arrival;
      await host.insertSheets(FILE);
      expect(await host.named("Cans_Readings")).toEqual({ sheet: "Cans", address: "A1:A3" });
      expect(excel.workbook.sheets.flatMap(({ names }) => [...names])).toEqual([]);
    },
  );

  test("take the place of a name whose cells somebody deleted", async () => {
    excel.workbook.names.set("Cans_Readings", "=#REF!$A$1:$A$3");
    await host.insertSheets(FILE);
    expect(await host.named("Cans_Readings")).toEqual({ sheet: "Cans", address: "A1:A3" });
  });

  test("leave other names as they are when they go", async () => {
    excel.workbook.names.set("Lost_before", "=#REF!$A$1");
    excel.workbook.names.set("Price", "=2.34");
    await host.insertSheets(FILE);
    await host.removeSheet("Cans");
    expect([...excel.workbook.names.keys()]).toEqual(["Lost_before", "Price"]);
  });

  test("are refused before Excel would give a sheet another name", async () => {
    await host.addSheet("Results");
    excel.requests.length = 0;
    await expect(host.insertSheets(FILE)).rejects.toThrow(
      'There is already a sheet "Results" in this workbook. Rename or delete it, and start again',
    );
    expect(JSON.stringify(excel.requests)).not.toContain("InsertWorksheetsFromBase64");
  });
});

describe("the sheets of a file with charts", () => {
  const inserted = () => fromBase64(excel.workbook.inserted.at(-1)!);

  test("come with them in Excel on Windows and Mac", async () => {
    expect(await host.insertSheets(await chartFile())).toBe("");
    expect(chartTitles(inserted())).toEqual(["Chart of Cost", "Chart of Plan"]);
  });

  test("come without them on the web, which refuses charts, and it is said; cells, names and pictures stay", async () => {
    excel.workbook.refusesCharts = true;
    excel.office.context.platform = "OfficeOnline";
    expect(await host.insertSheets(await chartFile())).toBe(
      "Excel on the web adds no charts: they come only with Open as a new workbook",
    );
    expect(await host.read({ sheet: "Plan", address: "A1" })).toEqual([[12]]);
    expect(await host.named("Water_Now")).toEqual({ sheet: "Cost", address: "A1" });
    const parts = partsOf(inserted());
    const [drawing, ...others] = Object.keys(parts).filter((part) => /^xl\/drawings\/[^/]+\.xml$/.test(part));
    expect(others).toEqual([]);
    expect(parts[drawing!]).toContain("<xdr:pic>");
    expect(Object.keys(parts).filter((part) => part.startsWith("xl/media/"))).toHaveLength(1);
    const said = Object.entries(parts).filter(([part, text]) => !part.startsWith("docProps") && /chart/i.test(text));
    expect(said.filter(([part]) => part.endsWith(".rels") || part === "[Content_Types].xml")).toEqual([]);
    for (const [part, text] of Object.entries(parts)) {
      for (const [, target] of part.endsWith(".rels") ? text.matchAll(/Target="\/?([^"]+)"/g) : []) {
        const name = target!.split("/").pop()!;
        expect(
          Object.keys(parts).some((one) => one.endsWith(name)),
          `${part} to ${target}`,
        ).toBe(true);
      }
    }
    expect(
      (await XlsxFile.open(inserted())).book().sheets.map(({ name, pictures }) => [name, pictures.length]),
    ).toEqual([
      ["Cost", 0],
      ["Plan", 1],
      ["Notes", 0],
    ]);
  });

  test("without a chart are handed to the web as they are", async () => {
    excel.office.context.platform = "OfficeOnline";
    expect(await host.insertSheets(FILE)).toBe("");
    expect(inserted()).toEqual(FILE);
  });
});

test("where Excel takes no file, its words come with another way", async () => {
  excel.workbook.refusesFiles = true;
  await expect(host.insertSheets(FILE)).rejects.toThrow(
    "Excel could not add the sheets to this workbook: There was an internal error. " +
      "Open them as a workbook of their own instead",
  );
});

test("sheets that arrive although Excel says that it failed are taken", async () => {
  excel.workbook.failsAfter = 2;
  expect(await host.insertSheets(FILE)).toBe("");
  expect(await host.named("Cans_Readings")).toEqual({ sheet: "Cans", address: "A1:A3" });
});

test("where only some of the sheets arrive, those are taken out again", async () => {
  excel.workbook.failsAfter = 1;
  await expect(host.insertSheets(FILE)).rejects.toThrow("Excel could not add the sheets to this workbook");
  expect(await host.sheets()).toEqual(["Sheet1"]);
});

test("a workbook whose structure is protected says so, and what to do instead", async () => {
  excel.workbook.structureProtected = true;
  await expect(host.insertSheets(FILE)).rejects.toThrow(
    "Excel could not add the sheets to this workbook: its structure is protected (Review, Protect Workbook). " +
      "Open them as a workbook of their own instead",
  );
  excel.workbook.structureProtected = false;
});

test("formulas that became links to another file are counted, the first by its cell", async () => {
  excel.workbook.links = true;
  expect(await host.insertSheets(FILE)).toMatch(
    /^\d+ formulas? leads? to another file, first Results![A-Z]+\d+: undo this and open them as a workbook of their own$/,
  );
});

describe("the bytes of the workbook", () => {
  test("are put together from slices, and the file is closed", async () => {
    await host.write({ sheet: "Sheet1", address: "A1" }, [["x".repeat(500)]]);
    excel.office.largestSlice = 1000;
    expect(bookContents(await host.bytes()).sheets).toEqual(["Sheet1"]);
    expect(excel.office.open).toBe(0);
  });

  test("fail in Excel's words, and the file is closed all the same", async () => {
    excel.office.damagedSlice = 0;
    await expect(host.bytes()).rejects.toThrow("The slice is damaged.");
    expect(excel.office.open).toBe(0);
  });

  test("are refused plainly by an Excel that does not hand them over", async () => {
    excel.office.lacks.add("CompressedFile");
    await expect(host.bytes()).rejects.toThrow("This Excel does not hand its workbook over");
  });
});

describe("a finished file", () => {
  test("that is a workbook opens in a window of its own", async () => {
    expect(await host.deliver(FILE, "copy.xlsx")).toBe(
      "It was handed to Excel to open in a window of its own: look behind this window, or in your cloud folder. Save it there as copy.xlsx.",
    );
    expect(excel.windows.map((window) => fromBase64(window))).toEqual([FILE]);
  });
});

test("a workbook opens in a window of its own, and the open one stays", async () => {
  expect(await host.openBook(FILE, "audit.xlsx")).toBe(true);
  expect(excel.windows.map((window) => fromBase64(window))).toEqual([FILE]);
  expect(await host.sheets()).toEqual(["Sheet1"]);
});
