import type { Area, Host, Input } from "../hosts/host";
import { boxOf, cellAt, spill } from "./address";

/** An insert that can be taken back: what stood there before and after. */
export interface Done {
  area: Area;
  before: Input[][];
  after: Input[][];
}

/** Where an answer would go, and what stands in its way. */
export interface Site {
  area: Area;
  /** The first cell that is not blank, and what it holds; null when all are blank. */
  taken: { address: string; holds: string; count: number } | null;
  /** True when that cell shows the result of a formula elsewhere, so that it cannot be cleared from here. */
  fixed: boolean;
}

const holds = (value: unknown) =>
  typeof value === "object" && value !== null && "error" in value ? String(value.error) : String(value);

/** Looks at the target cell and the area that the answer fills. */
export async function siteOf(host: Host, target: Area, rows: number, columns: number): Promise<Site> {
  const area = spill(target, rows, columns);
  if (!area) throw new Error(`From ${target.address} the answer would run past the edge of the sheet`);
  const typed = (await host.inputs(area)).flat();
  const shown = (await host.read(area)).flat();
  const filled = typed.map((input, index) => (input !== "" ? input : shown[index] !== "" ? (shown[index] ?? "") : ""));
  const first = filled.findIndex((value) => value !== "");
  const count = filled.filter((value) => value !== "").length;
  const fixed = count > 0 && !typed.some((input) => typeof input === "string" && input.startsWith("="));
  if (first < 0) return { area, taken: null, fixed: false };
  const cell = cellAt(area, Math.floor(first / columns), first % columns);
  const body = typed.some((input, index) => input === "" && filled[index] !== "");
  return { area, taken: { address: cell.address, holds: holds(filled[first]), count }, fixed: fixed && body };
}

/** What was typed, such that typing it again gives the same: text that a sheet could take for a number or date stays text. */
async function retypable(host: Host, area: Area): Promise<Input[][]> {
  const [typed, shown] = [await host.inputs(area), await host.read(area)];
  return typed.map((line, row) =>
    line.map((input, column) => {
      const isText = typeof input === "string" && input !== "" && input === shown[row]![column];
      return isText ? `'${input}` : input;
    }),
  );
}

/** Writes the formula into the first cell of the site and, where the site was taken, empties the rest of it. */
export async function insertAt(host: Host, { area, taken }: Site, formula: string): Promise<Done> {
  const written = taken ? area : cellAt(area, 0, 0);
  const { rows, columns } = boxOf(written);
  const before = await retypable(host, written);
  const cells: Input[][] = Array.from({ length: rows }, () => Array.from({ length: columns }, () => ""));
  cells[0]![0] = formula;
  await host.write(written, cells);
  return { area: written, before, after: await host.inputs(written) };
}

/** True when what was inserted still stands as it was left. */
export async function untouched(host: Host, { area, after }: Done): Promise<boolean> {
  return JSON.stringify(await host.inputs(area)) === JSON.stringify(after);
}

export async function takeBack(host: Host, { area, before }: Done): Promise<void> {
  await host.write(area, before);
}
