import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { converted } from "../../support/libreoffice";

/** Copies forged with openpyxl, which drops what formulas gave, and calculated again by LibreOffice; by their kinds. */
export async function forgedWithOpenpyxl(copy: Uint8Array): Promise<{ kind: string; file: Uint8Array }[]> {
  const folder = mkdtempSync(join(tmpdir(), "canfall-forged-"));
  writeFileSync(join(folder, "in.xlsx"), copy);
  const said = execFileSync("/usr/bin/python3", ["tests/share/forged/openpyxl-kinds.py", folder], { encoding: "utf8" });
  const kinds = said.trim().split("\n");
  const files = kinds.map((_, number) => new Uint8Array(readFileSync(join(folder, `${number}.xlsx`))));
  rmSync(folder, { recursive: true });
  const calculated = await converted(files, "xlsx");
  return kinds.map((kind, number) => ({ kind, file: calculated[number]! }));
}
