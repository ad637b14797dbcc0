import * as application from "../../src/functions/application";
import * as areas from "../../src/functions/areas";
import * as bed from "../../src/functions/bed";
import * as demand from "../../src/functions/demand";
import * as layout from "../../src/functions/layout";
import { summary } from "../../src/functions/summary";
import * as uniformity from "../../src/functions/uniformity";
import * as water from "../../src/functions/water";

export interface Call {
  id: string;
  run: (...values: unknown[]) => unknown;
  /** Names of the arguments in their order; those that may be left out and have another rule where they may not, in brackets. */
  names: string[];
  /** Arguments that give an answer; readings and a grid are a range of 20 catches from 8 to 12. Areas are left out. */
  good: unknown[];
}

/** Twenty catches in a column. */
export const COLUMN = [8, 9, 10, 11, 12, 8, 9, 10, 11, 12, 8, 9, 10, 11, 12, 8, 9, 10, 11, 12].map((x) => [x]);

/** The same catches as a bed of four rows. */
export const BED = [0, 5, 10, 15].map((start) => COLUMN.slice(start, start + 5).flat());

function call(id: string, run: unknown, names: string, ...rest: unknown[]): Call {
  const first = names.startsWith("readings") ? [COLUMN] : names.startsWith("grid") ? [BED] : [];
  return { id, run: run as Call["run"], names: names.split(" "), good: [...first, ...rest] };
}

/** Every worksheet function with arguments that give an answer. */
export const CALLS = [
  call("CU.CHRISTIANSEN", uniformity.cuChristiansen, "readings areas"),
  call("DU.QUARTER", uniformity.duQuarter, "readings areas"),
  call("SC.CAN", uniformity.scCan, "readings areas"),
  call("SC.QUARTER", uniformity.scQuarter, "readings areas"),
  call("SC.SHARE", uniformity.scShare, "readings share areas", 0.9),
  call("SC.PATCH", uniformity.scPatch, "grid share", 0.1),
  call("INTERVAL", uniformity.interval, "readings index level areas", "DU.QUARTER", 0.9),
  call("DEPTH.CAUGHT", application.depthCaught, "readings mouth", 100),
  call("RATE.CAUGHT", application.rateCaught, "readings minutes mouth", 20, 100),
  call("MAR", application.mar, "readings minutes mouth areas", 20, 100),
  call("RATE.HEAD", application.rateHead, "flow spacing row_spacing", 480, 8, 6),
  call("RUNTIME", application.runtime, "readings minutes mouth depth basis areas", 20, 100, 6, "can"),
  call("WATER.ANNUAL", water.waterAnnual, "readings area depth days basis in_bed_share areas", 180, 6, 300, "can", 0.8),
  call(
    "COST.ANNUAL",
    water.costAnnual,
    "readings area depth days price basis in_bed_share areas",
    180,
    6,
    300,
    2,
    "can",
    1,
  ),
  call("SUMMARY", summary, "readings minutes mouth limits areas", 20, 100, [["CU (Christiansen)", ">= 85"]]),
  call("CAN.AREAS", areas.canAreas, "across along width length", [[0.5, 1.5]], [[1], [2]], 10, 10),
  call(
    "BED.CAUSES",
    bed.bedCauses,
    "grid across along width length spacing radius arrangement arcs [row_spacing] heads",
    ...[[[0.3, 0.7, 1.1, 1.5, 1.9]], [[0.3], [0.8], [1.3], [1.8]], 2, 2, 2, 2.5, "border", "full", 2],
    [
      [0, 0],
      [2, 2],
    ],
  ),
  call(
    "BED.INTERVAL",
    bed.bedInterval,
    "grid across along width length spacing radius arrangement index arcs [row_spacing] heads level",
    ...[[[0.3, 0.7, 1.1, 1.5, 1.9]], [[0.3], [0.8], [1.3], [1.8]], 2, 2, 2, 2.5, "border", "MEAN", "full", 2],
    [
      [0, 0],
      [2, 2],
    ],
    0.9,
  ),
  call("POT.DEPTH", demand.potDepth, "volume top capture", 400, 190, 1.5),
  call("ETO.HARGREAVES", demand.etoHargreaves, "tmin tmax latitude day", 14.8, 26.6, 45.7, 196),
  call(
    "ETO.PENMAN",
    demand.etoPenman,
    "tmin tmax rhmin rhmax wind sunshine latitude elevation day soil_heat",
    ...[12.3, 21.5, 63, 84, 2.1, 9.25, 50.8, 100, 187, 0.3],
  ),
  call(
    "LAYOUT.COVERAGE",
    layout.layoutCoverage,
    "width length spacing radius flow arrangement arcs profile [cell] [row_spacing]",
    ...[4, 6, 4, 4, 400, "border", "full", [["triangular"]], 0.5, 4],
  ),
  call(
    "LAYOUT.COMPARE",
    layout.layoutCompare,
    "width length spacing radius flow profile [cell]",
    ...[4, 6, 4, 4, 400, [["triangular"]], 0.5],
  ),
];

/** The functions that take a range of catches. */
export const RANGE_CALLS = CALLS.filter(({ names }) => names[0] === "readings" || names[0] === "grid");

/** A call with one argument exchanged. */
export function exchanged(call: Call, at: number, value: unknown): unknown {
  return call.run(...call.names.map((_, i) => (i === at ? value : call.good[i])));
}

/** The functions that take the area of each can. */
export const AREA_CALLS = CALLS.filter(({ names }) => names.includes("areas"));

/** A call with other readings and the area of each. */
export function byArea(call: Call, readings: unknown, areas: unknown): unknown {
  const given: Record<string, unknown> = { readings, areas };
  return call.run(...call.names.map((name, i) => (name in given ? given[name] : call.good[i])));
}
