import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { missedChanges } from "../share/missed-changes";
import { converted } from "../support/libreoffice";
import { randomNumbers } from "../support/random";
import { calculatedAudits } from "../support/templates";

const AUDITS = 100;
const BATCH = 20;
const CHANGED = 5;
const CHANGES = 500;
const random = randomNumbers(100);
const whole = (least: number, most: number) => least + Math.floor((most - least + 1) * random());
const pick = <T>(...of: T[]): T => of[whole(0, of.length - 1)]!;

/** Places along one side of a bed, ascending, with one decimal. */
function places(count: number, side: number): number[] {
  return Array.from({ length: count }, (_, i) => Math.round((10 * side * (i + 0.2 + 0.6 * random())) / count) / 10);
}

function audit() {
  const [rows, columns] = [whole(2, 12), whole(2, 10)];
  const [width, length] = [whole(4, 20), whole(4, 40)];
  const reading = () => (random() < 0.04 ? "x" : random() < 0.01 ? 0 : Math.round(150 + 350 * random()) / 10);
  return {
    ...EXAMPLE_ENTRIES,
    Cans_Readings: Array.from({ length: 30 }, (_, i) =>
      Array.from({ length: 20 }, (_, j) => (i < rows && j < columns ? reading() : "")),
    ),
    Cans_Across_m: [Array.from({ length: 20 }, (_, j) => places(columns, width)[j] ?? "")],
    Cans_Along_m: Array.from({ length: 30 }, () => [""]),
    Bed_Width_m: width,
    Bed_Length_m: length,
    Can_Mouth_mm: whole(60, 160),
    Test_Minutes: whole(10, 60),
    Share_Wanted: pick(0.5, 0.75, 0.9, 1),
    Multiplier_Basis: pick("driest can", "low quarter", "share of pots"),
    Leaching_Rule: pick("none", "larger", "both"),
    Limit_Set: pick("General", "Queensland notes", "Florida nurseries", "None"),
    In_Bed_Share: pick<number | string>("", 0.6, 0.9),
    Waters_To_Driest: pick("yes", "no"),
    ...(random() < 0.8 && { Cans_Along_m: [...places(rows, length), ...Array(30 - rows).fill("")].map((at) => [at]) }),
  };
}

/** Changes one cell at a time of copies of generated audits; prints the changes that the check does not find. */
async function changed(): Promise<void> {
  const files = await calculatedAudits(Array.from({ length: CHANGED }, audit));
  const copies = await Promise.all(files.map((file) => shareCopy(file, new Date())));
  const missed = await missedChanges(copies.map(openBook), CHANGES);
  for (const change of missed) console.log(change);
  console.log(`${CHANGES} changes of one cell in ${CHANGED} copies: ${missed.length} not found`);
}

/** Checks share copies of generated audits as made and as LibreOffice saves them; prints those that raise anything. */
async function untouched(): Promise<void> {
  let raised = 0;
  for (let done = 0; done < AUDITS; done += BATCH) {
    const files = await calculatedAudits(Array.from({ length: BATCH }, audit));
    const copies = await Promise.all(files.map((file) => shareCopy(file, new Date())));
    for (const copy of [...copies, ...(await converted(copies, "xlsx"))]) {
      const { agrees, findings, figures } = await checkCopy(copy);
      if (agrees) continue;
      raised += 1;
      console.log(findings.slice(0, 3), figures.filter((figure) => !figure.agrees).slice(0, 5));
    }
  }
  console.log(`${AUDITS} copies untouched and ${AUDITS} saved by LibreOffice: ${raised} raise anything`);
}

untouched().then(changed);
