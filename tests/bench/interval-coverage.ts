import { WHOLE_BED_INDICES } from "../../src/core/bed/interval/whole-bed";
import { METHODS, pooled, type Tally, tallied } from "./interval-beds";
import { printFields } from "./interval-fields";
import type { Case } from "./trial-beds/trial-bed";

/** None of the fit's settings was chosen on beds of these seeds. */
const FIRST_SEED = 7_000_000;
const BEDS = 300;
const FEWER_BEDS = 150;

interface Row {
  name: string;
  beds: number;
  given: Case;
}

const bothWays = (cans: number, beds: number): Row[] =>
  (["border", "inset"] as const).map((arrangement) => ({
    name: `${cans} cans, ${arrangement}`,
    beds,
    given: { arrangement, cans },
  }));

const ROWS: Row[] = [
  ...bothWays(40, BEDS),
  ...bothWays(60, BEDS),
  ...bothWays(24, FEWER_BEDS),
  { name: "40 cans, border, a head at 0", beds: FEWER_BEDS, given: { arrangement: "border", cans: 40, weak: 0 } },
  { name: "40 cans, border, a head at half", beds: FEWER_BEDS, given: { arrangement: "border", cans: 40, weak: 0.5 } },
  {
    name: "40 cans, border, strong wind",
    beds: FEWER_BEDS,
    given: { arrangement: "border", cans: 40, weather: { wind: [1.5, 2.5] } },
  },
  {
    name: "40 cans, part circles, matched",
    beds: FEWER_BEDS,
    given: { arrangement: "border", arcs: "matched", cans: 40 },
  },
];

function median(values: number[]): string {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted.length === 0 ? "-" : sorted[Math.floor(sorted.length / 2)]!.toFixed(1);
}

function cells(tally: Tally): string {
  const held = WHOLE_BED_INDICES.map((index) => ((100 * tally.held[index]) / tally.given).toFixed(0));
  const widths = WHOLE_BED_INDICES.map((index) => median(tally.widths[index]));
  return `${held.join("/")} | ${widths.join("/")}`;
}

function printRow(name: string, world: string, tallies: Tally[]): void {
  const [fit] = tallies as [Tally];
  console.log(
    `| ${name} | ${world} | ${((100 * fit.given) / fit.beds).toFixed(0)} | ${tallies.map(cells).join(" | ")} |`,
  );
}

/** Rows whose name starts with the first argument, with as many beds as the second says. */
const [only, few] = process.argv.slice(2);
console.log(
  "Beds of overlapping heads: 90 % intervals. Held: share of the given intervals with the true value of the whole bed",
);
console.log("inside [%]; width: median [% of the mean, CU points, DU points]. Each as MEAN/CU/DU.");
console.log(
  `| beds | made by | given by fit [%] | ${METHODS.map((method) => `${method}: held | width`).join(" | ")} |`,
);
console.log(`| --- | --- | --- |${" --- |".repeat(2 * METHODS.length)}`);
for (const { name, beds: usual, given } of ROWS.filter((row) => !only || row.name.startsWith(only))) {
  const beds = few ? Number(few) : usual;
  const [one, other] = [tallied("G1", given, beds, FIRST_SEED), tallied("G2", given, beds, FIRST_SEED)];
  printRow(
    `${name}, ${beds}`,
    "G1",
    METHODS.map((method) => one[method]),
  );
  printRow(
    "",
    "G2",
    METHODS.map((method) => other[method]),
  );
  printRow(
    "",
    "both",
    METHODS.map((method) => pooled(one[method], other[method])),
  );
}
if (!only) printFields();
