import { beforeAll, describe, expect, it } from "vitest";
import type { Entries } from "../../src/workbook/form/build";
import { PROGRAM } from "../../src/workbook/nursery/program/program";
import { NURSERY } from "../../src/workbook/nursery/start/start";
import { START_TIMES } from "../../src/workbook/nursery/start-times/start-times";
import { type Calculated, calculated } from "../support/audits";
import { DEMAND_STUB } from "../support/demand-stub";

const at = (hours: number, minutes = 0) => (60 * hours + minutes) / 1440;
/** Run times 60 x 6 / 12 = 30 min: one pulse for Fern 1, two of 15 min for Fern 2. */
const FERNS = [
  ["Fern 1", "", 100, 12, 1, 6, "", "", ""],
  ["Fern 2", "", 100, 12, 1, 6, 3, 30, ""],
];
const TWO_WINDOWS: Entries = {
  Program_Month: 7,
  Pump_Flow_Lmin: 1000,
  Program_Windows: [
    [at(20), at(23)],
    [at(1), at(5)],
  ],
  Program_Blocks: FERNS,
};
const RIGHT = [
  ["Fern 1", 1, at(20), 30],
  ["Fern 2", 1, at(20), 15],
  ["Fern 2", 2, at(1), 15],
];
const NIGHTS = {
  "two windows": { ...TWO_WINDOWS, Start_Times: RIGHT },
  "three windows": {
    ...TWO_WINDOWS,
    Program_Windows: [
      [at(20), at(23)],
      [at(1), at(2)],
      [at(4, 30), at(6, 5)],
    ],
  },
  "a wrong window": {
    ...TWO_WINDOWS,
    Tank_kL: 40,
    Start_Times: RIGHT,
    Program_Windows: [
      [at(20), at(23)],
      [at(1), at(1)],
    ],
  },
  "two kept apart at once": { ...TWO_WINDOWS, Program_Apart: [["Fern 2", "Fern 1"]], Start_Times: RIGHT },
  "a name that is no block": { ...TWO_WINDOWS, Start_Times: [["Fern 9", ...RIGHT[0]!.slice(1)], ...RIGHT.slice(1)] },
  "a pulse missing": { ...TWO_WINDOWS, Start_Times: RIGHT.slice(0, 2) },
  "pulses without a rest": {
    ...TWO_WINDOWS,
    Program_Blocks: FERNS.map((line) => line.map((v, i) => (i === 7 ? "" : v))),
  },
  "a rest of 0": { ...TWO_WINDOWS, Program_Blocks: FERNS.map((line) => line.map((v, i) => (i === 7 ? 0 : v))) },
} satisfies Record<string, Entries>;

describe("Program and Start times say in words, calculated by LibreOffice,", () => {
  const books = new Map<string, Calculated>();
  beforeAll(async () => {
    const found = await calculated(Object.values(NIGHTS), [NURSERY, DEMAND_STUB, PROGRAM, START_TIMES]);
    Object.keys(NIGHTS).forEach((title, index) => {
      books.set(title, found[index]!);
    });
  }, 300_000);
  const said = (title: keyof typeof NIGHTS, place: string) => String(books.get(title)!.at(place));

  it("every window, with two digits for the hour", () => {
    const two = "20:00 to 23:00 and 01:00 to 05:00";
    for (const line of ["A3", "Z3"]) {
      expect(said("two windows", `Start times!${line}`)).toMatch(new RegExp(`   Water may run ${two}$`));
      expect(said("three windows", `Start times!${line}`)).toMatch(
        /Water may run 20:00 to 23:00, 01:00 to 02:00 and 04:30 to 06:05$/,
      );
    }
    expect(said("two windows", "Program!E17")).toBe(`${two}: 9 h from the first start to the last end.`);
  });

  it("to put wrong hours right instead of summing them", () => {
    const cells = ["C15", "C17", "E17", "E18"].map((place) => said("a wrong window", `Program!${place}`));
    expect(cells).toEqual(["needs hours", "needs hours", "Put the hours right: see what is said beside them.", ""]);
    expect(said("a wrong window", "Start times!A3")).toMatch(/put the hours right: see Program$/);
    expect(said("a wrong window", "Start times!A4")).toMatch(/^Put the hours of the Program right/);
  });

  it("which block is kept apart from the one that it runs with", () => {
    expect(said("two kept apart at once", "Start times!I6")).toBe("runs with Fern 2, kept apart");
    expect(said("two kept apart at once", "Start times!I7")).toBe("runs with Fern 1, kept apart");
    expect(said("two kept apart at once", "Start times!I8")).toBe("ok");
    expect(said("two kept apart at once", "Start times!Z4")).toMatch(
      /^2 lines need a look \(on paper: !\): see the sheet, column Check\. Fit the night anew\. Pumps run unattended /,
    );
  });

  it("that a line names no block of the Program", () => {
    expect(said("a name that is no block", "Start times!A4")).toBe(
      "1 line names no block of the Program: Fern 9. Put the name right, or fit the night anew.",
    );
  });

  it("one pulse as one", () => {
    expect(said("a pulse missing", "Start times!A4")).toBe(
      "The Program is not the one that was fitted: Fern 2 has 1 pulse, 15 min here, but 2 pulses, 30 min in the Program. Fit the night anew.",
    );
  });

  it.each(["pulses without a rest", "a rest of 0"] as const)("that there are %s, in lines that are whole", (title) => {
    expect(["P27", "P28"].map((place) => said(title, `Program!${place}`))).toEqual([
      "ok",
      "ok, but pulses without a rest",
    ]);
    expect(said(title, "Program!C24")).toBe("ok");
    expect(said(title, "Program!V16")).toBe("0");
    expect(said("two windows", "Program!P28")).toBe("ok");
  });
});
