import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";

const SAVE_AGAIN = "import sys, openpyxl; openpyxl.load_workbook(sys.argv[1]).save(sys.argv[1])";

/** As openpyxl saves a file: formulas stay, what they gave is left out. */
function withoutValues(file: Uint8Array): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), "canfall-"));
  const path = join(folder, "copy.xlsx");
  writeFileSync(path, file);
  execFileSync("/usr/bin/python3", ["-c", SAVE_AGAIN, path]);
  const saved = new Uint8Array(readFileSync(path));
  rmSync(folder, { recursive: true });
  return saved;
}

describe.each(["example-audit", "example-nursery"])("a copy of %s", (name) => {
  it("gives the same report each time, and is refused in words where no program calculated it", async () => {
    const copy = await shareCopy(new Uint8Array(readFileSync(`templates/${name}.xlsx`)), new Date(2026, 10, 25));
    const [first, again] = [await checkCopy(copy), await checkCopy(copy.slice())];
    expect(JSON.stringify(again)).toBe(JSON.stringify(first));
    expect(first.agrees).toBe(true);
    await expect(checkCopy(withoutValues(copy))).rejects.toThrow(
      "not calculated yet: open it in a spreadsheet program and save",
    );
  });
});
