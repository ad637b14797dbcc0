import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import type { NamedCell } from "../workbook/named";
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
export async function readDemand(host: Host): Promise<Group[] | null> {
  const areas = new Map<string, Area>();
  const cells = new Map<string, Cell[][]>();
  for (const name of NAMES) {
    const area = await host.named(name);
    if (!area) return null;
    areas.set(name, area);
    cells.set(name, await host.read(area));
  }
  const at = (name: string, row: number, column: number) => cells.get(name)![row]?.[column];
  return cells.get("Demand_Groups")![0]!.map((named, column) => ({
    number: column + 1,
    name: text(named),
    facts: Object.fromEntries(
      FACTS.map(({ name }) => {
        const area = areas.get(name)!;
        return [name, { area, cell: cellAt(area, 0, column), value: at(name, 0, column) ?? null, formula: false }];
      }),
    ) as unknown as Group["facts"],
    depths: cells.get("Demand_Depths")!.map((line) => {
      const depth = line[column];
      return typeof depth === "number" ? depth : text(depth);
    }),
    reasons: cells.get("Demand_How")!.map((line, month) => {
      const how = text(line[column]);
      if (!/^Weather!/.test(how)) return how;
      const said = text(at("Weather_How", month, 0));
      return typeof at("Demand_Use_mL", month, column) === "number" ? said.slice(said.indexOf("; ") + 2) : said;
    }),
  }));
}
