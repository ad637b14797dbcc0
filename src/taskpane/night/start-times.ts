import { boxOf, cellAt } from "../../cells/box";
import type { Cell, Input } from "../../cells/cell";
import type { Stated } from "../../cells/stated";
import { clock } from "../../core/program/clock";
import type { Program, Schedule } from "../../core/program/program";
import { MINUTES_A_DAY } from "../../core/program/spans";
import type { Host } from "../../hosts/host";
import type { Filled } from "../../hosts/snapshot";
import type { Act } from "../workbook/act";
import { writeAll } from "../workbook/writes";

export const START_TIMES = "Start_Times";
const COLUMNS = 4;
const HEADINGS = ["Block", "Pulse", "Start", "End", "Minutes", "Flow [L/min]"];

async function lines(host: Host): Promise<Filled> {
  const found = (await host.snapshot({ inputs: [START_TIMES] })).named(START_TIMES);
  if (!found) throw new Error("This workbook has no sheet Start times: add the nursery plan sheets first");
  return found;
}

/** How many lines of the sheet hold something. */
export async function linesThere(host: Host): Promise<number> {
  const { inputs } = await lines(host);
  return inputs!.filter((line) => line.some((input) => input !== "")).length;
}

/** Writes the start times into their sheet, over all that its lines held. */
export async function writeStartTimes(host: Host, schedule: Schedule): Promise<Act> {
  const { area } = await lines(host);
  const { rows } = boxOf(area);
  if (schedule.length > rows) {
    throw new Error(`The sheet Start times has ${rows} lines, but this night has ${schedule.length} pulses`);
  }
  const inputs = Array.from({ length: rows }, (_, index): Input[] => {
    const run = schedule[index];
    return run ? [`'${run.block}`, run.pulse, run.start / MINUTES_A_DAY, run.minutes] : Array(COLUMNS).fill("");
  });
  return writeAll(host, [{ area, inputs }], "start times");
}

/** The schedule that is in the sheet, and the cells of the lines that are not whole. */
export async function readStartTimes(host: Host, program: Program): Promise<{ schedule: Schedule; wrong: string[] }> {
  const { area, cells } = await lines(host);
  const first = program.windows[0]!.start;
  const wrong: string[] = [];
  const schedule = cells.flatMap((line, index) => {
    if (line.every((cell) => cell === null || cell === "")) return [];
    const [block, pulse, start, minutes] = line as [Cell, Cell, Cell, Cell];
    if (block === null || typeof pulse !== "number" || typeof start !== "number" || typeof minutes !== "number") {
      const { sheet, address } = cellAt(area, index, 0);
      wrong.push(`the line of '${sheet}'!${address} must hold a block, a pulse, a start and minutes`);
      return [];
    }
    const ofDay = Math.round(start * MINUTES_A_DAY) % MINUTES_A_DAY;
    return [{ block: String(block), pulse, start: ofDay < first ? ofDay + MINUTES_A_DAY : ofDay, minutes }];
  });
  return { schedule, wrong };
}

const flowOf = (program: Program, name: string): number => {
  const block = program.blocks.find((each) => each.name === name)!;
  return (block.flow ?? block.area * block.rate) / 60;
};

/** The start times as a table for the controller. */
export function startTimesRows(program: Program, schedule: Schedule): Stated[][] {
  return [
    HEADINGS,
    ...schedule.map(({ block, pulse, start, minutes }) => [
      block,
      pulse,
      clock(start),
      clock(start + minutes),
      minutes,
      Math.round(100 * flowOf(program, block)) / 100,
    ]),
  ];
}
