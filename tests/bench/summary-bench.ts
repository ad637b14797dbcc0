import * as excel from "@formulajs/formulajs";
import { max, mean, min, quickselect } from "d3-array";
import * as statistics from "simple-statistics";
import { summary } from "../../src/core/summary/summary";
import { readings } from "../../src/functions/cells";
import { inventedRange } from "./beds";
import { type Contender, measured, printed } from "./table";

const quarter = (n: number) => Math.max(1, Math.round(n / 4));

/** The fastest that any reading of the cells can be: once into a Float64Array, then three plain sums. */
function limit(range: number[][]): number {
  const columns = range[0]?.length ?? 0;
  const cells = new Float64Array(range.length * columns);
  let n = 0;
  for (const row of range) for (const cell of row) cells[n++] = cell;
  let sum = 0;
  for (let pass = 0; pass < 3; pass++) for (let i = 0; i < cells.length; i++) sum += cells[i] as number;
  return sum;
}

function formulajs(range: number[][]): number[] {
  const average = excel.AVERAGE(range) as number;
  const lowest = excel.AVERAGEIF(range, `<=${excel.SMALL(range, quarter(excel.COUNT(range) as number))}`) as number;
  return [
    average,
    100 * (1 - (excel.AVEDEV(range) as number) / average),
    (100 * lowest) / average,
    average / (excel.MIN(range) as number),
  ];
}

function simpleStatistics(range: number[][]): number[] {
  const x = range.flat();
  const m = statistics.mean(x);
  const k = quarter(x.length);
  const deviation = statistics.mean(x.map((reading) => Math.abs(reading - m)));
  const lowest = statistics.min(x);
  statistics.quickselect(x, k - 1);
  return [m, 100 * (1 - deviation / m), (100 * statistics.mean(x.slice(0, k))) / m, m / lowest];
}

function d3(range: number[][]): number[] {
  const x = Float64Array.from(range.flat());
  const m = mean(x) as number;
  const k = quarter(x.length);
  const deviation = mean(x, (reading) => Math.abs(reading - m)) as number;
  const lowest = min(x) as number;
  quickselect(x, k - 1);
  return [m, 100 * (1 - deviation / m), (100 * (mean(x.subarray(0, k)) as number)) / m, m / lowest, max(x) as number];
}

export async function summaryBench(): Promise<void> {
  for (const side of [1000, 100]) {
    const range = inventedRange(side, side, 7);
    const contenders: Contender[] = [
      { name: "Canfall", run: () => summary(readings("readings", range).values, 1, undefined, { intervals: false }) },
      { name: "limit: cells read once, summed three times", run: () => limit(range) },
      { name: "d3-array", run: () => d3(range) },
      { name: "simple-statistics", run: () => simpleStatistics(range) },
      { name: "@formulajs/formulajs", run: () => formulajs(range) },
    ];
    const count = (side * side).toLocaleString("en");
    printed(`All indices of SUMMARY, no intervals, ${count} readings`, await measured(contenders, 15), "Canfall");
  }
}
