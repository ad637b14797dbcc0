import type { Reading } from "./workbook/reading";

/** The step that a workbook is at: to be set up, to be filled, or to be read. */
export const FIRST_STEP: Reading<string> = {
  wants: { names: ["Cans_Readings", "Program_Blocks"] },
  read: (snapshot) => {
    const holdsNumbers = (name: string) =>
      snapshot
        .named(name)!
        .cells.flat()
        .some((cell) => typeof cell === "number");
    if (snapshot.named("Cans_Readings")) return holdsNumbers("Cans_Readings") ? "results" : "readings";
    if (snapshot.named("Program_Blocks")) return holdsNumbers("Program_Blocks") ? "night" : "demand";
    return "new";
  },
};
