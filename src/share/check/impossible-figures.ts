import { cellAt } from "../../cells/places";
import { placeName } from "../../cells/sheet-area";
import type { SheetSpec } from "../../workbook/form/sheet-spec";
import { cellsIn, type FileBook, namedArea } from "../../xlsx/parts/workbook-file";
import { changed, type Finding } from "../finding";
import { figureLabel } from "./figure-label";

interface Bound {
  names: readonly string[];
  /** What no readings can give. */
  impossible: (value: number) => boolean;
  must: string;
}

const ROUNDING = 1e-9;
const WAYS = ["Result", "Weighted", "Used"];
const ways = (...measures: string[]) => WAYS.flatMap((way) => measures.map((measure) => `${way}_${measure}`));

const BOUNDS: readonly Bound[] = [
  {
    names: ways("CU", "DU", "DU_Quarter"),
    impossible: (value) => value > 100 + ROUNDING,
    must: "be at most 100 %",
  },
  {
    names: ways("SC_Can", "SC_Quarter"),
    impossible: (value) => value < 1 - ROUNDING,
    must: "be at least 1, since no can holds less than the driest",
  },
  {
    names: [
      ...ways("DU", "DU_Quarter", "MAR"),
      "Block_Area_m2",
      "Bed_Width_m",
      "Bed_Length_m",
      "Test_Minutes",
      "Can_Mouth_mm",
      "Mean_Catch_mL",
      "Mean_Depth_mm",
      "Mean_Rate_mmh",
      "Net_Depth_mm",
      "Result_Run_Time_min",
      "Result_Water_kL",
      "Used_Now_kL",
      "Needed_After_kL",
      "Metered_kL",
    ],
    impossible: (value) => value < 0,
    must: "be 0 or more",
  },
];

/** Figures that a file states and that no readings can give, whether or not its other figures follow from them. */
export function impossibleFindings(book: FileBook, specs: readonly SheetSpec[]): Finding[] {
  return BOUNDS.flatMap(({ names, impossible, must }) =>
    names.flatMap((name) => {
      const area = namedArea(book, name);
      const value = area && cellsIn(book, { ...area, bottom: area.top, right: area.left })[0]?.cell.value;
      if (!area || typeof value !== "number" || !impossible(value)) return [];
      const { label, unit } = figureLabel(specs, name);
      const place = placeName(area.sheet, cellAt(area.top, area.left));
      const stated = `${value} ${unit}`.trim();
      return [changed(place, `${label} must ${must}, and the file states ${stated}`, "", stated)];
    }),
  );
}
