// @vitest-environment jsdom
import { beforeAll, beforeEach, describe, expect, test } from "vitest";
import { excelHost } from "../../src/hosts/excel/excel";
import { FakeExcel } from "../support/fake-excel";
import { Fault } from "../support/fake-excel-formula";
import { addIn } from "../support/fake-excel-functions";

let excel: FakeExcel;
const host = excelHost();

const at = (address: string, sheet = "Sheet1") => ({ sheet, address });
const shown = (row: number, column: number) => excel.workbook.sheet("Sheet1")!.cell(row, column).value;

async function until(done: () => boolean): Promise<void> {
  while (!done()) await new Promise((wait) => setTimeout(wait, 20));
}

beforeAll(async () => {
  excel = new FakeExcel(await addIn());
});

beforeEach(() => {
  excel.registered = true;
  excel.requests.length = 0;
  excel.workbook.sheet("Sheet1")!.cells.clear();
});

describe("a selection", () => {
  test("of whole columns is cut to the used rows without reading them", async () => {
    await host.write(at("B2:C4"), [
      ["can", "mL"],
      [1, 20],
      [2, 25],
    ]);
    await host.select(at("A:XFD"));
    expect(await host.selection()).toEqual(at("B2:C4"));
    expect(JSON.stringify(excel.requests)).not.toContain('"values"');
  });

  test("beside the used part is its first cell, where a formula may go", async () => {
    await host.write(at("A1"), [[1]]);
    await host.select(at("E5:F9"));
    expect(await host.selection()).toEqual(at("E5"));
  });

  test("on a sheet without cells is its first cell", async () => {
    await host.select(at("D:D"));
    expect(await host.selection()).toEqual(at("D1"));
  });
});

describe("reading", () => {
  test("asks for a large range in parts and puts them together", async () => {
    const column = Array.from({ length: 120_000 }, (_, i) => [i]);
    for (const [i] of column) excel.workbook.sheet("Sheet1")!.set(i!, 0, i!);
    const values = await host.read(at("A1:A120000"));
    expect(values).toEqual(column);
    const reads = excel.requests.filter((request) => JSON.stringify(request).includes('"values"'));
    expect(reads.length).toBe(3); // 120,000 cells by 50,000
  });

  test("of a snapshot over 50,000 cells comes in parts, the small ones together", async () => {
    for (let i = 0; i < 120_000; i += 1) excel.workbook.sheet("Sheet1")!.set(i, 0, i);
    const [large, small] = [at("A1:A120000"), at("C1:D2")];
    const snapshot = await host.snapshot({ areas: [large, small] });
    expect(snapshot.at(large)!.cells).toEqual(Array.from({ length: 120_000 }, (_, i) => [i]));
    expect(snapshot.at(small)!.cells).toEqual([
      [null, null],
      [null, null],
    ]);
    const reads = excel.requests.filter((request) => JSON.stringify(request).includes('"values"'));
    expect(reads.length).toBe(4); // the selected cell; 50,000; 50,000; 20,000 and the small area
  });

  test("tells the message of our error to Excel", async () => {
    await host.write(at("A1:B1"), [[20, "=CANFALL.SC.CAN(A1:A1)"]]);
    await until(() => shown(0, 1) instanceof Fault && (shown(0, 1) as Fault).error !== "#BUSY!");
    expect(shown(0, 1)).toMatchObject({ error: "#N/A", message: expect.stringContaining("readings must ") });
  });

  test("tells in which cell an error is that a function was given", async () => {
    await host.write(at("A1:A4"), [[20], [30], [40], ["=1/0"]]);
    await host.write(at("B1:B2"), [["=CANFALL.SC.CAN(A1:A4)"], ["=CANFALL.RATE.CAUGHT(A1:A3,A4,100)"]]);
    await until(() => [shown(0, 1), shown(1, 1)].every((cell) => cell instanceof Fault && cell.error === "#VALUE!"));
    expect(shown(0, 1)).toMatchObject({ message: "readings must be numbers, got #DIV/0! in row 4, column 1" });
    expect(shown(1, 1)).toMatchObject({ message: "minutes must be more than 0 min, got #DIV/0!" });
  });

  test("from a sheet that does not exist is refused in Excel's words", async () => {
    await expect(host.read(at("A1", "Nowhere"))).rejects.toThrow("The requested resource doesn't exist.");
  });
});

describe("inputs", () => {
  test("show the names that people type where Excel shows the stored ones", async () => {
    await host.write(at("A1:A2"), [["=CANFALL.SC.CAN(B1:B9)"], ['="_xldudf_CANFALL_SC_CAN("']]);
    excel.registered = false;
    expect(await host.inputs(at("A1:A2"))).toEqual([["=CANFALL.SC.CAN(B1:B9)"], ['="_xldudf_CANFALL_SC_CAN("']]);
  });

  test("hold nothing in the body of a spill, wherever the range begins", async () => {
    await host.write(at("A1:A3"), [[20], [25], [30]]);
    await host.write(at("B1"), [["=A1:A3*2"]]);
    expect(await host.read(at("B1:B3"))).toEqual([[40], [50], [60]]);
    expect(await host.inputs(at("B2:B4"))).toEqual([[""], [""], [""]]);
    expect(await host.inputs(at("A1:B2"))).toEqual([
      [20, "=A1:A3*2"],
      [25, ""],
    ]);
  });

  test("of another shape than the area are refused", async () => {
    await expect(host.write(at("A1:B2"), [[1]])).rejects.toThrow(
      "The argument is invalid or missing or has an incorrect format.",
    );
  });
});

describe("a defined name", () => {
  test("leads to its area without dollar signs", async () => {
    excel.workbook.names.set("Cans_Readings", "=Sheet1!$B$2:$B$26");
    expect(await host.named("Cans_Readings")).toEqual(at("B2:B26"));
  });

  test("is null where it is for no range", async () => {
    excel.workbook.names.set("Price", "=2.34");
    expect(await host.named("Price")).toBeNull();
  });
});

describe("watching", () => {
  test("gives every handler back", async () => {
    const stop = await host.watch(() => {});
    expect(excel.listening).toEqual(["DataChanged", "Calculated"]);
    await stop();
    expect(excel.listening).toEqual([]);
  });
});

test("Excel is settled once it no longer calculates", async () => {
  await host.write(at("A1"), [[1]]);
  excel.requests.length = 0;
  await host.settled();
  const questions = excel.requests.filter((request) => JSON.stringify(request).includes("calculationState"));
  expect(questions.length).toBe(2); // Calculating, then Done
});

test("a property that was not loaded is an error here as in Excel", async () => {
  const reading = Excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1");
    await context.sync();
    return range.values;
  });
  await expect(reading).rejects.toMatchObject({ code: "PropertyNotLoaded" });
});
