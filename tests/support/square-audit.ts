import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import type { Entries } from "../../src/workbook/form/build";

const column = (...values: readonly (string | number)[]) => values.map((value) => [value]);

/** The example on another bed: 12 x 15 m, 20 heads at 3 m, 25 cans in 5 rows, calm and without a warning. */
export const SQUARE_AUDIT: Entries = {
  ...EXAMPLE_ENTRIES,
  Bed_Length_m: 15,
  Head_Count: 20,
  Head_Spacing_m: 3,
  Row_Spacing_m: 3,
  Run_Minutes_Now: 95,
  Metered_kL: 2420,
  Test_Minutes: 15,
  Test_Stop: (6 * 60 + 55) / 1440,
  Cans_Along_m: [...column(0.5, 4, 7.5, 11, 14.5), [""]],
  Cans_Readings: [
    [15, 17, 18, 17, 13],
    [19, 26, 28, 25, 18],
    [20, 29, 33, 28, 21],
    [18, 27, 29, 26, 19],
    [16, 19, 21, 18, 15],
    ["", "", "", "", ""],
  ],
  Head_Place: column("first on the line", "middle of the bed", "highest", "last on the line", "far corner"),
  Pressure_Before_kPa: column(215, 205, 196, 190, 188),
  Pressure_After_kPa: column(213, 204, 195, 188, 187),
  Bucket_s: column(30, 30, 30, 30, 30),
  Bucket_mL: column(1085, 1060, 1040, 1020, 1015),
  Maker_Flow_Lh: 125,
  Meter_Stop_kL: 4813.62,
  In_Bed_Share: 0.8,
  After_MAR: 11.5,
};
