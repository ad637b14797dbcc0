import type { BedHead } from "../bed-heads";
import { nozzle } from "./evidence";
import { type Measured, meanTaken, taken } from "./measured";
import { directionName } from "./next-check";

/** A bucket or gauge under this part of the others is named with its head. */
const LOW_SHARE = 0.85;

interface Value {
  at: number;
  value: number;
}

const span = (values: readonly Value[], of: number) => {
  const shares = values.map(({ value }) => Math.round((100 * value) / of));
  return `${Math.min(...shares)} to ${Math.max(...shares)} % of their mean`;
};

/** What several heads gave: the lowest with its head where it is low, else how far apart they are. */
function compared(what: string, values: readonly Value[], heads: readonly BedHead[]): string {
  if (values.length === 1) return `${what} at head ${heads[values[0]!.at]!.number} alone: nothing to compare it with`;
  const lowest = values.reduce((low, one) => (one.value < low.value ? one : low));
  const others = values.filter((one) => one !== lowest);
  const mean = others.reduce((sum, { value }) => sum + value, 0) / others.length;
  if (lowest.value < LOW_SHARE * mean) {
    const share = Math.round((100 * lowest.value) / mean);
    return `${what} at head ${heads[lowest.at]!.number}: ${share} % of the others`;
  }
  const all = values.reduce((sum, { value }) => sum + value, 0) / values.length;
  return `${what} at ${values.length} heads: ${all > 0 ? span(values, all) : "all 0"}`;
}

/**
 * What was measured at the heads and used for the verdict, in words.
 *
 * @param heads Heads of the bed
 * @param measured What was measured
 * @returns One line each for bucket, gauge, wind and supply, as far as they were measured
 */
export function measuredWords(heads: readonly BedHead[], measured: Measured): string[] {
  const { flows, pressures, maker, wind, supply } = measured;
  const buckets = taken(flows).map(({ at, value }) => ({ at, value: value / nozzle(heads[at]!) }));
  const gauges = taken(pressures);
  const pressure = meanTaken(pressures);
  const flow = meanTaken(buckets.map(({ value }) => value));
  const percent = (part: number) => `${Math.round(100 * part)} % of the maker's`;
  return [
    ...(buckets.length > 0 && (buckets.length > 1 || maker)
      ? [
          buckets.length > 1
            ? compared("bucket", buckets, heads)
            : `bucket at head ${heads[buckets[0]!.at]!.number}: ${percent(flow! / maker!.flow)}`,
        ]
      : []),
    ...(gauges.length > 1 ? [compared("pressure", gauges, heads)] : []),
    ...(maker && pressure !== undefined ? [`mean pressure: ${percent(pressure / maker.pressure)}`] : []),
    ...(wind
      ? [`mean wind: ${wind.speed.toFixed(1)} m/s${wind.towards ? `, towards the ${directionName(wind.towards)}` : ""}`]
      : []),
    ...(supply ? [`supply: ${supply} side`] : []),
  ];
}
