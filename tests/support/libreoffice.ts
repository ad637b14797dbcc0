import { execFile } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

const RECALCULATE_ALWAYS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** LibreOffice's own saving of files, as `xlsx` (every formula calculated anew on loading) or `pdf`. */
export async function converted(files: readonly Uint8Array[], kind: "xlsx" | "pdf"): Promise<Uint8Array[]> {
  const folder = mkdtempSync(join(tmpdir(), "canfall-"));
  const profile = join(folder, "profile");
  mkdirSync(join(profile, "user"), { recursive: true });
  writeFileSync(join(profile, "user", "registrymodifications.xcu"), RECALCULATE_ALWAYS);
  const names = files.map((file, index) => {
    writeFileSync(join(folder, `${index}.xlsx`), file);
    return join(folder, `${index}.xlsx`);
  });
  const out = join(folder, "out");
  await promisify(execFile)("soffice", [
    `-env:UserInstallation=file://${profile}`,
    "--headless",
    "--convert-to",
    kind,
    "--outdir",
    out,
    ...names,
  ]);
  const made = files.map((_, index) => new Uint8Array(readFileSync(join(out, `${index}.${kind}`))));
  rmSync(folder, { recursive: true });
  return made;
}
