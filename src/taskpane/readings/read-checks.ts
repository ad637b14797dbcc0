import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import type { Snapshot } from "../../hosts/snapshot";
import { cellText } from "../workbook/named";
import type { Reading } from "../workbook/reading";

/** A data check of the workbook that says something. */
export interface SpeakingCheck {
  label: string;
  words: string;
  /** Where what it speaks of is typed, else where it is. */
  cell: Area;
}

const CHECKS = ["Can_Checks", "Head_Checks"];
/** Where what a check asks for is typed, by its label. */
const TYPED_IN: Readonly<Record<string, string>> = {
  Readings: "Cans_Readings",
  Positions: "Cans_Across_m",
  "Walk-through": "Walk_Through",
  "Can opening": "Can_Mouth_mm",
  "Leaves over the cans": "Canopy_Over",
  "Blank places": "Cans_Readings",
  "Number of cans": "Cans_Readings",
  "Can spacing": "Cans_Across_m",
  "Edge cans": "Cans_Across_m",
  "Mean catch": "Test_Minutes",
  Rate: "Can_Mouth_mm",
  Wind: "Wind_ms",
  Clock: "Test_Start",
  "Places of heads": "Head_Across_m",
  "Before and after": "Pressure_After_kPa",
  "Throw and spacing": "Head_Throw_m",
};
/** The cell of the cans that the words of a check name. */
const NAMED_CELL = /^Can ([A-Z]{1,2}\d+)|\bin ([A-Z]{1,2}\d+)\b/;

function typedAt(snapshot: Snapshot, label: string, words: string): Area | undefined {
  const found = NAMED_CELL.exec(words);
  const cans = snapshot.named("Cans_Readings")?.area;
  if (found && cans) return { sheet: cans.sheet, address: found[1] ?? found[2]! };
  const name = TYPED_IN[label];
  const area = name === undefined ? undefined : snapshot.named(name)?.area;
  return area && cellAt(area, 0, 0);
}

/** The data checks that are neither blank nor "ok", sheet after sheet; label and words are side by side. */
export const SPEAKING_CHECKS: Reading<SpeakingCheck[]> = {
  wants: { names: [...CHECKS, ...new Set(Object.values(TYPED_IN))] },
  read: (snapshot) =>
    CHECKS.flatMap((name) => {
      const { area, cells } = snapshot.named(name) ?? { cells: [] };
      return cells
        .map((line, row) => {
          const [label, words] = [cellText(line[0]), cellText(line[1])];
          return { label, words, cell: typedAt(snapshot, label, words) ?? cellAt(area!, row, 1) };
        })
        .filter(({ label, words }) => label !== "" && words !== "" && words !== "ok");
    }),
};
