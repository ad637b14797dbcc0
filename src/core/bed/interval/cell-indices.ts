/** Indices of the whole of a bed, in the order of WHOLE_BED_INDICES. */
export type CellIndices = [mean: number, christiansen: number, distribution: number];

/**
 * Mean, CU and low-quarter DU of equal cells.
 *
 *     CU = 100 (1 - sum|x - m| / (n m))        DU = 100 q / m        q: mean of the driest quarter of the cells
 *
 * @param rates Rates at the cells, each 0 or more, a number of cells that divides by four; put into rising order
 * @returns Mean [unit of the rates], CU and DU [%]
 * @source Christiansen (1942); Merriam and Keller (1978)
 * @example cellIndices(Float64Array.of(12, 8, 10, 10)) // [10, 90, 80]
 */
export function cellIndices(rates: Float64Array): CellIndices {
  const sorted = rates.sort();
  const quarter = sorted.length / 4;
  const mean = sorted.reduce((sum, rate) => sum + rate, 0) / sorted.length;
  let low = 0;
  let below = 0;
  for (let i = 0; i < sorted.length && (i < quarter || sorted[i]! < mean); i += 1) {
    if (i < quarter) low += sorted[i]!;
    below += Math.max(0, mean - sorted[i]!);
  }
  return [mean, 100 * (1 - (2 * below) / (sorted.length * mean)), (100 * low) / quarter / mean];
}
