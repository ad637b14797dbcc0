import { expect, it } from "vitest";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { EXAMPLE_BED, exampleReadings } from "../support/example-bed";

it("the example audit is read from its simulated bed", () => {
  const { width, length, spacing, across, along, mouth, minutes, flow } = EXAMPLE_BED;
  expect(EXAMPLE_ENTRIES).toMatchObject({
    Bed_Width_m: width,
    Bed_Length_m: length,
    Head_Layout: "inset",
    Head_Spacing_m: spacing,
    Row_Spacing_m: spacing,
    Head_Count: (width / spacing) * (length / spacing),
    Maker_Flow_Lh: flow,
    Can_Mouth_mm: mouth,
    Test_Minutes: minutes,
    Cans_Across_m: [across],
    Cans_Along_m: along.map((place) => [place]),
    Cans_Readings: exampleReadings(),
    Water_Price: 2.6,
  });
});
