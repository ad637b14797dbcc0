import type { Reading } from "./workbook/reading";

/** The step that a workbook opens on: the answer of an audit, which also says what is still needed for one. */
export const FIRST_STEP: Reading<string> = {
  wants: { names: ["Cans_Readings", "Program_Blocks"] },
  read: (snapshot) => {
    const holdsNumbers = (name: string) =>
      snapshot
        .named(name)!
        .cells.flat()
        .some((cell) => typeof cell === "number");
    if (snapshot.named("Cans_Readings")) return "answer";
    if (snapshot.named("Program_Blocks")) return holdsNumbers("Program_Blocks") ? "night" : "demand";
    return "new";
  },
};
