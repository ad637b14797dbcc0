import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { evidenceOf } from "../../src/share/copy/evidence";
import { PYTHON } from "../../src/share/copy/evidence-rows";
import { shareCopy } from "../../src/share/copy/share-copy";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { converted } from "../support/libreoffice";

it("the lines of Python on Evidence, typed as they are, print the SHA-256 of a copy that LibreOffice saved again", async () => {
  const copy = await shareCopy(new Uint8Array(readFileSync("templates/example-audit.xlsx")), new Date(2026, 10, 25));
  const [saved] = await converted([copy], "xlsx");
  const book = openBook(saved!);
  const said = [...book.sheets.find(({ name }) => name === "Evidence")!.cells.values()].map(({ value }) => value);
  const lines = said.filter((value): value is string => typeof value === "string" && PYTHON.includes(value));
  expect(lines).toEqual(PYTHON);
  const folder = mkdtempSync(join(tmpdir(), "canfall-"));
  writeFileSync(join(folder, "copy.xlsx"), saved!);
  const printed = execFileSync("/usr/bin/python3", ["-"], { cwd: folder, input: lines.join("\n"), encoding: "utf8" });
  rmSync(folder, { recursive: true });
  expect(printed.trim()).toBe(evidenceOf(book)!.hash);
});
