import { execFile } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { newProfile, profileOption, runningOffice } from "./offices";

/** LibreOffice's own saving of files, as `xlsx` (every formula calculated anew on loading), `ods` or `pdf`. */
export async function converted(files: readonly Uint8Array[], kind: "xlsx" | "ods" | "pdf"): Promise<Uint8Array[]> {
  const folder = mkdtempSync(join(tmpdir(), "canfall-"));
  const profile = (await runningOffice())?.profile ?? newProfile(folder);
  const names = files.map((file, index) => {
    writeFileSync(join(folder, `${index}.xlsx`), file);
    return join(folder, `${index}.xlsx`);
  });
  const out = join(folder, "out");
  await promisify(execFile)("soffice", [
    profileOption(profile),
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
