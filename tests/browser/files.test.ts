import { Workbook } from "@cj-tech-master/excelts";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sampleFile, unseen } from "../xlsx/xlsx-sample";
import { clickCell } from "./by-hand";
import { chooseFile, type Desk, type Desks, desks, openFile, savedFile } from "./desk-page";
import { openStep } from "./open-step";

let all: Desks;
beforeAll(async () => {
  all = await desks();
});
afterAll(() => all?.close());

let count = 0;

/** Opens a file at the desk, in a page that nothing was left unsaved in. */
async function opened(desk: Desk, bytes: Uint8Array): Promise<Desk> {
  const name = `bed ${++count}.xlsx`;
  await openFile(desk, bytes, name);
  return desk;
}

interface Dropped {
  type: "dragover" | "drop";
  /** Where. */
  on: string;
  files: { name: string; bytes: number[] }[];
}

/** What the browser does while files are dragged or dropped; answers whether it would still show them itself. */
const drag = (desk: Desk, dropped: Dropped): Promise<boolean> =>
  desk.page.evaluate(({ type, on, files }) => {
    const dataTransfer = new DataTransfer();
    for (const { name, bytes } of files) dataTransfer.items.add(new File([new Uint8Array(bytes)], name));
    const place = document.querySelector(on)!;
    return place.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
  }, dropped);

async function load(bytes: Uint8Array): Promise<Workbook> {
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  return workbook;
}

/** What the page asks from now on, each time answered with no. */
function declined({ page }: Desk): string[] {
  const asked: string[] = [];
  page.on("dialog", async (dialog) => {
    asked.push(dialog.message());
    await dialog.dismiss();
  });
  return asked;
}

describe("files at the desk", () => {
  test("a file opens with its functions calculated, in either form that files hold", async () => {
    const desk = await opened(await all.open(), await sampleFile());
    expect(await desk.read("A1:B4", "Bed 7")).toEqual([
      ["Caught [mL]", "Driest can"],
      [20, 1.5], // (20 + 30 + 40) / 3 / 20
      [30, { error: "#N/A", message: expect.stringContaining("at least 4") }],
      [40, 90],
    ]);
    expect(await desk.read("D1:D3", "Bed 7")).toEqual([[20], [30], [40]]);
    expect(await desk.page.evaluate(() => window.desk.host.inputs({ sheet: "Bed 7", address: "B2:D3" }))).toEqual([
      ["=CANFALL.SC.CAN(A2:A4)", "", ""],
      ["=CANFALL.SC.QUARTER(A2:A5)", "", ""],
    ]);
    expect(desk.complaints).toEqual([]);
  });

  test("what is typed after a file was opened goes into its cells", async () => {
    const desk = await opened(await all.open(), await sampleFile());
    await expect.poll(() => desk.page.evaluate(() => document.activeElement?.closest("#grid") !== null)).toBe(true);
    await desk.page.evaluate(() => window.desk.host.select({ sheet: "Bed 7", address: "F9" }));
    await desk.page.keyboard.type("12");
    await desk.page.keyboard.press("Enter");
    await expect.poll(() => desk.read("F9", "Bed 7")).toEqual([[12]]);
  });

  test("saving changes what was changed and keeps all that the desk does not show", async () => {
    const before = await sampleFile();
    const desk = await opened(await all.open(), before);
    await desk.write("A2:A5", [[10], [30], [40], [40]], "Bed 7");
    await desk.write("F1", "=CANFALL.SC.CAN(A2:A5)", "Bed 7");
    const after = await savedFile(desk);
    expect(await unseen(after)).toEqual(await unseen(before));
    const sheet = (await load(after)).getWorksheet("Bed 7")!;
    expect(sheet.getCell("A2").value).toBe(10);
    expect(sheet.getCell("B4").value).toEqual({ formula: "SUM(A2:A4)", result: 80 });
    expect(sheet.getCell("F1").value).toMatchObject({
      formula: "_xldudf_CANFALL_SC_CAN(A2:A5)",
      result: 3, // (10 + 30 + 40 + 40) / 4 / 10
      shareType: "array",
      ref: "F1",
      isDynamicArray: true,
    });
    expect(sheet.getCell("D1").value).toMatchObject({ ref: "D1:D3", result: 10 });
  });

  test("the example saves as a file that opens again with the same values", async () => {
    const desk = await all.open();
    const values = await desk.read("A1:L26");
    const file = await savedFile(desk);
    const again = await opened(desk, file);
    expect(await again.read("A1:L26")).toEqual(values);
    expect(await again.page.evaluate(() => window.desk.host.named("Cans_Readings"))).toEqual({
      sheet: "Example",
      address: "B2:B26",
    });
    const sheet = (await load(file)).getWorksheet("Example")!;
    expect(sheet.getCell("A1").font?.bold).toBe(true);
    expect(sheet.getCell("E13").numFmt).toBe("0.00");
  });

  test("a file that is no workbook is refused in words and the open one stays", async () => {
    const desk = await all.restored();
    await openFile(desk, Buffer.from("no workbook"), "notes.xlsx", "Opening notes.xlsx failed");
    expect(await desk.read("B2")).toEqual([[15]]);
  });

  test("a file that is dropped on the grid or the pane opens as the button would open it", async () => {
    const desk = await all.open();
    const bytes = [...(await sampleFile())];
    const sign = desk.page.getByText("Drop to open");
    for (const on of ["#grid canvas", "#pane h1"]) {
      const files = [{ name: `dropped ${++count}.xlsx`, bytes }];
      expect(await drag(desk, { type: "dragover", on, files })).toBe(false);
      expect(await sign.isVisible()).toBe(true);
      expect(await drag(desk, { type: "drop", on, files })).toBe(false);
      expect(await sign.isVisible()).toBe(false);
      await desk.page.getByText(files[0]!.name, { exact: true }).waitFor();
      expect(await desk.read("A2:A4", "Bed 7")).toEqual([[20], [30], [40]]);
    }
    await drag(desk, { type: "dragover", on: "#grid", files: [{ name: "gone.xlsx", bytes }] });
    await sign.waitFor({ state: "hidden" }); // dragged off the page again
    expect(desk.complaints).toEqual([]);
  });

  test("of several dropped files one workbook opens, and another kind of file is refused in words", async () => {
    const desk = await opened(await all.open(), await sampleFile());
    const notes = { name: "notes.txt", bytes: [110] };
    expect(await drag(desk, { type: "drop", on: "#grid", files: [notes] })).toBe(false);
    await desk.page.getByText("Opening notes.txt failed: the file must be an .xlsx workbook").waitFor();
    expect(await desk.read("A2", "Bed 7")).toEqual([[20]]);
    const bed = { name: "bed 9.xlsx", bytes: [...(await sampleFile())] };
    await drag(desk, { type: "drop", on: ".files", files: [notes, bed] });
    await desk.page.getByText("bed 9.xlsx (one of 2 dropped files: one opens at a time)").waitFor();
  });

  test("a file that is dropped over unsaved changes asks first", async () => {
    const desk = await all.restored();
    const asked = declined(desk);
    await desk.write("B2", 14);
    await drag(desk, { type: "drop", on: "#grid", files: [{ name: "bed.xlsx", bytes: [...(await sampleFile())] }] });
    expect(asked).toEqual(["What you changed here is not saved. Open another file all the same?"]);
    expect(await desk.read("B2")).toEqual([[14]]);
  });

  test("files that are dropped in the zone of the Share step are checked there and not opened", async () => {
    const desk = await all.open("?example=audit");
    await openStep(desk.page, "Share");
    const zone = desk.page.locator("#pane .drop");
    await zone.waitFor();
    const files = [{ name: "sent.xlsx", bytes: [...Buffer.from("no workbook")] }];
    expect(await drag(desk, { type: "dragover", on: "#pane .drop", files })).toBe(false);
    expect(await desk.page.getByText("Drop to open").isVisible()).toBe(false);
    expect(await drag(desk, { type: "drop", on: "#pane .drop", files })).toBe(false);
    await desk.page.getByRole("heading", { name: "sent.xlsx" }).waitFor();
    expect(await desk.page.locator("#file").textContent()).not.toContain("sent.xlsx");
    const another = desk.page.getByText("The open workbook is another one");
    await another.waitFor();
    const plain = new Workbook();
    plain.addWorksheet("Plain").getCell("A1").value = 1;
    const kept = await desk.page.evaluate(() => window.desk.host.named("Answer_Text"));
    await expect.poll(async () => (await desk.read(kept!.address, kept!.sheet))[0]![0]).toMatch(/^block 7: /);
    const asked = declined(desk); // the answer that the step keeps is nobody's unsaved work
    await chooseFile(desk, new Uint8Array(await plain.xlsx.writeBuffer()), "sent.xlsx");
    await another.waitFor({ state: "hidden" });
    expect(asked).toEqual([]);
  });

  test("that a share copy is not checked leads to the step where it can be", async () => {
    const desk = await all.open();
    const copy = new Workbook();
    copy.addWorksheet("Evidence"); // what only share copies have
    const words = "a share copy, not checked. Check it first: step Share, Check a copy.";
    await openFile(desk, new Uint8Array(await copy.xlsx.writeBuffer()), "sent.xlsx", `sent.xlsx: ${words}`);
    await openStep(desk.page, "Register"); // of another group of steps
    await desk.page.getByRole("button", { name: words }).click();
    await desk.page.getByRole("heading", { name: "Check a copy" }).waitFor();
    await desk.page.getByText("what its check says is in the step Share").waitFor();
  });

  test("opening another file over unsaved changes asks first", async () => {
    const desk = await all.restored();
    const asked = declined(desk);
    await desk.write("B2", 14);
    await desk.page.getByRole("button", { name: "Open .xlsx" }).click();
    await expect.poll(() => asked).toEqual(["What you changed here is not saved. Open another file all the same?"]);
    expect(await desk.read("B2")).toEqual([[14]]);
  });

  test("F6 goes from the grid to the pane, to the file buttons and back", async () => {
    const desk = await all.restored();
    await clickCell(desk, "Example", "C10");
    const parts: (string | undefined)[] = [];
    for (let i = 0; i < 3; i++) {
      await desk.page.keyboard.press("F6");
      parts.push(
        await desk.page.evaluate(() => document.activeElement?.closest("#grid, #pane, .files")?.id || "files"),
      );
    }
    expect(parts).toEqual(["pane", "files", "grid"]);
  });
});
