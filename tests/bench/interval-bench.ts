import * as statistics from "simple-statistics";
import { interval } from "../../src/core/uniformity/interval";
import { inventedRange } from "./beds";
import { type Contender, measured, printed } from "./table";

const RESAMPLES = 2000;
const LEVEL = 0.9;

const meanOf = statistics.mean;
const christiansenOf = (x: number[]) => {
  const m = statistics.mean(x);
  return 100 * (1 - statistics.mean(x.map((catched) => Math.abs(catched - m))) / m);
};
const lowQuarterOf = (x: number[]) => {
  const k = Math.max(1, Math.round(x.length / 4));
  const sorted = [...x].sort((a, b) => a - b);
  return (100 * statistics.mean(sorted.slice(0, k))) / statistics.mean(x);
};

/** The plain percentile bootstrap, as a person composes it from the library. */
function plainBootstrap(readings: number[], statistic: (x: number[]) => number): [number, number] {
  const replicates = Array.from({ length: RESAMPLES }, () =>
    statistic(statistics.sampleWithReplacement(readings, readings.length)),
  );
  return [
    statistics.quantile(replicates, (1 - LEVEL) / 2) as number,
    statistics.quantile(replicates, (1 + LEVEL) / 2) as number,
  ];
}

export async function intervalBench(): Promise<void> {
  const readings = inventedRange(1, 100, 7)[0] as number[];
  const cases = [
    { index: "MEAN", statistic: meanOf },
    { index: "CU.CHRISTIANSEN", statistic: christiansenOf },
    { index: "DU.QUARTER", statistic: lowQuarterOf },
  ] as const;
  for (const { index, statistic } of cases) {
    const contenders: Contender[] = [
      { name: "Canfall", run: () => interval(readings, index, LEVEL) },
      { name: "simple-statistics, plain bootstrap", run: () => plainBootstrap(readings, statistic) },
    ];
    printed(`INTERVAL of ${index}, 100 readings, 2,000 resamples`, await measured(contenders, 200), "Canfall");
  }
}
