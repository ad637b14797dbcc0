import { describe, expect, it } from "vitest";
import { droppedFiles, workbooksAmong } from "../../src/taskpane/parts/files/dropped-files";

const file = (name: string) => new File(["x"], name);
const entryOf = (name: string) => ({ isFile: true, file: (done: (file: File) => void) => done(file(name)) });

/** A folder whose reader hands out one entry at a time, as browsers may. */
function folder(entries: object[]) {
  const left = [...entries];
  return {
    isFile: false,
    createReader: () => ({ readEntries: (done: (part: object[]) => void) => done(left.splice(0, 1)) }),
  };
}

const dropped = (entries: object[]) =>
  ({ items: entries.map((entry) => ({ webkitGetAsEntry: () => entry })), files: [] }) as unknown as DataTransfer;

describe("what was dropped", () => {
  it("is every file, those in folders within folders too", async () => {
    const files = await droppedFiles(
      dropped([entryOf("a.xlsx"), folder([entryOf("b.xlsx"), folder([entryOf("c.xlsx")]), entryOf("notes.txt")])]),
    );
    expect(files.map(({ name }) => name)).toEqual(["a.xlsx", "b.xlsx", "c.xlsx", "notes.txt"]);
  });

  it("is the plain list of files where the browser knows no entries", async () => {
    const files = [file("a.xlsx")];
    expect(await droppedFiles({ items: [], files } as unknown as DataTransfer)).toEqual(files);
  });
});

describe("the workbooks among files", () => {
  it("are .xlsx files in the order of their names, without the ones that Excel keeps while a file is open", () => {
    const files = ["b.xlsx", "~$b.xlsx", "notes.txt", "A.XLSX", "old.xls"].map(file);
    expect(workbooksAmong(files).map(({ name }) => name)).toEqual(["A.XLSX", "b.xlsx"]);
  });
});
