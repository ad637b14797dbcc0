import { positive } from "../core/checks";
import { InputError } from "../core/errors";
import { compare } from "../core/layout/compare";
import { coverage } from "../core/layout/coverage";
import { parseArcs, parseArrangement } from "../core/layout/heads";
import { measuredProfile, namedProfile, type Profile, parseShape } from "../core/layout/profile";
import { answer } from "./answer";
import { word } from "./arguments";
import { cellsOf, placeOf, plain } from "./cells";

const DEFAULT_CELL_M = 0.25;

const HEADER = [
  "layout",
  "heads",
  "flow L/h",
  "MAR mm/h",
  "CU %",
  "DU low quarter %",
  "SC driest cell",
  "SC low quarter",
  "in bed %",
  "water factor, driest",
  "water factor, low quarter",
];

/** A length in metres; `otherwise` where nothing is said. */
function metres(parameter: string, value: unknown, otherwise?: number): number {
  const given = plain(value);
  return given === null && otherwise !== undefined ? otherwise : positive(parameter, given, "m");
}

function numberAt(rows: unknown[][], row: number, column: number): number {
  const value = plain(rows[row]?.[column]);
  if (typeof value === "number" && Number.isFinite(value)) return value;
  throw new InputError("profile", "hold numbers", value, { place: placeOf(row, column) });
}

/** The profile of a head: a word, or a range of two columns, distance and rate; triangular where nothing is said. */
function profileOf(range: unknown, radius: unknown, flow: unknown): Profile {
  const throwOfHead = metres("radius", radius);
  const litres = positive("flow", plain(flow), "L/h");
  if (plain(range) === null) return namedProfile("triangular", throwOfHead, litres);
  const rows = cellsOf("profile", range);
  const columns = rows[0]?.length;
  if (rows.length === 1 && columns === 1) {
    return namedProfile(parseShape(word(plain(rows[0]?.[0]) ?? "triangular")), throwOfHead, litres);
  }
  if (columns !== 2) throw new InputError("profile", "have 2 columns, distance and rate", columns);
  const places = rows.map((_, row) => row);
  return measuredProfile(
    places.map((row) => numberAt(rows, row, 0)),
    places.map((row) => numberAt(rows, row, 1)),
    litres,
  );
}

/**
 * Application rate over a bed [mm/h], computed from the heads of a layout without wind: rows along the length, columns across the width.
 * @customfunction LAYOUT.COVERAGE
 * @helpurl https://localhost:3000/help.html#layout-coverage
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @param spacing Distance between heads across the width [m], more than 0; a gap comes out at most 5 % wider
 * @param radius Throw of a head [m], more than 0; the last distance counts instead where the profile is measured
 * @param flow Flow of a head that throws a full circle [L/h], more than 0
 * @param arrangement Where heads are: "border", "inset", "centre" or "staggered" (as border, every second row shifted by half a gap)
 * @param [arcs] What border heads throw: "full" (left out), "matched" or "unmatched"
 * @param [profile] Rate by distance: "triangular" (left out), "uniform", "ring", or two columns, distance from 0 upwards [m] and rate
 * @param [cell] Side of a cell [m], more than 0; left out: 0.25
 * @param [row_spacing] Distance between heads along the length [m], more than 0; left out: as spacing
 * @returns Rates [mm/h]
 */
export function layoutCoverage(
  width: unknown,
  length: unknown,
  spacing: unknown,
  radius: unknown,
  flow: unknown,
  arrangement: unknown,
  arcs?: unknown,
  profile?: unknown[][],
  cell?: unknown,
  row_spacing?: unknown,
): number[][] {
  return answer(() => {
    const across = metres("spacing", spacing);
    const { values, rows, columns } = coverage({
      width: metres("width", width),
      length: metres("length", length),
      spacing: across,
      rowSpacing: metres("row_spacing", row_spacing, across),
      arrangement: parseArrangement(word(plain(arrangement))),
      arcs: parseArcs(word(plain(arcs) ?? "full")),
      profile: profileOf(profile, radius, flow),
      cell: metres("cell", cell, DEFAULT_CELL_M),
    }).rates;
    return Array.from({ length: rows }, (_, row) => Array.from(values.subarray(row * columns, (row + 1) * columns)));
  });
}

/**
 * Table of five layouts of the same heads over a bed, computed without wind, with rates [mm/h], evenness and water for each.
 * @customfunction LAYOUT.COMPARE
 * @helpurl https://localhost:3000/help.html#layout-compare
 * @param width Width of the bed [m], more than 0
 * @param length Length of the bed [m], more than 0
 * @param spacing Distance between heads [m], more than 0; a gap comes out at most 5 % wider
 * @param radius Throw of a head [m], more than 0; the last distance counts instead where the profile is measured
 * @param flow Flow of a head that throws a full circle [L/h], more than 0
 * @param [profile] Rate by distance: "triangular" (left out), "uniform", "ring", or two columns, distance from 0 upwards [m] and rate
 * @param [cell] Side of a cell [m], more than 0; left out: 0.25
 * @returns Table with a header row
 */
export function layoutCompare(
  width: unknown,
  length: unknown,
  spacing: unknown,
  radius: unknown,
  flow: unknown,
  profile?: unknown[][],
  cell?: unknown,
): unknown[][] {
  return answer(() => {
    const between = metres("spacing", spacing);
    const compared = compare({
      width: metres("width", width),
      length: metres("length", length),
      spacing: between,
      rowSpacing: between,
      profile: profileOf(profile, radius, flow),
      cell: metres("cell", cell, DEFAULT_CELL_M),
    });
    const rows = compared.map((of) => [
      of.layout,
      of.heads,
      of.flow,
      of.meanRate,
      of.christiansen,
      of.distribution,
      of.driestCoefficient,
      of.quarterCoefficient,
      100 * of.inBedShare,
      of.driestWater,
      of.quarterWater,
    ]);
    return [HEADER, ...rows];
  });
}
