import { describe, expect, it } from "vitest";
import { copyName, reportName } from "../../src/taskpane/share/copy-name";
import { memoryHost } from "../support/memory-host";

const at = (address: string) => ({ sheet: "Block", address });
const NAMES = { Site_Name: at("C4"), Block_Name: at("C5"), Test_Date: at("C6") };
const nameFor = (cells: Record<string, string | number>) => copyName(memoryHost({ Block: cells }, NAMES));

describe("the name of a share copy", () => {
  it("holds the site, the block and the day of the test", async () => {
    // day 46000 counts from 1899-12-30: 46000 days on is 2025-12-09
    expect(await nameFor({ C4: "Example Nursery", C5: "Block 7", C6: 46000 })).toBe(
      "Example Nursery Block 7 2025-12-09 share copy.xlsx",
    );
  });

  it("says so where the day of the test is missing, and leaves out what is blank", async () => {
    expect(await nameFor({ C5: 7 })).toBe("7 no test date share copy.xlsx");
    expect(await copyName(memoryHost({ Mine: {} }))).toBe("no test date share copy.xlsx");
  });

  it("holds nothing that a file's name may not", async () => {
    expect(await nameFor({ C4: 'A/B: "north"', C5: "..\\7" })).toBe("A B north .. 7 no test date share copy.xlsx");
  });
});

describe("the name of the report on a copy", () => {
  it("holds the name of the file that it is about, and whether that agrees", () => {
    expect(reportName("plain.xlsx", true)).toBe("report on plain, agrees.xlsx");
    expect(reportName("2026/forged.XLSX", false)).toBe("report on forged, findings.xlsx");
  });

  it("is safe and short, whatever the file is called", () => {
    expect(reportName('a:b "c".xlsx', true)).toBe("report on a b c, agrees.xlsx");
    expect(reportName(`${"x".repeat(200)}.xlsx`, true)).toBe(`report on ${"x".repeat(60)}, agrees.xlsx`);
    expect(reportName("???.xlsx", false)).toBe("report on a copy, findings.xlsx");
  });
});
