import { causes } from "../../src/core/bed/causes/causes";
import { wholeBed } from "../../src/core/bed/interval/whole-bed";
import { readBed } from "../../src/core/bed/read-bed";
import { normalDeviate, randomNumbers } from "../support/random";
import { measured } from "./table";

const ROUNDS = 7;
const random = randomNumbers(7);
random();

/** A bed of 60 cans and 40 heads: cones about the heads, rate 1 - r/throw, read with an error of 6 %. */
function largeBed() {
  const [width, length, throwM] = [12, 27, 4];
  const across = Array.from({ length: 6 }, (_, i) => 0.3 + (i * (width - 0.6)) / 5);
  const along = Array.from({ length: 10 }, (_, i) => 0.3 + (i * (length - 0.6)) / 9);
  const heads = Array.from({ length: 40 }, (_, i) => ({ x: 4 * (i % 4), y: 3 * Math.floor(i / 4) }));
  const grid = along.map((y) =>
    across.map((x) => {
      const rate = heads.reduce((sum, head) => sum + Math.max(0, 1 - Math.hypot(head.x - x, head.y - y) / throwM), 0);
      return 20 * rate * (1 + 0.06 * normalDeviate(random));
    }),
  );
  const stand = {
    width,
    length,
    spacing: 4,
    rowSpacing: 3,
    radius: throwM,
    arrangement: "border",
    arcs: "full",
  } as const;
  return readBed({ grid, across, along, ...stand, heads });
}

export async function bedBench(): Promise<void> {
  const bed = largeBed();
  const limits = { "BED.CAUSES": 500, "BED.INTERVAL": 1500 };
  const runs = { "BED.CAUSES": () => causes(bed), "BED.INTERVAL": () => wholeBed(bed) };
  console.log(`\nOne bed of ${bed.cans.length} cans and ${bed.heads.length} heads`);
  console.log("| function | median ms | at most |\n| --- | --- | --- |");
  for (const name of ["BED.CAUSES", "BED.INTERVAL"] as const) {
    const [row] = await measured([{ name, run: runs[name] }], ROUNDS);
    console.log(`| ${name} | ${row!.milliseconds?.toFixed(0) ?? row!.failure} | ${limits[name]} |`);
  }
}
