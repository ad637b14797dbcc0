import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ExcelJS from "exceljs";
import { InputError } from "../../src/core/errors";
import { checkCopy } from "../../src/share/check/check-copy";
import { shareCopy } from "../../src/share/copy/share-copy";
import { EXAMPLE_ENTRIES } from "../../src/workbook/audit/example";
import { openBook } from "../../src/xlsx/parts/workbook-file";
import { missedChanges } from "../share/missed-changes";
import { converted } from "../support/libreoffice";
import { randomNumbers } from "../support/random";
import { calculatedAudits } from "../support/templates";

/** `npm run proof:share -- 20` tries 20 audits in place of 100. */
const AUDITS = Number(process.argv[2] ?? 100);
const BATCH = 10;
const CHANGED = 5;
const CHANGES = 5 * AUDITS;
const random = randomNumbers(100);
const whole = (least: number, most: number) => least + Math.floor((most - least + 1) * random());
const pick = <T>(...of: T[]): T => of[whole(0, of.length - 1)]!;

/** Places along one side of a bed, ascending, with one decimal. */
function places(count: number, side: number): number[] {
  return Array.from({ length: count }, (_, i) => Math.round((10 * side * (i + 0.2 + 0.6 * random())) / count) / 10);
}

const NAMES = [
  "Example Nursery (invented)",
  "7",
  "0012",
  "An invented nursery whose name goes on for as long as a line of the form lets a person type, and on",
  "Müller & Söhne <Baumschule> (erfunden)",
  "=not a formula",
];

/** An audit of 3 × 4 to 20 × 30 cans, some unread, with names of all sorts. */
function audit() {
  const [columns, rows] = [whole(3, 20), whole(4, 30)];
  const [width, length] = [whole(4, 20), whole(4, 40)];
  const reading = () => (random() < 0.04 ? "x" : random() < 0.01 ? 0 : Math.round(150 + 350 * random()) / 10);
  return {
    ...EXAMPLE_ENTRIES,
    Site_Name: pick(...NAMES),
    Block_Name: pick(...NAMES),
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

/** Copies as openpyxl saves them: without what formulas gave. */
function savedByOpenpyxl(files: readonly Uint8Array[]): Uint8Array[] {
  const folder = mkdtempSync(join(tmpdir(), "canfall-untouched-"));
  files.forEach((file, index) => {
    writeFileSync(join(folder, `${index}.xlsx`), file);
  });
  const lines = [
    "import sys, openpyxl",
    "for n in range(int(sys.argv[2])):",
    "    path = '%s/%d.xlsx' % (sys.argv[1], n)",
    "    openpyxl.load_workbook(path).save(path)",
  ];
  execFileSync("/usr/bin/python3", ["-c", lines.join("\n"), folder, String(files.length)]);
  const saved = files.map((_, index) => new Uint8Array(readFileSync(join(folder, `${index}.xlsx`))));
  rmSync(folder, { recursive: true });
  return saved;
}

async function savedByExceljs(file: Uint8Array): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(Buffer.from(file) as never);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

/** Where a program writes no number for a day, the copy is refused in words that name the cell. */
const NAMES_A_CELL = /^the file must hold numbers as numbers, got "NaN" in \S+!\w+$/;
const NOT_CALCULATED = "not calculated yet: open it in a spreadsheet program and save";

/** What a check says against a copy; "" where it accuses nobody. */
async function against(file: Uint8Array, allowed: (message: string) => boolean): Promise<string> {
  try {
    const { agrees, findings, figures } = await checkCopy(file);
    const said = [
      ...findings.filter((one) => one.class !== "added").map(({ text }) => text),
      ...figures.filter((figure) => !figure.agrees).map(({ place }) => place),
    ];
    return agrees ? "" : said.slice(0, 3).join(" ");
  } catch (error) {
    if (error instanceof InputError && allowed(error.message)) return "";
    throw error;
  }
}

/** Checks share copies of generated audits as made and as four programs save them; prints those that are accused. */
async function untouched(): Promise<void> {
  const accused = new Map<string, number>();
  for (let done = 0; done < AUDITS; done += BATCH) {
    const files = await calculatedAudits(Array.from({ length: Math.min(BATCH, AUDITS - done) }, audit));
    const copies = await Promise.all(files.map((file) => shareCopy(file, new Date())));
    const raw = savedByOpenpyxl(copies);
    const ways: [way: string, files: Uint8Array[], allowed?: (message: string) => boolean][] = [
      ["as made", copies],
      ["LibreOffice", await converted(copies, "xlsx")],
      ["LibreOffice through .ods", await converted(await converted(copies, "ods"), "xlsx")],
      ["openpyxl", raw, (message) => message === NOT_CALCULATED],
      ["openpyxl, then calculated by LibreOffice", await converted(raw, "xlsx")],
      ["exceljs", await Promise.all(copies.map(savedByExceljs)), (message) => NAMES_A_CELL.test(message)],
    ];
    for (const [way, saved, allowed = () => false] of ways) {
      accused.set(way, accused.get(way) ?? 0);
      for (const file of saved) {
        const said = await against(file, allowed);
        if (said === "") continue;
        accused.set(way, accused.get(way)! + 1);
        console.log(`${way}: ${said}`);
      }
    }
    const sum = [...accused.values()].reduce((all, count) => all + count, 0);
    console.log(
      `${Math.min(AUDITS, done + BATCH)} of ${AUDITS} copies, ${ways.length} ways each: ${sum} accused so far`,
    );
  }
  for (const [way, count] of accused) console.log(`${AUDITS} untouched copies, ${way}: ${count} accused`);
}

untouched().then(changed);
