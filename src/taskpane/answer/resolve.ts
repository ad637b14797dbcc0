import type { Area } from "../../cells/area";
import { boxOf, parseArea, reference } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import { InputError } from "../../core/errors";
import type { Snapshot, Wanted } from "../../hosts/snapshot";
import { insteadOfPercent, plainNumber } from "../parts/fields/typed-number";
import { words } from "../parts/task/words";
import type { Entry } from "./entries";

/** A setting after reading: its value, the cell that it came from, or what is wrong with it; none of them when blank. */
export interface Setting<T> {
  value?: T;
  area?: Area;
  problem?: string;
}

const NAME = /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u;

const isCell = (area: Area) => {
  const { rows, columns } = boxOf(area);
  return rows * columns === 1;
};

/** The address, or else the name, that was typed for a setting. */
function placeOf({ text, sheet }: Entry): Area | string | null {
  const typed = text.trim().replace(/^=/, "");
  return parseArea(typed, sheet) ?? (NAME.test(typed) ? typed : null);
}

/** What must be read for a setting. */
export function entryWants(entry: Entry): Wanted {
  const place = placeOf(entry);
  if (place === null || entry.text.trim() === "") return {};
  if (typeof place === "string") return { names: [place] };
  return isCell(place) ? { areas: [place] } : {};
}

function areaOf(snapshot: Snapshot, entry: Entry): Area | null {
  const place = placeOf(entry);
  if (place === null) return null;
  if (typeof place === "string") return snapshot.named(place)?.area ?? null;
  const known = snapshot.sheet(place.sheet);
  if (known === null) throw new Error(`There is no sheet named ${place.sheet}`);
  return { ...place, sheet: known };
}

/** True for what the audit workbook shows while something is not filled in yet. */
const isWaiting = (cell: Cell) => cell === null || (typeof cell === "string" && /^(needs .*)?$/i.test(cell.trim()));

function fromCell<T>(snapshot: Snapshot, area: Area, { touched }: Entry, check: (value: unknown) => T): Setting<T> {
  const cell = snapshot.cell(area);
  if (!touched && isWaiting(cell)) return { area };
  const where = reference(area);
  if (cell !== null && typeof cell === "object") return { area, problem: `${where} shows ${cell.error}` };
  try {
    return { area, value: check(cell) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { area, problem: `${error.message} in ${where}` };
  }
}

/** Reads what was typed for a setting: a number, a cell address or a defined name. */
export function resolve<T>(
  snapshot: Snapshot,
  parameter: string,
  entry: Entry,
  check: (value: unknown) => T,
): Setting<T> {
  const text = entry.text.trim();
  if (text === "") return {};
  try {
    const number = plainNumber(text);
    if (number !== null) return { value: check(number) };
    const area = areaOf(snapshot, entry);
    if (!area)
      throw new InputError(parameter, `be a number${insteadOfPercent(text)} or a cell such as Example!F2`, text);
    if (!isCell(area)) return { problem: `${parameter} must be one cell, got ${reference(area)}` };
    return fromCell(snapshot, area, entry, check);
  } catch (error) {
    return { problem: words(error) };
  }
}
