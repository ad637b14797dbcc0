import { cellAt } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import type { Snapshot } from "../../hosts/snapshot";
import type { NamedCell } from "../workbook/named";
import type { Reading } from "../workbook/reading";
import { FACTS, type FactName } from "./group-facts";

/** A pot group as the workbook has it. */
export interface Group {
  /** From 1, in the order of the sheet. */
  number: number;
  /** "" where the column has no name yet. */
  name: string;
  facts: Readonly<Record<FactName, NamedCell>>;
  /** Net depth of each month [mm a day], or in few words what is missing; "" in a column that is not used. */
  depths: readonly (number | string)[];
  /** How each came about, or why there is none. */
  reasons: readonly string[];
}

const OTHERS = ["Demand_Depths", "Demand_Use_mL", "Demand_How", "Weather_How"] as const;
const NAMES = [...FACTS.map(({ name }) => name), ...OTHERS] as const;

const text = (cell: Cell | undefined): string =>
  cell === null || cell === undefined ? "" : typeof cell === "object" ? cell.error : String(cell);

/** The pot groups of the open workbook; null where it has no Demand sheet. */
export const DEMAND: Reading<Group[] | null> = { wants: { names: NAMES }, read: groupsOf };

function groupsOf(snapshot: Snapshot): Group[] | null {
  if (NAMES.some((name) => !snapshot.named(name))) return null;
  const cells = (name: string) => snapshot.named(name)!.cells;
  const at = (name: string, row: number, column: number) => cells(name)[row]?.[column];
  return cells("Demand_Groups")[0]!.map((named, column) => ({
    number: column + 1,
    name: text(named),
    facts: Object.fromEntries(
      FACTS.map(({ name }) => {
        const { area } = snapshot.named(name)!;
        return [name, { area, cell: cellAt(area, 0, column), value: at(name, 0, column) ?? null, formula: false }];
      }),
    ) as unknown as Group["facts"],
    depths: cells("Demand_Depths").map((line) => {
      const depth = line[column];
      return typeof depth === "number" ? depth : text(depth);
    }),
    reasons: cells("Demand_How").map((line, month) => {
      const how = text(line[column]);
      if (!/^Weather!/.test(how)) return how;
      const said = text(at("Weather_How", month, 0));
      return typeof at("Demand_Use_mL", month, column) === "number" ? said.slice(said.indexOf("; ") + 2) : said;
    }),
  }));
}
