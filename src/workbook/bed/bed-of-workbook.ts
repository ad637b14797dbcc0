import { type BedHead, bedHeads, type TypedHead } from "../../core/bed/bed-heads";
import type { Measured } from "../../core/bed/causes/measured";
import { type HeadLine, headsOfLines } from "../../core/bed/head-lines";
import type { BedInput } from "../../core/bed/read-bed";
import { InputError } from "../../core/errors";
import type { Arcs, Stand } from "../../core/layout/heads";
import { type CellsOf, listOf, numberOf, textOf } from "./cells-of";
import { FACES } from "./faces";
import { ARRANGEMENT_OF } from "./head-layout";
import { typicalSpacing } from "./typical-spacing";
import { windOfTest } from "./wind-of-test";

/** The cells that say where the heads are, and what was measured there. */
export const BED_CELLS = [
  ...["Bed_Width_m", "Bed_Length_m", "Bed_Bearing_deg", "Head_Layout", "Head_Spacing_m", "Row_Spacing_m", "Head_Arc"],
  ...["Head_Throw_m", "Supply_Side", "Head_Across_m", "Head_Along_m", "Head_Arc_deg", "Head_Faces", "Flow_Lh"],
  ...["Pressure_kPa", "Maker_Flow_Lh", "Maker_Pressure_kPa", "Wind_ms", "Wind_From"],
] as const;

/** Where the heads of the workbook's bed are and what was measured at them; or what is lacking. */
export interface WorkbookBed {
  heads: BedHead[];
  /** The bed without its cans; undefined while something is lacking. */
  input?: Omit<BedInput, "grid" | "across" | "along">;
  measured: Measured;
  /** What the cause needs, as a sentence; "" where nothing is lacking. */
  lack: string;
}

const ARCS: Readonly<Record<string, Arcs>> = {
  "part circles, matched": "matched",
  "part circles, same nozzle": "unmatched",
};
const SIDES = ["top", "bottom", "left", "right"] as const;
const NO_HEADS =
  "Fill in the bed, layout and spacings on the sheet Block, or the places of the heads on the sheet Heads, to see the cause.";
const EARLIER =
  "This workbook is of a version that does not ask for the throw of a head, so the cause is not read. A new audit asks for it.";
const NO_THROW = "Type the throw of a head on the sheet Block to see the cause.";

function linesOf(cells: CellsOf): HeadLine[] {
  const [across, along, arc, faces] = ["Head_Across_m", "Head_Along_m", "Head_Arc_deg", "Head_Faces"].map((name) =>
    listOf(cells, name),
  );
  const number = (value: unknown) => (typeof value === "number" ? value : null);
  return across!.map((_, line) => ({
    across: number(across![line]),
    along: number(along![line]),
    arc: number(arc![line]),
    faces: FACES[faces![line] as keyof typeof FACES] ?? null,
  }));
}

/** The layout that is typed; undefined where an entry of it is missing or there is none of that name. */
export function standOf(cells: CellsOf): Stand | undefined {
  const number = (name: (typeof BED_CELLS)[number]) => numberOf(cells, name);
  const [width, length] = [number("Bed_Width_m"), number("Bed_Length_m")];
  const [spacing, rowSpacing] = [number("Head_Spacing_m"), number("Row_Spacing_m")];
  const arrangement = ARRANGEMENT_OF[textOf(cells, "Head_Layout")];
  if (!width || !length || !spacing || !rowSpacing || !arrangement) return undefined;
  return { width, length, spacing, rowSpacing, arrangement, arcs: ARCS[textOf(cells, "Head_Arc")] ?? "full" };
}

function measuredOf(cells: CellsOf, heads: readonly BedHead[]): Measured {
  const [flows, pressures] = [listOf(cells, "Flow_Lh"), listOf(cells, "Pressure_kPa")];
  const at = (values: readonly unknown[]) =>
    heads.map(({ number }) => {
      const value = values[number - 1];
      return typeof value === "number" && value >= 0 ? value : null;
    });
  const [flow, pressure] = [numberOf(cells, "Maker_Flow_Lh"), numberOf(cells, "Maker_Pressure_kPa")];
  const wind = windOfTest(cells);
  const supply = SIDES.find((side) => side === textOf(cells, "Supply_Side"));
  return {
    flows: at(flows),
    pressures: at(pressures),
    ...(flow && pressure && { maker: { flow, pressure } }),
    ...(wind && { wind }),
    ...(supply && { supply }),
  };
}

/** Why a flow or a pressure is at no head, as a sentence; "" where each is at one. */
function measuredElsewhere(cells: CellsOf, heads: readonly BedHead[]): string {
  const numbers = new Set(heads.map(({ number }) => number));
  const lost = [...Array(listOf(cells, "Flow_Lh").length).keys()].find(
    (line) =>
      !numbers.has(line + 1) &&
      ["Flow_Lh", "Pressure_kPa"].some((name) => typeof listOf(cells, name)[line] === "number"),
  );
  if (lost === undefined) return "";
  return `Head ${lost + 1} on the sheet Heads has a bucket or a pressure, but there is no such head: put it in the line of its number on the map.`;
}

/** The heads of the lines; why there are none where a line is not in order. */
function headsIn(lines: readonly HeadLine[], stand: Stand | undefined): { typed: TypedHead[]; problem: string } {
  try {
    return { typed: headsOfLines(lines, stand), problem: "" };
  } catch (error) {
    if (error instanceof InputError) return { typed: [], problem: error.message };
    throw error;
  }
}

/** Reads the bed, its heads and what was measured at them from the cells of an audit. */
export function bedOfWorkbook(cells: CellsOf): WorkbookBed {
  const lines = linesOf(cells);
  const stand = standOf(cells);
  const { typed, problem } = headsIn(lines, stand);
  const [width, length] = [numberOf(cells, "Bed_Width_m"), numberOf(cells, "Bed_Length_m")];
  const none = { heads: [], measured: measuredOf(cells, []) };
  if (problem) return { ...none, lack: problem };
  if (typed.length === 0 || !width || !length) return { ...none, lack: NO_HEADS };
  const spacing = stand?.spacing ?? numberOf(cells, "Head_Spacing_m") ?? typicalSpacing(typed);
  const own: Stand = stand ?? {
    ...{ width, length, spacing, rowSpacing: numberOf(cells, "Row_Spacing_m") ?? spacing },
    ...{ arrangement: "border", arcs: ARCS[textOf(cells, "Head_Arc")] ?? "full" },
  };
  const asLaidOut = lines.every(({ across, arc }) => across === null && arc === null);
  const onBorder = own.arrangement === "border" || own.arrangement === "staggered";
  const given: Stand = asLaidOut && !onBorder ? { ...own, arcs: "full" } : own;
  const heads = bedHeads(given, asLaidOut ? undefined : typed);
  const measured = measuredOf(cells, heads);
  const radius = numberOf(cells, "Head_Throw_m");
  const homeless = measuredElsewhere(cells, heads);
  if (homeless) return { heads, measured, lack: homeless };
  if (!radius) return { heads, measured, lack: cells("Head_Throw_m") ? NO_THROW : EARLIER };
  return { heads, measured, lack: "", input: { ...given, radius, ...(!asLaidOut && { heads: typed }) } };
}
