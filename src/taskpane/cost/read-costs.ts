import type { COSTS } from "../../core/figures/costs";
import { type NamedCells, numberIn } from "../workbook/named";

/** The kinds of cost, by the word in the names of their cells. */
export const KINDS = ["Water", "Power", "Fertiliser", "Labour", "Losses"] as const;
export type KindKey = keyof typeof COSTS;

const LEVELS = ["Low", "Likely", "High"] as const;
const SPANS = ["Now", "After"] as const;
export type Span = (typeof SPANS)[number];
const PAYS = ["Payback", "NPV", "Paying_Price"] as const;

/** A figure at low, likely and high prices; undefined where the workbook cannot give it. */
export interface Levels {
  low: number | undefined;
  likely: number | undefined;
  high: number | undefined;
}

const cost = (kind: KindKey, span: Span) => `Cost_${kind}_${span}`;
const saved = (kind: KindKey) => (kind === "Total" ? "Saved" : `Saved_${kind}`);
const ROWS: readonly KindKey[] = [...KINDS, "Total"];

/** Every name that the step shows. */
export const COST_NAMES: readonly string[] = [
  ...[...ROWS.flatMap((kind) => [cost(kind, "Now"), cost(kind, "After"), saved(kind)]), ...PAYS].flatMap((name) =>
    LEVELS.map((level) => `${name}_${level}`),
  ),
  "Cost_Missing",
  "Saved_Why",
  "Result_Water_kL",
  "Needed_After_kL",
  "Water_Label",
  "Valve_Words",
  "Upgrade_Capital",
  "Upgrade_Worth",
  "Waters_To_Driest",
];

const levelsOf = (found: NamedCells, name: string): Levels => ({
  low: numberIn(found[`${name}_Low`]),
  likely: numberIn(found[`${name}_Likely`]),
  high: numberIn(found[`${name}_High`]),
});

export const costOf = (found: NamedCells, kind: KindKey, span: Span): Levels => levelsOf(found, cost(kind, span));
export const savedOf = (found: NamedCells, kind: KindKey): Levels => levelsOf(found, saved(kind));
export const paysOf = (found: NamedCells, what: (typeof PAYS)[number]): Levels => levelsOf(found, what);

/** A sum of money, in whole units from 100 on. */
export const money = (value: number): string =>
  value.toLocaleString("en-AU", {
    minimumFractionDigits: Math.abs(value) < 100 ? 2 : 0,
    maximumFractionDigits: Math.abs(value) < 100 ? 2 : 0,
  });

/** `1,051 to 3,066`, or "" where low and high are one. */
export const rangeWords = ({ low, high }: Levels, shown = money): string =>
  low === undefined || high === undefined || low === high ? "" : `${shown(low)} to ${shown(high)}`;
