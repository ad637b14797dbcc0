import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import { cellText } from "../workbook/named";
import type { Reading } from "../workbook/reading";

/** A data check of the workbook that says something. */
export interface SpeakingCheck {
  label: string;
  words: string;
  /** Where it is. */
  cell: Area;
}

const CHECKS = ["Can_Checks", "Head_Checks"];

/** The data checks that are neither blank nor "ok", sheet after sheet; label and words are side by side. */
export const SPEAKING_CHECKS: Reading<SpeakingCheck[]> = {
  wants: { names: CHECKS },
  read: (snapshot) =>
    CHECKS.flatMap((name) => {
      const { area, cells } = snapshot.named(name) ?? { cells: [] };
      return cells
        .map(([label, words], row) => ({
          label: cellText(label),
          words: cellText(words),
          cell: cellAt(area!, row, 1),
        }))
        .filter(({ label, words }) => label !== "" && words !== "" && words !== "ok");
    }),
};
