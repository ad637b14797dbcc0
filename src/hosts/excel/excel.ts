import type { Area } from "../../cells/area";
import { plainAddress } from "../../cells/letters";
import type { Host } from "../host";
import { pause } from "../pause";
import { deliver, openFile, openPage, openWindow } from "./file";
import { pictures, placePicture, removePicture } from "./pictures";
import { readAreas } from "./read";
import { requests } from "./run";
import { separators } from "./separators";
import { insertSheets, removeSheet, sheetNames } from "./sheets";
import { snapshot } from "./snapshot";
import { watch } from "./watch";
import { writeTogether } from "./write";

const CALCULATION_LIMIT_MS = 60_000;
const AREA = "address,worksheet/name";

const area = (range: Excel.Range): Area => ({ sheet: range.worksheet.name, address: plainAddress(range.address) });

const rangeOf = (context: Excel.RequestContext, { sheet, address }: Area): Excel.Range =>
  context.workbook.worksheets.getItem(sheet).getRange(address);

async function selection(context: Excel.RequestContext): Promise<Area> {
  const selected = context.workbook.getSelectedRange();
  const first = selected.getCell(0, 0).load(AREA);
  const used = selected.worksheet.getUsedRangeOrNullObject(true);
  used.load("address");
  await context.sync();
  if (used.isNullObject) return area(first);
  const part = selected.getIntersectionOrNullObject(used).load(AREA);
  await context.sync();
  return area(part.isNullObject ? first : part);
}

async function used(context: Excel.RequestContext, sheet: string): Promise<Area | null> {
  const range = context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true);
  range.load(AREA);
  await context.sync();
  return range.isNullObject ? null : area(range);
}

async function named(context: Excel.RequestContext, name: string): Promise<Area | null> {
  const range = context.workbook.names.getItemOrNullObject(name).getRangeOrNullObject();
  range.load(AREA);
  await context.sync();
  return range.isNullObject ? null : area(range);
}

async function settled(context: Excel.RequestContext): Promise<void> {
  const { application } = context.workbook;
  const end = Date.now() + CALCULATION_LIMIT_MS;
  application.load("calculationMode");
  await context.sync();
  if (application.calculationMode === "Manual") application.calculate("Recalculate");
  for (;;) {
    application.load("calculationState");
    await context.sync();
    if (application.calculationState === "Done") return;
    if (Date.now() > end) throw new Error(`Excel is still calculating after ${CALCULATION_LIMIT_MS / 1000} s`);
    await pause(50);
  }
}

/** Excel through Office.js; call it after Office.onReady. */
export function excelHost(slowAfter?: number): Host {
  const { run, slow } = requests(slowAfter);
  return {
    label: "Excel",
    opened:
      "was handed to Excel to open as a workbook of its own: look behind this window, or in your cloud folder, and press Open Canfall there.",
    saves: false,
    openPage,
    slow,
    separators: () => run(separators),
    get platform() {
      const { host, platform, version } = Office.context.diagnostics;
      return `${host} ${version} on ${platform}`;
    },
    snapshot: (wanted) => run((context) => snapshot(context, wanted)),
    selection: () => run(selection),
    select: (wanted) =>
      run(async (context) => {
        context.workbook.worksheets.getItem(wanted.sheet).activate();
        rangeOf(context, wanted).select();
        await context.sync();
      }),
    watch: (changed) => run((context) => watch(context, changed)),
    read: (area) => run(async (context) => (await readAreas(context, [{ area, typed: false }]))[0]!.cells),
    inputs: (area) => run(async (context) => (await readAreas(context, [{ area, typed: true }]))[0]!.inputs!),
    write: (area, inputs) => run((context) => writeTogether(context, [{ area, inputs }])),
    writeTogether: (writes) => run((context) => writeTogether(context, writes)),
    writeKept: (writes) => run((context) => writeTogether(context, writes)),
    named: (name) => run((context) => named(context, name)),
    sheets: () => run(sheetNames),
    used: (sheet) => run((context) => used(context, sheet)),
    addSheet: (name) =>
      run(async (context) => {
        context.workbook.worksheets.add(name);
        await context.sync();
      }),
    removeSheet: (name) => run((context) => removeSheet(context, name)),
    settled: () => Excel.run({ delayForCellEdit: true }, settled),
    bytes: openFile,
    insertSheets: (file) => run((context) => insertSheets(context, file)),
    openBook: async (file) => {
      await openWindow(file);
      return true;
    },
    deliver,
    placePicture: (picture) => run((context) => placePicture(context, picture)),
    removePicture: (sheet, name) => run((context) => removePicture(context, sheet, name)),
    pictures: (sheet) => run((context) => pictures(context, sheet)),
  };
}
