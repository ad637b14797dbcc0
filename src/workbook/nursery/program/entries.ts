import { positive, within, zeroOrMore } from "../../../core/checks";
import { InputError } from "../../../core/errors";
import type { Program, Window } from "../../../core/program/program";
import { MINUTES_A_DAY, spans } from "../../../core/program/spans";
import { blocksOf } from "./block-entries";
import { isBlank, nameIn, Reading } from "./problems";
import type { PlacedCell, ProgramSheet } from "./stated-program";

/** A program as the sheet states it. */
export interface StatedProgram {
  /** Null where something is wrong, or nothing can be fitted yet. */
  program: Program | null;
  /** From 1 to 12; null where none is typed. */
  month: number | null;
  /** What is typed wrong, each with its cell. */
  wrong: string[];
  /** What is left out because something is missing, each with its cell. */
  missing: string[];
  /** The blocks that are left out for it: `Bed 2 (needs a multiplier)`. */
  leftOut: string[];
}

const LITRES_A_KL = 1000;
const MINUTES = 60;

/** The program of a month, by default the one that is typed. */
export function programOf(sheet: ProgramSheet, ofMonth?: number): StatedProgram {
  const reading = new Reading();
  const month = ofMonth ?? monthOf(sheet, reading);
  const pump = reading.optional(sheet.pump, (value) => positive("pump", value, "L/min"));
  if (sheet.pump.value === null) reading.missing.push(`the flow of the pump in ${sheet.pump.place}`);
  const changeOver = reading.optional(sheet.changeOver, (value) => within("change_over", value, 0, 3600, "s"));
  const step = reading.optional(sheet.step, (value) => within("step", value, 1 / MINUTES, 5, "min"));
  const limit = reading.optional(sheet.limit, (value) => positive("limit", value, "kL"));
  const volume = reading.optional(sheet.tank, (value) => positive("tank", value, "kL"));
  const refill = reading.optional(sheet.refill, (value) => zeroOrMore("refill", value, "L/min"));
  const windows = windowsOf(sheet, reading);
  const { blocks, names } = blocksOf(sheet, month, reading);
  const apart = pairsOf(sheet, names, reading).filter((pair) =>
    pair.every((name) => blocks.some((block) => block.name === name)),
  );
  const ready = reading.wrong.length === 0 && pump !== undefined && windows.length > 0 && blocks.length > 0;
  const program: Program | null = ready
    ? {
        blocks,
        pump: pump * MINUTES,
        windows,
        apart,
        ...(changeOver !== undefined && { changeOver }),
        ...(step !== undefined && { step }),
        ...(limit !== undefined && { limit: limit * LITRES_A_KL }),
        ...(volume !== undefined && { tank: { volume: volume * LITRES_A_KL, refill: (refill ?? 0) * MINUTES } }),
      }
    : null;
  return { program, month, wrong: reading.wrong, missing: reading.missing, leftOut: reading.leftOut };
}

function monthOf({ month }: ProgramSheet, reading: Reading): number | null {
  const found = reading.optional(month, (value) => {
    const number = within("month", value, 1, 12);
    if (!Number.isInteger(number)) throw new InputError("month", "be a whole number from 1 to 12", value);
    return number;
  });
  return found ?? null;
}

function windowsOf(sheet: ProgramSheet, reading: Reading): Window[] {
  const lines = sheet.windows.filter((line) => !isBlank(line)) as [PlacedCell, PlacedCell][];
  if (lines.length === 0) reading.missing.push(`hours when water may run in ${sheet.windows[0]![0]!.place}`);
  const found = lines.flatMap(([from, to]) => {
    if (from.value === null) reading.missing.push(`the start of the hours in ${from.place}`);
    if (to.value === null) reading.missing.push(`the end of the hours in ${to.place}`);
    const start = reading.optional(from, (value) => minutesOf("start", value)) ?? null;
    const end = reading.optional(to, (value) => minutesOf("end", value)) ?? null;
    if (start === null || end === null) return [];
    return [{ window: { start: start % MINUTES_A_DAY, end }, place: `${from.place}:${to.place.split("!").pop()}` }];
  });
  const windows = found.map(({ window }) => window);
  for (const [index, { place }] of found.entries()) {
    const before = reading.wrong.length;
    reading.of(place, () => spans(windows.slice(0, index + 1)));
    if (reading.wrong.length > before) break;
  }
  return windows;
}

/** Whole minutes of a time of day. */
function minutesOf(parameter: string, value: unknown): number {
  if (typeof value !== "number" || !(value >= 0 && value <= 1)) {
    throw new InputError(parameter, "be a time of day from 0:00 to 24:00", value);
  }
  return Math.round(value * MINUTES_A_DAY);
}

function pairsOf(sheet: ProgramSheet, names: ReadonlySet<string>, reading: Reading): [string, string][] {
  return sheet.apart.flatMap((line, index) => {
    if (isBlank(line)) return [];
    const which = `line ${index + 1} of the blocks that may not run together`;
    const [one, other] = line as [PlacedCell, PlacedCell];
    if (one.value === null || other.value === null) {
      reading.missing.push(`a second block for the pair in ${one.place}`);
      return [];
    }
    for (const cell of [one, other]) {
      reading.of(cell.place, () => {
        const name = nameIn(cell);
        if (!names.has(name.toLowerCase())) throw new InputError(which, "name two blocks of the Program", name);
      });
    }
    if (nameIn(one).toLowerCase() === nameIn(other).toLowerCase()) {
      reading.of(other.place, () => {
        throw new InputError(which, "name two different blocks", nameIn(other));
      });
    }
    return [[one, other].map((cell) => spelled(sheet, nameIn(cell))) as [string, string]];
  });
}

/** A block's name as its own line spells it. */
function spelled(sheet: ProgramSheet, name: string): string {
  const found = sheet.blocks.find(([cell]) => nameIn(cell!).toLowerCase() === name.toLowerCase());
  return found ? nameIn(found[0]!) : name;
}
