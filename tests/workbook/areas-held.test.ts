import { beforeAll, expect, it } from "vitest";
import { canAreas } from "../../src/functions/areas";
import { checkCopy } from "../../src/share/check/check-copy";
import { namedValue } from "../../src/share/copy/evidence-rows";
import { shareCopy } from "../../src/share/copy/share-copy";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { published } from "../support/case-files";
import { fakeCustomFunctions } from "../support/custom-functions";
import { calculatedFiles } from "../support/recalculated";

type Many = Record<string, number>;

interface Bed {
  bed: string;
  cans: number;
  readings: (number | string)[][];
  areas: (number | "")[][];
  across: number[];
  along: number[];
  width: number;
  length: number;
  expected: Many & Record<"SC.SHARE" | "RUNTIME", Many>;
  drained: number;
}

const { test, beds } = published("areas-held.json") as { test: Many; beds: Bed[] };
const SHARE = 0.9;
const FEWEST = 4;

/** What numpy has for the named cells of a bed; without those of the low quarter where there is none. */
function wanted({ cans, expected, drained }: Bed): [name: string, value: number][] {
  const quarter: [string, number][] = [
    ["Used_DU", expected["DU.QUARTER"]!],
    ["Used_SC_Quarter", expected["SC.QUARTER"]!],
    ["Result_Run_Time_min", expected.RUNTIME.quarter!],
    ["Mean_Drained_Share", drained],
  ];
  return [
    ["Used_MAR", expected.MAR!],
    ["Used_CU", expected["CU.CHRISTIANSEN"]!],
    ["Used_SC_Can", expected["SC.CAN"]!],
    ["Used_SC_Share", expected["SC.SHARE"][SHARE]!],
    ...(cans < FEWEST ? [] : quarter),
  ];
}

const near = (ours: unknown, theirs: number, what: string) =>
  expect(Math.abs((ours as number) - theirs), `${what}: ours ${String(ours)}, numpy ${theirs}`).toBeLessThanOrEqual(
    1e-9 * Math.max(1, Math.abs(theirs)),
  );

let files: Uint8Array[];
beforeAll(async () => {
  fakeCustomFunctions();
  const typed = beds.map(({ readings, across, along, width, length }) => ({
    Bed_Width_m: width,
    Bed_Length_m: length,
    Cans_Across_m: [across],
    Cans_Along_m: along.map((place) => [place]),
    Cans_Readings: readings,
    Test_Minutes: test.minutes!,
    Can_Mouth_mm: test.mouth!,
    Depth_Typed_mm: test.depth!,
    Multiplier_Basis: "low quarter",
    Share_Wanted: SHARE,
  }));
  files = await calculatedFiles(AUDIT_SHEETS, typed);
}, 300_000);

it("CAN.AREAS has the areas of every can that was read", () => {
  for (const { bed, across, along, width, length, areas } of beds) {
    const ours = canAreas(
      [across],
      along.map((place) => [place]),
      width,
      length,
    );
    areas.forEach((row, r) => {
      row.forEach((area, c) => {
        if (area !== "") near(ours[r]![c], area, `${bed}, row ${r + 1}, column ${c + 1}`);
      });
    });
  }
});

it("the sheets, calculated by LibreOffice, have numpy's figures", () => {
  beds.forEach((bed, index) => {
    const book = openBook(files[index]!);
    for (const [name, value] of wanted(bed)) near(namedValue(book, name), value, `${bed.bed}: ${name}`);
  });
});

it("a share copy states them, and its check computes them", async () => {
  for (const [index, bed] of beds.entries()) {
    const copy = await shareCopy(files[index]!, new Date(2026, 10, 25));
    const { figures, findings } = await checkCopy(copy);
    expect(findings, bed.bed).toEqual([]);
    for (const [name, value] of wanted(bed)) {
      const figure = figures.find((one) => one.name === name)!;
      near(figure.stated, value, `${bed.bed}: ${name}, stated`);
      near(figure.recomputed, value, `${bed.bed}: ${name}, computed`);
    }
    expect(
      figures.filter(({ agrees }) => !agrees),
      bed.bed,
    ).toEqual([]);
  }
}, 300_000);
