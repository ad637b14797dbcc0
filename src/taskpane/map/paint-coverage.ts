import type { Host } from "../../hosts/host";
import type { Act } from "../workbook/act";
import { readNamed } from "../workbook/named";
import { newSheet } from "../workbook/new-sheet";
import { writeAll } from "../workbook/writes";
import type { Block } from "./coverage-inputs";

const SHEET = "Coverage";

const write = (host: Host, sheet: string, blocks: readonly Block[]) =>
  writeAll(
    host,
    blocks.map(({ address, inputs }) => ({ area: { sheet, address }, inputs })),
    "painting",
  );

/** Points the Coverage sheet at cans; adds the sheet where there is none. Every other sheet stays as it is. */
export async function paintCoverage(host: Host, blocks: readonly Block[]): Promise<Act> {
  const there = (await readNamed(host, ["Coverage_Rates"])).Coverage_Rates?.area.sheet;
  if (there) {
    const done = await write(host, there, blocks);
    await host.select({ sheet: there, address: "A1" });
    return done;
  }
  const [{ buildWorkbook }, { COVERAGE_ALONE }] = await Promise.all([
    import("../../workbook/form/build"),
    import("../../workbook/audit/coverage/alone"),
  ]);
  await host.insertSheets(await buildWorkbook([COVERAGE_ALONE], {}));
  const { address } = blocks[0]!;
  await write(host, SHEET, blocks);
  await host.select({ sheet: SHEET, address: "A1" });
  return newSheet(host, SHEET, address, JSON.stringify(await host.inputs({ sheet: SHEET, address })));
}
