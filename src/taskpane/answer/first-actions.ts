import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import type { Snapshot } from "../../hosts/snapshot";
import { type AnswerFacts, savingWords, toRepeat } from "../../workbook/answer/answer-sentence";
import type { BedVerdict } from "../../workbook/bed/bed-verdict";
import type { SpeakingCheck } from "../readings/read-checks";
import { cellText } from "../workbook/named";

/** Something to do, and the cell where it goes on. */
export interface FirstAction {
  words: string;
  cell: Area;
}

const MOST = 3;
/** Cells that actions lead to. */
export const ACTION_NAMES: readonly string[] = [
  ...["Actions_Table", "Run_Minutes_Now", "After_SC", "Wind_ms"],
  ...["Walk_Through", "Can_Mouth_mm", "Canopy_Over", "Cans_Readings", "Cans_Across_m", "Test_Minutes", "Test_Start"],
];

const first = (snapshot: Snapshot, name: string): Area | undefined => {
  const area = snapshot.named(name)?.area;
  return area && cellAt(area, 0, 0);
};

/** The first line of Actions that is blank, its first two cells; null where there is none. */
export function freeActionLine(snapshot: Snapshot): Area | null {
  const found = snapshot.named("Actions_Table");
  const row = found?.cells.findIndex((line) => line.every((cell) => cellText(cell ?? "") === "")) ?? -1;
  if (!found || row < 0) return null;
  const [left, right] = [cellAt(found.area, row, 0), cellAt(found.area, row, 1)];
  return { sheet: left.sheet, address: `${left.address}:${right.address}` };
}

/** Where what a data check asks for is typed. */
const TYPED_IN: Readonly<Record<string, string>> = {
  "Walk-through": "Walk_Through",
  "Can opening": "Can_Mouth_mm",
  "Leaves over the cans": "Canopy_Over",
  "Blank places": "Cans_Readings",
  "Number of cans": "Cans_Readings",
  "Can spacing": "Cans_Across_m",
  "Edge cans": "Cans_Across_m",
  "Mean catch": "Test_Minutes",
  Wind: "Wind_ms",
  Clock: "Test_Start",
};

const capital = (words: string) => `${words[0]!.toUpperCase()}${words.slice(1)}`;

/**
 * What to do first, by gain: what makes the test usable, then the cause of dry pots, then the setting of the controller,
 * then what the planned change saves.
 */
export function firstActions(
  snapshot: Snapshot,
  facts: AnswerFacts,
  verdict: BedVerdict | undefined,
  checks: readonly SpeakingCheck[],
): FirstAction[] {
  const all: (FirstAction | undefined)[] = [];
  const add = (words: string, cell: Area | undefined) => all.push(cell && { words, cell });
  const repeat = toRepeat(facts);
  if (repeat) add(repeat.slice(repeat.indexOf("Test again")), first(snapshot, "Wind_ms"));
  const wrong = checks
    .filter(({ words }) => !words.startsWith("not checked"))
    .map((check) => {
      const name = TYPED_IN[check.label];
      return { ...check, cell: (name && first(snapshot, name)) || check.cell };
    });
  for (const { label, words, cell } of wrong.slice(0, 1)) add(`${label}: ${words}`, cell);
  const actions = freeActionLine(snapshot);
  if (facts.uneven && verdict && !facts.zero)
    add(`${capital(verdict.next)}.`, actions ? cellAt(actions, 0, 0) : undefined);
  const now = snapshot.named("Run_Minutes_Now")?.cells[0]?.[0];
  if (facts.setting && typeof now === "number" && Math.abs(now - facts.setting.total) >= 1) {
    add(`Change the controller: ${now} min now, set ${facts.setting.total} min.`, first(snapshot, "Run_Minutes_Now"));
  }
  const saving = savingWords(facts);
  if (saving) add(saving, first(snapshot, "After_SC"));
  for (const { label, words, cell } of wrong.slice(1)) add(`${label}: ${words}`, cell);
  return all.filter((one) => one !== undefined).slice(0, MOST);
}
