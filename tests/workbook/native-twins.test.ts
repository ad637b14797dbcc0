import { Workbook } from "@cj-tech-master/excelts";
import { beforeAll, describe, expect, it } from "vitest";
import { caughtDepth } from "../../src/core/application/depth";
import { caughtRate } from "../../src/core/application/rate";
import { runTime } from "../../src/core/application/run-time";
import { annualWater } from "../../src/core/cost/water";
import { mean } from "../../src/core/readings";
import { christiansen } from "../../src/core/uniformity/christiansen";
import { distributionUniformity } from "../../src/core/uniformity/distribution";

import { multiplier } from "../../src/core/uniformity/multiplier";
import {
  quarterSchedulingCoefficient,
  schedulingCoefficient,
  shareSchedulingCoefficient,
} from "../../src/core/uniformity/scheduling-coefficient";
import { converted } from "../support/libreoffice";
import { randomNumbers } from "../support/random";

const MINUTES = 15;
const MOUTH = 104;
const DEPTH = 9.4;
const SHARE = 0.9;
const AREA = 180;
const DAYS = 300;
const PLANTED_WRONG = -1;

const random = randomNumbers(11);
const beds = [2, 3, 4, 5, 6, 7, 10, 16, 25, 30, 47, 48, 100, 250].map((cans) =>
  Array.from({ length: cans }, () => 5 + Math.floor(500 * random()) / 10),
);

const quarter = (r: string) => `MAX(1,ROUND(COUNT(${r})/4,0))`;
const lowest = (r: string) => `SUMPRODUCT(SMALL(${r},ROW($A$1:INDEX($A:$A,${quarter(r)}))))/${quarter(r)}`;
const rate = (r: string) => `AVERAGE(${r})*1000/(PI()*${MOUTH}^2/4)*60/${MINUTES}`;

interface Twin {
  name: string;
  formula: (range: string) => string;
  own: (readings: number[]) => number;
}

const ownRate = (readings: number[]) => caughtRate(caughtDepth(mean(readings, 1), MOUTH), MINUTES);
const TWINS: Twin[] = [
  { name: "CU", formula: (r) => `100*(1-AVEDEV(${r})/AVERAGE(${r}))`, own: christiansen },
  { name: "DU", formula: (r) => `100*${lowest(r)}/AVERAGE(${r})`, own: distributionUniformity },
  { name: "SC, driest can", formula: (r) => `AVERAGE(${r})/MIN(${r})`, own: schedulingCoefficient },
  { name: "SC, low quarter", formula: (r) => `AVERAGE(${r})/(${lowest(r)})`, own: quarterSchedulingCoefficient },
  {
    name: "SC for a share",
    formula: (r) => `AVERAGE(${r})/LARGE(${r},MAX(1,ROUNDUP(${SHARE}*COUNT(${r})-1E-9,0)))`,
    own: (readings) => shareSchedulingCoefficient(readings, SHARE),
  },
  { name: "MAR", formula: rate, own: ownRate },
  {
    name: "run time",
    formula: (r) => `60*${DEPTH}/(${rate(r)})*AVERAGE(${r})/MIN(${r})`,
    own: (readings) => runTime(DEPTH, ownRate(readings), multiplier(readings, "can")),
  },
  {
    name: "water a year",
    formula: (r) => `${AREA}*${DEPTH}*${DAYS}*AVERAGE(${r})/MIN(${r})/1000`,
    own: (readings) => annualWater(AREA, DEPTH, DAYS, multiplier(readings, "can"), 1),
  },
];
const NEEDS_FOUR = new Set(["DU", "SC, low quarter"]);

/** Writes the readings and the native formulas with wrong cached values, and lets LibreOffice recalculate them on loading. */
async function recalculated(): Promise<Workbook> {
  const book = new Workbook();
  beds.forEach((readings, i) => {
    const sheet = book.addWorksheet(`Bed ${i + 1}`);
    readings.forEach((reading, row) => {
      sheet.getCell(row + 1, 2).value = reading;
    });
    const range = `$B$1:$B$${readings.length}`;
    TWINS.forEach(({ formula }, row) => {
      sheet.getCell(row + 1, 4).value = { formula: formula(range), result: PLANTED_WRONG };
    });
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

  it.each(TWINS)("$name", ({ name, own }) => {
    beds.forEach((readings, i) => {
      if (NEEDS_FOUR.has(name) && readings.length < 4) return;
      const row = TWINS.findIndex((twin) => twin.name === name) + 1;
      const theirs = book.getWorksheet(`Bed ${i + 1}`)?.getCell(row, 4).result as number;
      const ours = own(readings);
      expect(Math.abs(theirs - ours) / ours, `bed ${i + 1}: LibreOffice ${theirs}, core ${ours}`).toBeLessThan(1e-9);
    });
  });
});
