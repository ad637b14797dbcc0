import { strFromU8, unzipSync } from "fflate";
import type { Host } from "../host";
import { contractFile } from "./file";
import { same, type TrialSheet } from "./trial-sheet";

const READINGS = "Canfall test readings";
const RESULTS = "Canfall test results";
const NAME = "Canfall_test_readings";
const OTHERS = ["Canfall other readings", "Canfall other results"] as const;

/** Lets `work` go on with the file's sheets in the workbook, and removes whatever came in. */
async function inserted(host: Host, work: () => Promise<void>): Promise<void> {
  const before = await host.sheets();
  try {
    await host.insertSheets(contractFile(READINGS, RESULTS, NAME));
    await work();
  } finally {
    for (const sheet of await host.sheets()) if (!before.includes(sheet)) await host.removeSheet(sheet);
  }
}

async function refused(work: Promise<unknown>): Promise<void> {
  const outcome = await work.then(
    () => "done",
    () => "refused",
  );
  same(outcome, "refused");
}

const TEXT_PART = /^xl\/(workbook|sharedStrings|worksheets\/[^/]+)\.xml$/;

/** The parts of a workbook file that name its sheets and hold their cells, as text. */
const textParts = (file: Uint8Array): string[] =>
  Object.values(unzipSync(file, { filter: ({ name }) => TEXT_PART.test(name) })).map((part) => strFromU8(part));

const protectedSheets = async (host: Host): Promise<number> =>
  textParts(await host.bytes()).filter((part) => /<(\w+:)?sheetProtection\b/.test(part)).length;

export const FILE_CHECKS = {
  "sheets of a file come in behind the others": async ({ host }: TrialSheet) => {
    const before = await host.sheets();
    await inserted(host, async () => same(await host.sheets(), [...before, READINGS, RESULTS]));
    same(await host.sheets(), before);
  },
  "names come in with their sheets and go with them": async ({ host }: TrialSheet) => {
    await inserted(host, async () => same(await host.named(NAME), { sheet: READINGS, address: "A1:A3" }));
    same(await host.named(NAME), null);
  },
  "a snapshot holds what is behind names, in either spelling of it": async ({ host }: TrialSheet) =>
    inserted(host, async () => {
      const asked = NAME.toUpperCase();
      const area = { sheet: READINGS, address: "A1:A3" };
      const filled = { area, cells: [[20], [30], [40]], inputs: [[20], [30], [40]] };
      same((await host.snapshot({ names: [asked], inputs: [asked] })).named(NAME), filled);
    }),
  "formulas that came in follow each other's sheets and names": async ({ host, settledRead }: TrialSheet) =>
    inserted(host, async () => {
      const results = { sheet: RESULTS, address: "A1:A2" };
      same(await settledRead(results), [[90], [90]]); // 20 + 30 + 40
      await host.write({ sheet: READINGS, address: "A1" }, [[50]]);
      same(await settledRead(results), [[120], [120]]); // 50 + 30 + 40
    }),
  "a sheet's name that is taken is refused and nothing changes": async ({ host }: TrialSheet) => {
    await host.addSheet(RESULTS);
    try {
      const before = await host.sheets();
      await refused(host.insertSheets(contractFile(READINGS, RESULTS, NAME)));
      same(await host.sheets(), before);
      same(await host.named(NAME), null);
    } finally {
      await host.removeSheet(RESULTS);
    }
  },
  "a defined name that is taken is refused and nothing changes": async ({ host }: TrialSheet) =>
    inserted(host, async () => {
      const before = await host.sheets();
      await refused(host.insertSheets(contractFile(...OTHERS, NAME)));
      same(await host.sheets(), before);
      same(await host.named(NAME), { sheet: READINGS, address: "A1:A3" });
    }),
  "the workbook's bytes hold what was typed": async ({ host, sheet, write, read }: TrialSheet) => {
    await write("A1:A3", [["a can that was knocked over"], [21.25], ["=A2*2"]]);
    await read("A3");
    const file = await host.bytes();
    const text = textParts(file).join("");
    for (const typed of [`"${sheet}"`, "a can that was knocked over", ">21.25<", ">A2*2<"]) {
      same(text.includes(typed) && typed, typed);
    }
  },
  "a protected sheet is written to and stays protected": async ({ host, settledRead }: TrialSheet) =>
    inserted(host, async () => {
      const before = await protectedSheets(host);
      same(before > 0, true);
      const at = { sheet: RESULTS, address: "A1:A3" };
      await host.write(at, [[1], [2], ["=A1+A2"]]);
      same(await settledRead(at), [[1], [2], [3]]);
      same(await protectedSheets(host), before);
    }),
};
