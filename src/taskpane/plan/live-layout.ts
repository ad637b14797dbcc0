import type { Input } from "../../cells/cell";
import type { Host } from "../../hosts/host";
import type { Act } from "../workbook/act";
import { newSheet } from "../workbook/new-sheet";
import { freeName } from "./cans/free-name";
import type { LayoutEntries } from "./layout-entries";
import { planOf } from "./layout-plan";

const SHEET = "Layout";
const WIDTH = 6;
/** First row of the measured profile, in columns E and F. */
const PROFILE_ROW = 4;
const FACTS_END = 14;
const COMPARE_ROWS = 6;

/** The rows of a sheet that computes this layout by functions, so that a changed size changes all below. */
export function layoutSheet(entries: LayoutEntries): Input[][] {
  const { width, length, spacing, rowSpacing, arrangement, arcs, profile, cell } = planOf(entries);
  const points =
    entries.shape === "measured"
      ? Array.from(profile.distances, (distance, index): Input[] => [distance, profile.rates[index]!])
      : [];
  const measured = points.length > 0;
  const shape = measured ? `E${PROFILE_ROW}:F${PROFILE_ROW - 1 + points.length}` : "B12";
  const facts: Input[][] = [
    ["Layout, computed without wind: change a value in column B"],
    [],
    ["Quantity", "Value", "Unit", "", ...(measured ? ["Distance [m]", "Rate [mm/h]"] : [])],
    ["Bed width", width, "m"],
    ["Bed length", length, "m"],
    ["Head spacing across", spacing, "m"],
    ["Head spacing along", rowSpacing, "m"],
    ["Throw", profile.distances.at(-1)!, "m"],
    ["Flow of a full circle", profile.flow, "L/h"],
    ["Heads are", arrangement, "border, inset, centre, staggered"],
    ["Arcs", arcs, "full, matched, unmatched"],
    ["Rate against distance", measured ? "as measured, columns E and F" : entries.shape],
    ["Grid of the calculation", cell, "m"],
  ];
  const compareRow = Math.max(FACTS_END, PROFILE_ROW + points.length) + 1;
  const coverageRow = compareRow + COMPARE_ROWS + 3;
  const rows = Array.from({ length: coverageRow }, (_, index): Input[] => {
    const row = [...(facts[index] ?? [])];
    while (row.length < WIDTH) row.push("");
    return row;
  });
  points.forEach((point, index) => {
    rows[PROFILE_ROW - 1 + index]!.splice(4, 2, ...point);
  });
  rows[compareRow - 2]![0] = "Five usual layouts with these heads, same spacing along and across";
  rows[compareRow - 1]![0] = `=CANFALL.LAYOUT.COMPARE(B4,B5,B6,B8,B9,${shape},B13)`;
  rows[coverageRow - 2]![0] = "Rate in the bed [mm/h], rows along its length";
  rows[coverageRow - 1]![0] = `=CANFALL.LAYOUT.COVERAGE(B4,B5,B6,B8,B9,B10,B11,${shape},B13,B7)`;
  return rows;
}

/** Adds a sheet with the layout as live functions. */
export async function addLayoutSheet(host: Host, entries: LayoutEntries): Promise<Act> {
  const rows = layoutSheet(entries);
  const name = await freeName(host, SHEET);
  const area = { sheet: name, address: `A1:F${rows.length}` };
  await host.addSheet(name);
  await host.write(area, rows);
  await host.select({ sheet: name, address: "A1" });
  return newSheet(host, name, area.address, JSON.stringify(await host.inputs(area)));
}
