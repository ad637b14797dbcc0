import type { Area } from "../../cells/area";
import { boxOf, parseArea, reference } from "../../cells/box";
import type { Cell } from "../../cells/cell";
import { InputError } from "../../core/errors";
import type { Host } from "../../hosts/host";
import { insteadOfPercent } from "../parts/typed-number";
import { words } from "../parts/words";
import type { Entry } from "./entries";

/** A setting after reading: its value, the cell that it came from, or what is wrong with it; none of them when blank. */
export interface Setting<T> {
  value?: T;
  area?: Area;
  problem?: string;
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** The sheet as the workbook spells it, or null where there is none. */
export async function knownSheet(host: Host, sheet: string): Promise<string | null> {
  const sheets = await host.sheets();
  return sheets.find((name) => name.toLowerCase() === sheet.toLowerCase()) ?? null;
}

async function areaOf(host: Host, { text, sheet }: Entry): Promise<Area | null> {
  const typed = text.trim().replace(/^=/, "");
  const area =
    parseArea(typed, sheet) ?? (/^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(typed) ? await host.named(typed) : null);
  if (!area) return null;
  const known = await knownSheet(host, area.sheet);
  if (known === null) throw new Error(`There is no sheet named ${area.sheet}`);
  return { ...area, sheet: known };
}

/** True for what the audit workbook shows while something is not filled in yet. */
const isWaiting = (cell: Cell) => cell === null || (typeof cell === "string" && /^(needs .*)?$/i.test(cell.trim()));

async function fromCell<T>(
  host: Host,
  area: Area,
  { touched }: Entry,
  check: (value: unknown) => T,
): Promise<Setting<T>> {
  const [[cell = null] = []] = await host.read(area);
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
export async function resolve<T>(
  host: Host,
  parameter: string,
  entry: Entry,
  check: (value: unknown) => T,
): Promise<Setting<T>> {
  const text = entry.text.trim();
  if (text === "") return {};
  try {
    if (NUMBER.test(text)) return { value: check(Number(text)) };
    const area = await areaOf(host, entry);
    if (!area)
      throw new InputError(parameter, `be a number${insteadOfPercent(text)} or a cell such as Example!F2`, text);
    const { rows, columns } = boxOf(area);
    if (rows * columns > 1) return { problem: `${parameter} must be one cell, got ${reference(area)}` };
    return await fromCell(host, area, entry, check);
  } catch (error) {
    return { problem: words(error) };
  }
}
