import type { Area } from "../../cells/area";
import { boxOf, cellAt, reference, spill } from "../../cells/box";
import type { Input } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import type { Question } from "../parts/task/question";
import type { Act } from "./act";
import { unknownFunctions } from "./unknown-functions";
import { writeAll } from "./writes";

/** Where an answer would go, and what blocks it. */
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

/** Writes the formula into the first cell of the site and, where the site was taken, empties the rest of it. */
export function insertAt(host: Host, { area, taken }: Site, formula: string): Promise<Act> {
  const written = taken ? area : cellAt(area, 0, 0);
  const { rows, columns } = boxOf(written);
  const inputs: Input[][] = Array.from({ length: rows }, () => Array.from({ length: columns }, () => ""));
  inputs[0]![0] = formula;
  return writeAll(host, [{ area: written, inputs }], "formula");
}

const ofCells = (count: number) => (count > 1 ? ` (${count} cells are filled)` : "");

/** Inserts a formula whose answer fills so many cells, or asks first where something is. */
export async function insert(
  host: Host,
  target: Area,
  { text, rows, columns }: { text: string; rows: number; columns: number },
  keep: (act: Act) => void,
): Promise<string | Question> {
  const site = await siteOf(host, target, rows, columns);
  const act = async () => {
    keep(await insertAt(host, site, text));
    const [[shown = null] = []] = await host.read(cellAt(site.area, 0, 0));
    const known = !(shown !== null && typeof shown === "object" && shown.error === "#NAME?");
    return `Inserted in ${reference(target)}. Undo takes it back${known ? "" : `. It shows #NAME?: ${unknownFunctions(host)}`}`;
  };
  const { taken } = site;
  if (!taken) return act();
  if (site.fixed) throw new Error(`${taken.address} shows part of another formula's answer. Choose another cell`);
  return {
    text: `${taken.address} holds ${taken.holds}${ofCells(taken.count)}. Replace what is there?`,
    yes: "Replace",
    no: "Keep",
    doing: "Inserting",
    act,
  };
}
