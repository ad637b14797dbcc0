import { distributionUniformity } from "../../src/core/uniformity/distribution";
import { interval } from "../../src/core/uniformity/interval";
import { normalDeviate, randomNumbers } from "../support/random";

const BEDS = 2000;
const SIDE = 48;
const SPREAD = 0.2;
/** Rows and columns of cans over the whole bed; SIDE is a multiple of each. */
const CAN_GRIDS = [
  [4, 4],
  [4, 6],
  [6, 8],
] as const;

/** Sums over 2 reach + 1 neighbouring places along one direction, round the bed's end; the spread stays that of one place. */
function smoothed(field: Float64Array, step: number, reach: number): Float64Array {
  const along = (i: number, shift: number) => {
    const place = Math.floor(i / step) % SIDE;
    return i + (((place + shift + SIDE) % SIDE) - place) * step;
  };
  return field.map((_, i) => {
    let sum = 0;
    for (let shift = -reach; shift <= reach; shift++) sum += field[along(i, shift)] as number;
    return sum / Math.sqrt(2 * reach + 1);
  });
}

/** A bed of SIDE x SIDE places, mean 1, CV 20 %; reach 0: every place on its own, more: neighbours alike. */
function bed(random: () => number, reach: number): Float64Array {
  const field = Float64Array.from({ length: SIDE * SIDE }, () => normalDeviate(random));
  return smoothed(smoothed(field, 1, reach), SIDE, reach).map((deviate) => Math.max(0.01, 1 + SPREAD * deviate));
}

function gridCans(rates: Float64Array, rows: number, columns: number): number[] {
  const [down, across] = [SIDE / rows, SIDE / columns];
  return Array.from({ length: rows * columns }, (_, can) => {
    const row = Math.floor((Math.floor(can / columns) + 0.5) * down);
    const column = Math.floor(((can % columns) + 0.5) * across);
    return rates[row * SIDE + column] as number;
  });
}

function covered(rows: number, columns: number, reach: number): number {
  const random = randomNumbers(1000 * rows + 10 * columns + reach);
  let inside = 0;
  for (let i = 0; i < BEDS; i++) {
    const rates = bed(random, reach);
    const [low, high] = interval(gridCans(rates, rows, columns), "DU.QUARTER", 0.9);
    const truth = distributionUniformity(rates);
    if (low <= truth && truth <= high) inside++;
  }
  return inside / BEDS;
}

/** How often INTERVAL holds the true DU of random fields that no head made, by cans and how alike neighbours are. */
export function printFields(): void {
  console.log(
    `\nRandom fields: share of ${BEDS} simulated beds whose true DU (low quarter) is inside the 90 % interval of INTERVAL`,
  );
  console.log("| cans | independent | neighbours alike over one can spacing | over two |\n| --- | --- | --- | --- |");
  for (const [rows, columns] of CAN_GRIDS) {
    const spacing = SIDE / columns;
    const shares = [0, spacing / 2, spacing].map((reach) => `${(100 * covered(rows, columns, reach)).toFixed(1)} %`);
    console.log(`| ${rows * columns} | ${shares.join(" | ")} |`);
  }
}
