import { dayOf } from "../../src/cells/day-number";
import { WIND_CLASSES } from "../../src/core/register/basis";
import type { RegisteredAudit } from "../../src/core/register/registered-audit";
import { randomNumbers } from "./random";

type Typed = string | number;

/** A generated register: what was typed, and the audit of each line; null where the line cannot be used. */
export interface GeneratedRegister {
  rows: Typed[][];
  audits: (RegisteredAudit | null)[];
  months: number;
  drift: number;
  asOf: number;
  /** As the list of blocks says it. */
  chosen: string;
}

const SITES = ["", "North Nursery", "south nursery "];
const BLOCKS = ["block 1", "Block 1 ", "7?", "*", "bed, upper (old)", "12"];
const GRIDS = ["5 × 5", "5x5", "4 × 6", "5 × 5, by area"];
const KINDS = ["driest can", "low quarter", "share of pots"];

/** What makes a line unusable, by the column that it is typed into. */
const FAULTS: [column: number, value: Typed][] = [
  [1, ""],
  [2, ""],
  [2, "last May"],
  [2, -5],
  [3, "many"],
  [3, 0],
  [4, "five by five"],
  [5, "calm"],
  [6, -200],
  [7, "twelve"],
  [8, 101],
  [9, -1],
  [10, 0.5],
  [12, "average"],
  [14, -3],
  [15, 0],
  [17, "yes"],
];

const plain = (name: string) => name.trim().toLowerCase();
const labelOf = ({ site, block }: RegisteredAudit) => block.trim() + (site.trim() ? ` · ${site.trim()}` : "");

function register(seed: number): GeneratedRegister {
  const random = randomNumbers(seed);
  const below = (end: number) => Math.floor(end * random());
  const oneOf = <T>(list: readonly T[]): T => list[below(list.length)]!;
  const maybe = <T>(value: T): T | null => (random() < 0.12 ? null : value);
  const from = (low: number, high: number, digits = 1) => Number((low + (high - low) * random()).toFixed(digits));
  const seen = new Set<string>();
  const count = seed % 11 === 0 ? 60 : 1 + below(40);
  const lines = Array.from({ length: count }, () => {
    const audit: RegisteredAudit = {
      site: oneOf(SITES),
      block: oneOf(BLOCKS),
      day: 44500 + below(2000),
      cans: maybe(oneOf([24, 25])),
      grid: maybe(oneOf(GRIDS)),
      wind: maybe(oneOf(WIND_CLASSES.slice(0, 2))),
      pressure: maybe(from(150, 250, 0)),
      mar: maybe(from(5, 20)),
      cu: maybe(from(40, 95)),
      du: maybe(from(20, 90)),
      scCan: maybe(from(1, 4, 2)),
      scQuarter: maybe(from(1, 2, 2)),
      kind: maybe(oneOf(KINDS.slice(0, 2 + below(2)))),
      water: maybe(from(100, 4000, 0)),
      area: maybe(oneOf([180, 360])),
    };
    const row: Typed[] = [
      audit.site,
      audit.block,
      audit.day,
      ...[audit.cans, audit.grid, audit.wind, audit.pressure, audit.mar, audit.cu, audit.du].map((one) => one ?? ""),
      ...[audit.scCan, audit.scQuarter, audit.kind, maybe(1.4), audit.water, audit.area].map((one) => one ?? ""),
      maybe(90) ?? "",
      maybe(oneOf(["agrees", "does not agree", "typed"])) ?? "",
      "a.xlsx",
    ];
    const key = [plain(audit.site), plain(audit.block), audit.day].join("|");
    const twice = seen.has(key);
    seen.add(key);
    if (random() < 0.15) {
      const [column, value] = oneOf(FAULTS);
      row[column] = value;
      if (column < 3) seen.delete(key);
      return { row, audit: null };
    }
    return { row, audit: twice ? null : audit };
  });
  const audits = lines.map(({ audit }) => audit);
  const usable = audits.filter((audit) => audit !== null);
  const some = usable.length > 0 ? oneOf(usable) : null;
  // a block is listed as its first line spells it
  const first = some && usable.find((audit) => plain(labelOf(audit)) === plain(labelOf(some)));
  return {
    rows: lines.map(({ row }) => row),
    audits,
    months: oneOf([6, 12, 18]),
    drift: oneOf([5, 10, 20]),
    asOf: dayOf("2026-11-25"),
    chosen: first ? labelOf(first) : "",
  };
}

/** Registers of every kind; the same ones every time. */
export const generatedRegisters = (): GeneratedRegister[] =>
  Array.from({ length: 22 }, (_, seed) => register(seed + 1));
