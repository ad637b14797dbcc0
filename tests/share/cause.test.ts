import { beforeAll, describe, expect, it } from "vitest";
import { causeFindings } from "../../src/share/check/cause-check";
import { checkBook } from "../../src/share/check/check-copy";
import { namedValue } from "../../src/share/copy/evidence-rows";
import { shareCopy } from "../../src/share/copy/share-copy";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { bedCans } from "../../src/workbook/bed/bed-cans";
import { bedOfWorkbook } from "../../src/workbook/bed/bed-of-workbook";
import { causesOf, verdictOf } from "../../src/workbook/bed/bed-verdict";
import { buildWorkbook } from "../../src/workbook/form/build";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { formulaResults } from "../support/formula-results";
import { converted } from "../support/libreoffice";

async function book(more: Record<string, string | number>): Promise<Uint8Array> {
  const raw = await buildWorkbook(AUDIT_SHEETS, { ...EXAMPLE_ENTRIES, ...more });
  const [calculated] = await converted([raw], "xlsx");
  return buildWorkbook(AUDIT_SHEETS, { ...EXAMPLE_ENTRIES, ...more }, formulaResults(calculated!));
}

describe("the cause that the pane keeps in a workbook", () => {
  let stamp = "";
  let kept: Record<string, string | number>;
  beforeAll(async () => {
    const bare = openBook(await book({}));
    stamp = String(namedValue(bare, "Inputs_Stamp"));
    const entries: Record<string, unknown> = { ...EXAMPLE_ENTRIES };
    const flows = [1730, 1690, 1650, 1625, 1615].map((mL) => (mL / 30) * 3.6); // mL in 30 s, as L/h
    const pressures = [214, 204.5, 195.5, 189, 187.5]; // means of before and after
    const at = (values: number[]) =>
      Array.from({ length: 12 }, (_, k) => [values[[2, 5, 8, 11, 12].indexOf(k + 1)] ?? null]);
    const measured: Record<string, unknown> = { ...entries, Flow_Lh: at(flows), Pressure_kPa: at(pressures) };
    const cells = (name: string) => {
      const entry = measured[name];
      if (entry === undefined) return null;
      return (Array.isArray(entry) ? entry : [[entry]]) as never;
    };
    const { input, measured: found, lack } = bedOfWorkbook(cells);
    expect(lack).toBe("");
    const verdict = verdictOf(causesOf(bedCans(cells), { input: input!, measured: found }));
    expect(verdict.sentence).toMatch(/heads inside the edge/);
    kept = {
      ...{ Cause_Text: verdict.sentence, Cause_Next: verdict.next, Cause_Measured: verdict.measured },
      Cause_Stamp: stamp,
    };
  }, 120_000);

  it("is on Coverage, Report and Actions, and agrees in a share copy; a forged or moved one is found", async () => {
    const fresh = await book(kept);
    const open = openBook(fresh);
    const said = String(namedValue(open, "Cause_Sentence"));
    expect(said).toContain(`What may be wrong: ${kept.Cause_Text}`);
    for (const [sheet, place] of [
      ["Coverage", "A3"],
      ["Report", "A3"],
      ["Actions", "A3"],
    ]) {
      expect(String(open.sheets.find(({ name }) => name === sheet)!.cells.get(place!)!.value)).toContain(said);
    }
    const copy = await shareCopy(fresh, new Date(2026, 10, 25));
    expect((await checkBook(openBook(copy), AUDIT_SHEETS)).findings).toEqual([]);
    const forged = openBook(await book({ ...kept, Cause_Text: "nothing wrong found (99 %)." }));
    expect(causeFindings(forged).map(({ text }) => text)).toEqual([
      `Cause_Text says "nothing wrong found (99 %)."; readings and heads give "${String(kept.Cause_Text).slice(0, 90)}".`,
    ]);
  }, 120_000);

  it("says that it is out of date once a throw or a reading is another one", async () => {
    for (const changed of [{ Head_Throw_m: 4.5 }, { Supply_Side: "left" }, { Bed_Width_m: 12.5 }]) {
      const open = openBook(await book({ ...kept, ...changed }));
      expect(namedValue(open, "Cause_Sentence")).toMatch(/^What may be wrong is out of date/);
      expect(causeFindings(open)).toEqual([]);
    }
  }, 120_000);
});
