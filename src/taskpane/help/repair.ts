import type { Area } from "../../cells/area";
import { cellAt } from "../../cells/box";
import type { Cell, Input } from "../../cells/cell";
import { typedNames } from "../../cells/stored-name";
import type { Host } from "../../hosts/host";
import type { Act } from "../workbook/act";
import { unknownFunctions } from "../workbook/unknown-functions";
import { type Write, writeAll } from "../workbook/writes";

const OURS = /(^|[^A-Z0-9_.])CANFALL\.[A-Z]/i;

const unknown = (cell: Cell) => typeof cell === "object" && cell !== null && cell.error === "#NAME?";

function lost(area: Area, cells: Cell[][], inputs: Input[][]): Write[] {
  return inputs.flatMap((line, row) =>
    line.flatMap((input, column) => {
      if (typeof input !== "string" || !input.startsWith("=") || !unknown(cells[row]![column]!)) return [];
      const formula = typedNames(input);
      return OURS.test(formula) ? [{ area: cellAt(area, row, column), inputs: [[formula]] }] : [];
    }),
  );
}

/** The cells of all sheets that show #NAME? for one of our functions, with the formula to enter again. */
export async function lostFormulas(host: Host): Promise<Write[]> {
  const all: Write[] = [];
  for (const sheet of await host.sheets()) {
    const area = await host.used(sheet);
    if (!area) continue;
    const [cells, inputs] = await Promise.all([host.read(area), host.inputs(area)]);
    all.push(...lost(area, cells, inputs));
  }
  return all;
}

const counted = (count: number) => `${count} ${count === 1 ? "cell" : "cells"}`;

/** Enters add-in functions again that the spreadsheet does not know any more, and says how that went. */
export async function repair(host: Host, keep: (act: Act) => void): Promise<string> {
  const writes = await lostFormulas(host);
  if (writes.length === 0) return "No cell shows #NAME? for a function of Canfall";
  keep(await writeAll(host, writes, "repair"));
  await host.settled();
  const left = (await lostFormulas(host)).length;
  const still =
    left === 0 ? "all of them calculate now" : `${counted(left)} still ${left === 1 ? "shows" : "show"} #NAME?`;
  const why = left === 0 ? "" : `. ${unknownFunctions(host)}`;
  return `Entered the functions again in ${counted(writes.length)}: ${still}${why}`;
}
