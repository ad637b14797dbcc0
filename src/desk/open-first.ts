import { bookOf, type Grid } from "../hosts/desk-grid";
import type { Host } from "../hosts/host";
import { EXAMPLE_READINGS } from "./example";
import type { Files } from "./files";

const AUDIT = "example-audit.xlsx";
const FIRST_SHEET = "Results";

async function openAudit(grid: Grid, files: Files): Promise<void> {
  const answer = await fetch(AUDIT);
  if (!answer.ok) throw new Error(`the page's address answered with status ${answer.status}`);
  await files.load(new Uint8Array(await answer.arrayBuffer()), AUDIT);
  const sheet = bookOf(grid).getSheetByName(FIRST_SHEET) ?? bookOf(grid).getSheets()[0]!;
  bookOf(grid).setActiveSheet(sheet);
}

/** Opens the example audit, or the worked sheet where the page's address asks for it; answers what to say of it. */
export async function openFirst(grid: Grid, files: Files, host: Host): Promise<string> {
  let said = "";
  if (new URLSearchParams(location.search).get("example") !== "functions") {
    try {
      await openAudit(grid, files);
      return files.name;
    } catch (problem) {
      said = `${AUDIT} could not be opened: ${problem instanceof Error ? problem.message : String(problem)}`;
    }
  }
  grid.api.getFormula().executeCalculation();
  await host.select(EXAMPLE_READINGS);
  return said;
}
