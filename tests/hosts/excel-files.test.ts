// @vitest-environment jsdom
import { beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { fromBase64 } from "../../src/hosts/base64";
import { bookContents } from "../../src/hosts/book-contents";
import { contractFile } from "../../src/hosts/contract-file";
import { excelHost } from "../../src/hosts/excel";
import { FakeExcel } from "../support/fake-excel";
import type { Arrival } from "../support/fake-excel-file";

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

test("where Excel takes no file, its words come with another way", async () => {
  excel.workbook.refusesFiles = true;
  await expect(host.insertSheets(FILE)).rejects.toThrow(
    "Excel could not add the sheets to this workbook: There was an internal error. " +
      "Open them as a workbook of their own instead",
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
    expect(await host.deliver(FILE, "copy.xlsx")).toBe("It opened in a window of its own. Save it there as copy.xlsx.");
    expect(excel.windows.map((window) => fromBase64(window))).toEqual([FILE]);
  });

  test("of another kind is downloaded", async () => {
    const clicked: string[] = [];
    const click = vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
      clicked.push(`${this.download} from ${this.href}`);
    });
    const blobs: Blob[] = [];
    URL.createObjectURL = (blob: Blob) => {
      blobs.push(blob);
      return "blob:test";
    };
    expect(await host.deliver(new Uint8Array([1, 2]), "register.csv")).toBe("register.csv went to your downloads.");
    expect(clicked).toEqual(["register.csv from blob:test"]);
    expect(blobs.map(({ type, size }) => [type, size])).toEqual([["text/csv", 2]]);
    click.mockRestore();
  });

  test("of another kind is refused on a Mac, where Excel's panes cannot save files", async () => {
    excel.office.context.platform = "Mac";
    await expect(host.deliver(new Uint8Array(), "map.png")).rejects.toThrow(
      "Excel on a Mac lets no pane save a file such as map.png. Use Excel on the web for it",
    );
  });
});

test("a workbook opens in a window of its own, and the open one stays", async () => {
  expect(await host.openBook(FILE, "audit.xlsx")).toBe(true);
  expect(excel.windows.map((window) => fromBase64(window))).toEqual([FILE]);
  expect(await host.sheets()).toEqual(["Sheet1"]);
});
