import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import type { Snapshot } from "../../hosts/snapshot";
import { type AnswerFacts, MOST_WIND_ms, savingWords, toRepeat } from "../../workbook/answer/answer-sentence";
import type { BedVerdict } from "../../workbook/bed/bed-verdict";
import { capital } from "../../workbook/form/capital";
import type { SpeakingCheck } from "../readings/read-checks";
import { cellText } from "../workbook/named";

/** Something to do, and the cell where it goes on. */
export interface FirstAction {
  words: string;
  cell: Area;
}

const MOST = 3;
/** What is done about a rate outside its limit, and where that is typed. */
const RATE_OVER = { words: "Split the run into pulses: type the depth per pulse.", name: "Take_Up_mm" };
const RATE_UNDER = { words: "Check pressure and nozzles: the rate is under its limit.", name: "Pressure_Before_kPa" };
/** Cells that actions lead to. */
export const ACTION_NAMES: readonly string[] = [
  "Actions_Table",
  "Run_Minutes_Now",
  "After_SC",
  "Wind_ms",
  "Take_Up_mm",
  "Pressure_Before_kPa",
  "Pressure_After_kPa",
  "Test_State",
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

/** Checks of what may be mistyped, so that every figure may be wrong: they come before the cause. */
const DOUBTS: ReadonlySet<string> = new Set([
  ...["Readings", "Positions", "Pots", "Can opening", "Blank places", "Rate", "Cans against heads", "Clock"],
  ...["A very wet can", "A very dry can", "Places of heads", "Throw and spacing", "Caught / metered"],
]);

/** Where it is typed what makes a test one to repeat. */
function repeatedAt({ notValid, wind }: AnswerFacts): string {
  if (notValid) return "Test_State";
  return wind !== undefined && wind > MOST_WIND_ms ? "Wind_ms" : "Pressure_After_kPa";
}

/**
 * What to do first, by gain: a test to be repeated, what may be mistyped, the cause of dry pots, the rate, the setting of
 * the controller, what the planned change saves, then what would make the test better.
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
  if (repeat) add(repeat.slice(repeat.indexOf("Test again")), first(snapshot, repeatedAt(facts)));
  const speaking = checks.filter(({ words }) => !words.startsWith("not checked"));
  const addChecks = (doubts: boolean) => {
    for (const { label, words, cell } of speaking.filter((one) => DOUBTS.has(one.label) === doubts))
      add(`${label}: ${words}`, cell);
  };
  addChecks(true);
  const actions = freeActionLine(snapshot);
  if (facts.uneven && verdict && !facts.zero && !facts.high)
    add(`${capital(verdict.next)}.`, actions ? cellAt(actions, 0, 0) : undefined);
  const { rate, setting } = facts;
  const split = setting !== undefined && setting.pulses > 1;
  const remedy = rate && (rate.value < rate.limit ? RATE_UNDER : split ? undefined : RATE_OVER);
  if (remedy && !repeat && !facts.high) add(remedy.words, first(snapshot, remedy.name));
  const now = snapshot.named("Run_Minutes_Now")?.cells[0]?.[0];
  if (setting && typeof now === "number" && Math.abs(now - setting.total) >= 1) {
    add(`Change the controller: ${now} min now, set ${setting.total} min.`, first(snapshot, "Run_Minutes_Now"));
  }
  const saving = savingWords(facts);
  if (saving) add(saving, first(snapshot, "After_SC"));
  addChecks(false);
  return all.filter((one) => one !== undefined).slice(0, MOST);
}
