import { bookOf, type Grid } from "../hosts/desk-grid";
import type { Host } from "../hosts/host";
import { EXAMPLE_READINGS } from "./example";
import type { Files } from "./files";

interface Example {
  file: string;
  /** The sheet that it opens on. */
  sheet: string;
}

const AUDIT: Example = { file: "example-audit.xlsx", sheet: "Results" };
const NURSERY: Example = { file: "example-nursery.xlsx", sheet: "Program" };

async function openExample({ file, sheet }: Example, grid: Grid, files: Files): Promise<void> {
  const answer = await fetch(file);
  if (!answer.ok) throw new Error(`the page's address answered with status ${answer.status}`);
  await files.load(new Uint8Array(await answer.arrayBuffer()), file);
  bookOf(grid).setActiveSheet(bookOf(grid).getSheetByName(sheet) ?? bookOf(grid).getSheets()[0]!);
}

/** Opens the example that the page's address asks for, the audit where it names none; answers what to say of it. */
export async function openFirst(grid: Grid, files: Files, host: Host): Promise<string> {
  let said = "";
  const asked = new URLSearchParams(location.search).get("example");
  if (asked !== "functions") {
    const example = asked === "nursery" ? NURSERY : AUDIT;
    try {
      await openExample(example, grid, files);
      return files.name;
    } catch (problem) {
      said = `${example.file} could not be opened: ${problem instanceof Error ? problem.message : String(problem)}`;
    }
  }
  grid.api.getFormula().executeCalculation();
  await host.select(EXAMPLE_READINGS);
  return said;
}
