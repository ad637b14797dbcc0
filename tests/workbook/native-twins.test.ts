import { Workbook } from "@cj-tech-master/excelts";
import { beforeAll, describe, expect, it } from "vitest";
import { caughtDepth } from "../../src/core/application/depth";
import { caughtRate, headRate } from "../../src/core/application/rate";
import { runTime } from "../../src/core/application/run-time";
import { annualCost } from "../../src/core/cost/price";
import { annualWater } from "../../src/core/cost/water";
import { hargreaves } from "../../src/core/demand/hargreaves";
import { potDepth } from "../../src/core/demand/pot-depth";
import { mean } from "../../src/core/readings";
import { christiansen } from "../../src/core/uniformity/christiansen";
import { distributionUniformity } from "../../src/core/uniformity/distribution";
import { type Basis, multiplier } from "../../src/core/uniformity/multiplier";
import {
  quarterSchedulingCoefficient,
  schedulingCoefficient,
  shareSchedulingCoefficient,
} from "../../src/core/uniformity/scheduling-coefficient";
import { soundReadings, twin } from "../../src/workbook/form/twins";
import { converted } from "../support/libreoffice";
import { randomNumbers } from "../support/random";

const PLANTED_WRONG = -1;

const random = randomNumbers(11);
const beds = [2, 3, 4, 5, 6, 7, 10, 16, 25, 30, 47, 48, 100, 250].map((cans) =>
  Array.from({ length: cans }, () => 5 + Math.floor(500 * random()) / 10),
);

const ownRate = (readings: number[]) => caughtRate(caughtDepth(mean(readings, 1), 104), 15);
const ownTime = (basis: Basis) => (readings: number[]) => runTime(9.4, ownRate(readings), multiplier(readings, basis));
const ownWater = (basis: Basis, share: number) => (readings: number[]) =>
  annualWater(180, 9.4, 300, multiplier(readings, basis), share);

interface Case {
  name: string;
  /** The arguments after the range; the cells F1 to F3 hold 104, "mm" and 15. */
  given: string[];
  own: (readings: number[]) => number;
}

const CASES: Case[] = [
  { name: "CU.CHRISTIANSEN", given: [], own: christiansen },
  { name: "DU.QUARTER", given: [], own: distributionUniformity },
  { name: "SC.CAN", given: [], own: schedulingCoefficient },
  { name: "SC.QUARTER", given: [], own: quarterSchedulingCoefficient },
  { name: "SC.SHARE", given: ["0.9"], own: (readings) => shareSchedulingCoefficient(readings, 0.9) },
  { name: "SC.SHARE", given: ["0.4+0.2"], own: (readings) => shareSchedulingCoefficient(readings, 0.6) },
  { name: "MAR", given: ["15", "104"], own: ownRate },
  { name: "MAR", given: ["10+5", "$F$1"], own: ownRate },
  { name: "MAR", given: ["$F$3", '" MM"'], own: (readings) => caughtRate(mean(readings, 1), 15) },
  { name: "MAR", given: ["$F$3", "$F$2"], own: (readings) => caughtRate(mean(readings, 1), 15) },
  { name: "RUNTIME", given: ["15", "104", "9.4"], own: ownTime("can") },
  { name: "RUNTIME", given: ["15", "104", "9.4", '"Can"'], own: ownTime("can") },
  { name: "RUNTIME", given: ["15", "$F$1", "9+0.4", '"quarter"'], own: ownTime("quarter") },
  { name: "RUNTIME", given: ["15", "104", "9.4", "0.75"], own: ownTime(0.75) },
  { name: "WATER.ANNUAL", given: ["180", "9.4", "300"], own: ownWater("can", 1) },
  { name: "WATER.ANNUAL", given: ["180", "9.4", "300", "", "0.5+0.3"], own: ownWater("can", 0.8) },
  { name: "WATER.ANNUAL", given: ["180", "9.4", "300", '"quarter"', "0.8"], own: ownWater("quarter", 0.8) },
  {
    name: "COST.ANNUAL",
    given: ["180", "9.4", "300", "1+1.5", "90%", "0.8"],
    own: (readings) => annualCost(ownWater(0.9, 0.8)(readings), 2.5),
  },
];
/** Functions that take no range: the cell that is for a can is B1. */
const SINGLE: Case[] = [
  { name: "DEPTH.CAUGHT", given: ["$B$1", "104"], own: ([first]) => caughtDepth(first!, 104) },
  { name: "RATE.CAUGHT", given: ["$B$1", "15", "$F$1"], own: ([first]) => caughtRate(caughtDepth(first!, 104), 15) },
  { name: "RATE.HEAD", given: ["480", "4+4", "6"], own: () => headRate(480, 8, 6) },
  { name: "POT.DEPTH", given: ["400", "190"], own: () => potDepth(400, 190, 1) },
  { name: "POT.DEPTH", given: ["400", "100+90", "1.5"], own: () => potDepth(400, 190, 1.5) },
  { name: "ETO.HARGREAVES", given: ["14.8", "26.6", "45.72", "196"], own: () => hargreaves(14.8, 26.6, 45.72, 196) },
  { name: "ETO.HARGREAVES", given: ["14-2", "26.6", "-27.5", "20"], own: () => hargreaves(12, 26.6, -27.5, 20) },
];
const ALL = [...CASES, ...SINGLE];
const NEEDS_FOUR = new Set(["DU.QUARTER", "SC.QUARTER"]);
const needsFour = ({ name, given }: Case) => NEEDS_FOUR.has(name) || given.includes('"quarter"');

/** Writes the readings and the native formulas with wrong cached values, and lets LibreOffice recalculate them on loading. */
async function recalculated(): Promise<Workbook> {
  const book = new Workbook();
  beds.forEach((readings, i) => {
    const sheet = book.addWorksheet(`Bed ${i + 1}`);
    readings.forEach((reading, row) => {
      sheet.getCell(row + 1, 2).value = reading;
    });
    [104, "mm", 15].forEach((value, row) => {
      sheet.getCell(row + 1, 6).value = value;
    });
    const range = `$B$1:$B$${readings.length}`;
    ALL.forEach((one, row) => {
      const formula = twin(one.name, SINGLE.includes(one) ? one.given : [range, ...one.given])!;
      sheet.getCell(row + 1, 4).value = { formula, result: PLANTED_WRONG };
    });
  });
  const words = book.addWorksheet("Words");
  [7, "x", " X ", 0].forEach((value, row) => {
    words.getCell(row + 1, 2).value = value;
  });
  ["7", -1].forEach((value, row) => {
    words.getCell(row + 1, 3).value = value;
  });
  ["B1:B9", "C1:C1", "C2:C2", "B1:C4"].forEach((range, row) => {
    words.getCell(row + 1, 4).value = { formula: soundReadings(range), result: PLANTED_WRONG };
  });
  const [file] = await converted([new Uint8Array(await book.xlsx.writeBuffer())], "xlsx");
  const opened = new Workbook();
  await opened.xlsx.load(file!);
  return opened;
}

describe("LibreOffice, recalculating native formulas over the same readings, gives what core gives", () => {
  let book: Workbook;
  beforeAll(async () => {
    book = await recalculated();
  });

  it.each(ALL.map((one, row) => ({ ...one, row, title: `${one.name} ${one.given.join("; ")}` })))(
    "$title",
    ({ row, own }) => {
      beds.forEach((readings, i) => {
        if (needsFour(ALL[row]!) && readings.length < 4) return;
        const theirs = book.getWorksheet(`Bed ${i + 1}`)?.getCell(row + 1, 4).result as number;
        const ours = own(readings);
        expect(Math.abs(theirs - ours) / ours, `bed ${i + 1}: LibreOffice ${theirs}, core ${ours}`).toBeLessThan(1e-9);
      });
    },
  );

  it("tells readings from a number stored as text and from one under 0", () => {
    const sheet = book.getWorksheet("Words")!;
    expect([1, 2, 3, 4].map((row) => sheet.getCell(row, 4).result)).toEqual([true, false, false, false]);
  });
});

describe("a native twin", () => {
  it("is missing where the function has none", () => {
    const names = ["SC.PATCH", "INTERVAL", "SUMMARY", "LAYOUT.COVERAGE", "LAYOUT.COMPARE", "ETO.PENMAN", "constructor"];
    expect(names.map((name) => twin(name, ["A1:A9"]))).toEqual(names.map(() => null));
  });

  it("is missing where the basis is no known literal, since a cell might hold any of them", () => {
    for (const basis of ["A1", '"min"', "0.4", "1.1", "2/3"]) {
      expect(twin("RUNTIME", ["A1:A9", "15", "104", "9", basis]), basis).toBeNull();
      expect(twin("WATER.ANNUAL", ["A1:A9", "180", "9", "300", basis]), basis).toBeNull();
      expect(twin("COST.ANNUAL", ["A1:A9", "180", "9", "300", "2", basis]), basis).toBeNull();
    }
  });

  it("is missing where the mouth is a text other than mm", () => {
    expect(twin("MAR", ["A1:A9", "15", '"ml"'])).toBeNull();
    expect(twin("DEPTH.CAUGHT", ["A1", '"ml"'])).toBeNull();
  });
});
