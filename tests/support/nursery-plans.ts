import type { Block, Program } from "../../src/core/program/program";
import type { Entries } from "../../src/workbook/form/build";
import { nursery } from "../bench/nurseries";

/** What is typed for a program, depth and depth per pulse of every second block by its group. */
export interface NurseryPlan {
  program: Program;
  month: number;
  entries: Entries;
}

const GROUPS = ["ferns", "shrubs", "trees", "herbs"];
const cell = (value: number | undefined): number | "" => value ?? "";

/** A plan as somebody would type it; every second block takes its depth from a group, and its depth per pulse unless typed. */
export function nurseryPlan(index: number): NurseryPlan {
  const made = nursery(index);
  const month = 1 + (index % 12);
  const depths = GROUPS.map((_, group) => 4 + group + (index % 5) / 2);
  const takeUps = GROUPS.map((_, group) => (group === index % 4 ? undefined : 1.5 + group));
  const typed = made.blocks
    .slice(0, 60)
    .map(({ takeUp, ...block }, i) => ({ block, takeUp: i % 4 === 1 ? undefined : takeUp }));
  const blocks = typed.map(({ block, takeUp }, i): Block => {
    const used = takeUp ?? (i % 2 === 1 ? takeUps[i % GROUPS.length] : undefined);
    return {
      ...block,
      ...(used !== undefined && { takeUp: used }),
      ...(i % 2 === 1 && { depth: depths[i % GROUPS.length]! }),
      ...(i % 3 === 0 && { flow: 60 * Math.round((block.area * block.rate * 1.1) / 60) }),
    };
  });
  const largest = Math.max(...blocks.map(({ area, rate, flow }) => flow ?? area * rate));
  const step = [1, 0.5, 0.25, 1 / 60, 5][index % 5]!;
  const litres = 60_000 + 1000 * index;
  const program: Program = {
    ...made,
    blocks,
    pump: 60 * Math.ceil(Math.max(made.pump, largest) / 60),
    apart: (made.apart ?? []).slice(0, 12),
    step,
    limit: litres,
    tank: { volume: litres, refill: 60 * (20 + index) },
  };
  const row = ({ name, area, rate, multiplier, depth, rest, flow }: Block, i: number) => [
    name,
    i % 2 === 1 ? GROUPS[i % GROUPS.length]! : "",
    area,
    rate,
    multiplier,
    i % 2 === 1 ? "" : depth,
    cell(typed[i]!.takeUp),
    cell(rest),
    flow === undefined ? "" : flow / 60,
  ];
  return {
    program,
    month,
    entries: {
      Demand_Groups: [GROUPS],
      Demand_Depths: Array.from({ length: 12 }, (_, m) => depths.map((depth) => (m + 1 === month ? depth : 99))),
      Demand_Take_Up_mm: [takeUps.map(cell)],
      Program_Month: month,
      Pump_Flow_Lmin: program.pump / 60,
      Change_Over_s: program.changeOver ?? 0,
      Controller_Step_min: step,
      Day_Limit_kL: litres / 1000,
      Tank_kL: litres / 1000,
      Tank_Refill_Lmin: 20 + index,
      Program_Windows: program.windows.map(({ start, end }) => [start / 1440, end / 1440]),
      ...(program.apart!.length > 0 && { Program_Apart: program.apart!.map((pair) => [...pair]) }),
      Program_Blocks: blocks.map(row),
    },
  };
}
