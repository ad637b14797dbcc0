import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import { ASKED_FIRST, ENTRIES } from "../../core/figures/entries";
import type { Snapshot } from "../../hosts/snapshot";
import type { Reading } from "../workbook/reading";

/** Something that the answer still needs, and the cell for it. */
export interface Needed {
  label: string;
  cell: Area;
}

const NEEDS: readonly { label: string; name: string }[] = [
  { label: "Width of the bed", name: "Bed_Width_m" },
  { label: "Length of the bed", name: "Bed_Length_m" },
  { label: "Minutes of the test", name: "Test_Minutes" },
  { label: ASKED_FIRST.Can_Mouth_mm.label, name: "Can_Mouth_mm" },
  { label: "Places of the cans across the bed", name: "Cans_Across_m" },
  { label: "Places of the cans along the bed", name: "Cans_Along_m" },
  { label: "Readings of the cans", name: "Cans_Readings" },
];
const DEPTH = { label: `${ENTRIES.Pot_Use_mL.label}, or the depth`, name: "Depth_Typed_mm" };
/** What pot groups lack, in the words of the sheet Pots. */
const AREA = { label: "Area of every pot group", name: "Groups_Areas" };
const GROUP_DEPTH = { label: "Water that one pot of each group uses, or its depth", name: "Groups_Depths_mm" };
const BASIS = { label: "What the run time is based on", name: "Multiplier_Basis" };
const NAMES = [...NEEDS, BASIS, DEPTH, AREA, GROUP_DEPTH, { name: "Net_Depth_mm" }, { name: "Groups_Problem" }].map(
  ({ name }) => name,
);

const holdsNumber = (snapshot: Snapshot, name: string) =>
  (snapshot.named(name)?.cells ?? []).flat().some((cell) => typeof cell === "number");

/** What the depth wanted needs: of one pot size, or of the groups on Pots. */
function depthNeeds(snapshot: Snapshot) {
  const problem = String(snapshot.named("Groups_Problem")?.cells[0]?.[0] ?? "");
  if (problem === "") return DEPTH;
  return problem.includes("area") ? AREA : GROUP_DEPTH;
}

/** What an audit still needs before it has an answer, in the order of the sheets; null where there is no audit. */
export const STILL_NEEDED: Reading<Needed[] | null> = {
  wants: { names: NAMES },
  read: (snapshot) => {
    if (!snapshot.named("Cans_Readings")) return null;
    const lacking = NEEDS.filter(({ name }) => snapshot.named(name) && !holdsNumber(snapshot, name));
    const depth = snapshot.named(DEPTH.name) && !holdsNumber(snapshot, "Net_Depth_mm") ? [depthNeeds(snapshot)] : [];
    const basis = snapshot.named(BASIS.name)?.cells[0]?.[0] === null ? [BASIS] : [];
    return [...lacking, ...depth, ...basis].map(({ label, name }) => ({
      label,
      cell: cellAt(snapshot.named(name)!.area, 0, 0),
    }));
  },
};
