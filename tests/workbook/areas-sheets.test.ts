import { beforeAll, expect, it } from "vitest";
import { type Calculated, calculated } from "../support/audits";
import { published } from "../support/case-files";

type Many = Record<string, number>;

const { test, beds, grids } = published("areas-numpy.json") as {
  test: Many;
  beds: { readings: number[][]; expected: Many & Record<"SC.SHARE" | "RUNTIME", Many> }[];
  grids: { across: number[]; along: number[]; width: number; length: number }[];
};
/** The first bed has the areas of the first grid. */
const [bed, grid] = [beds[0]!, grids[0]!];
const BASES = { "driest can": "can", "low quarter": "quarter" } as const;
const SHARES = ["0.5", "0.9"];

const typed = {
  Bed_Width_m: grid.width,
  Bed_Length_m: grid.length,
  Cans_Across_m: [grid.across],
  Cans_Along_m: grid.along.map((place) => [place]),
  Cans_Readings: bed.readings,
  Test_Minutes: test.minutes!,
  Can_Mouth_mm: test.mouth!,
  Depth_Typed_mm: test.depth!,
};

let byBasis: Calculated[];
let byShare: Calculated[];
beforeAll(async () => {
  const books = await calculated([
    ...Object.keys(BASES).map((basis) => ({ ...typed, Multiplier_Basis: basis })),
    ...SHARES.map((share) => ({ ...typed, Multiplier_Basis: "share of pots", Share_Wanted: Number(share) })),
  ]);
  byBasis = books.slice(0, 2);
  byShare = books.slice(2);
}, 900_000);

const expectClose = (ours: unknown, theirs: number, what: string) =>
  expect(Math.abs((ours as number) / theirs - 1), `${what}: sheet ${String(ours)}, numpy ${theirs}`).toBeLessThan(1e-9);

it("the sheets, calculated by LibreOffice, have numpy's figures by area", () => {
  for (const [name, figure] of [
    ["Used_MAR", "MAR"],
    ["Used_CU", "CU.CHRISTIANSEN"],
    ["Used_DU", "DU.QUARTER"],
    ["Used_SC_Can", "SC.CAN"],
    ["Used_SC_Quarter", "SC.QUARTER"],
  ] as const) {
    expectClose(byBasis[0]!.named(name), bed.expected[figure]!, name);
  }
});

it("and numpy's run time on every basis, shares of the pots among them", () => {
  for (const [index, basis] of Object.values(BASES).entries()) {
    expectClose(byBasis[index]!.named("Result_Run_Time_min"), bed.expected.RUNTIME[basis]!, basis);
  }
  for (const [index, share] of SHARES.entries()) {
    expectClose(byShare[index]!.named("Used_SC_Share"), bed.expected["SC.SHARE"][share]!, `SC, ${share}`);
    expectClose(byShare[index]!.named("Result_Run_Time_min"), bed.expected.RUNTIME[share]!, share);
  }
});
