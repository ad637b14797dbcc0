import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** What openpyxl reads of a file: sheets, then `Sheet!A1 value` of each cell, and whether it could save it again. */
export function readByOpenpyxl(file: Uint8Array): string[] {
  const folder = mkdtempSync(join(tmpdir(), "canfall-"));
  writeFileSync(join(folder, "file.xlsx"), file);
  const script = [
    "import openpyxl, sys",
    "book = openpyxl.load_workbook(sys.argv[1])",
    "for sheet in book.worksheets:",
    "    for row in sheet.iter_rows():",
    "        for cell in row:",
    "            if cell.value is not None: print(sheet.title + '!' + cell.coordinate, cell.value)",
    "book.save(sys.argv[1] + '.again.xlsx')",
  ];
  try {
    const said = execFileSync("/usr/bin/python3", ["-c", script.join("\n"), join(folder, "file.xlsx")], {
      encoding: "utf8",
      stdio: ["ignore", "pipe", "pipe"],
    });
    return said.trim().split("\n");
  } finally {
    rmSync(folder, { recursive: true });
  }
}
