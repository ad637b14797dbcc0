import { beforeAll, describe, expect, it } from "vitest";
import type { Entries } from "../../src/workbook/form/build";
import { PROGRAM } from "../../src/workbook/nursery/program/program";
import { NURSERY } from "../../src/workbook/nursery/start/start";
import { START_TIMES } from "../../src/workbook/nursery/start-times/start-times";
import { type Calculated, calculated } from "../support/audits";
import { DEMAND_STUB } from "../support/demand-stub";

const ROW = /^([A-Z]+)(\d+)/;
const LISTS = {
  "in order of time": ["Z", "AA", "AB", "AC", "AD", "AE"],
  "by block": ["AG", "AH", "AI", "AJ", "AK", "AL"],
} as const;
const FIRST = 7;
const LINES = 40;

describe("the lines of Start times that are printed", () => {
  it("have neither fill nor edges until something is in them", () => {
    const printed = START_TIMES.cells.filter(({ at }) => {
      const [, letters = "", row = ""] = ROW.exec(at)!;
      return (
        Number(row) >= FIRST &&
        Object.values(LISTS)
          .flat()
          .some((letter) => letter === letters)
      );
    });
    expect(printed).toHaveLength(2 * LINES * 6);
    expect(printed.filter(({ bare }) => !bare)).toEqual([]);
    expect(START_TIMES.shades!.filter(({ range }) => range === "Z7:AE46").map(({ formula }) => formula)).toEqual([
      'IF(ISNUMBER($AN7),INDEX($I$6:$I$245,$AN7)<>"ok",FALSE)',
      "ISNUMBER($AN7)",
    ]);
  });

  it("take one page, in order of time and by block side by side", () => {
    expect([START_TIMES.printed, START_TIMES.pageEnds, START_TIMES.pages]).toEqual(["Z1:AL46", undefined, undefined]);
  });
});

const minute = (hours: number, minutes: number) => (60 * hours + minutes) / 1440;
const BASE: Entries = {
  Program_Month: 7,
  Pump_Flow_Lmin: 1000,
  Program_Windows: [[20 / 24, 6 / 24]],
  // run times 60 x 6 x 1 / 12 = 30 min, in two pulses of 15, and 60 x 4 / 12 = 20 min
  Program_Blocks: [
    ["palms", "", 100, 12, 1, 6, 3, 30, ""],
    ["ferns", "", 100, 12, 1, 4, "", "", ""],
  ],
};
const TYPED = [
  ["ferns", 1, minute(0, 10), 20],
  ["palms", 2, minute(23, 0), 15],
  ["", "", "", ""],
  ["palms", 1, minute(21, 30), 15],
  ["weeds", 1, minute(20, 0), 5],
];
const TWO_WINDOWS = [
  [minute(20, 0), minute(21, 0)],
  [minute(21, 30), minute(6, 0)],
];
const LONG = Array.from({ length: 130 }, (_, index) => ["ferns", index + 1, minute(20, index), 1]);

describe("the paper of a night, calculated by LibreOffice", () => {
  let books: Calculated[];
  beforeAll(async () => {
    const all = [
      { ...BASE, Start_Times: TYPED, Program_Windows: TWO_WINDOWS },
      { ...BASE, Start_Times: LONG },
      { ...BASE, Start_Times: LONG, Paper_Part: 2 },
      { ...BASE, Start_Times: LONG, Paper_Part: 4 },
    ];
    books = await calculated(all, [NURSERY, DEMAND_STUB, PROGRAM, START_TIMES]);
  }, 300_000);
  const lines = (book: number, list: keyof typeof LISTS): (string | number)[][] =>
    Array.from({ length: LINES }, (_, index) =>
      LISTS[list].map((letter) => {
        const value = books[book]!.at(`Start times!${letter}${FIRST + index}`);
        return typeof value === "number" && value < 1 ? Math.round(1440 * value) : String(value);
      }),
    ).filter((line) => line.some((cell) => cell !== ""));

  it("has the lines in order of time from the start of the night, whatever order they are typed in", () => {
    expect(lines(0, "in order of time")).toEqual([
      ["weeds", "1 of 1", 1200, 1205, "5", "5 !"],
      ["palms", "1 of 2", 1290, 1305, "15", "4"],
      ["palms", "2 of 2", 1380, 1395, "15", "2"],
      ["ferns", "1 of 1", 10, 30, "20", "1"],
    ]);
  });

  it("has them by block in the order of the Program, those of no block at the end", () => {
    expect(lines(0, "by block").map(([block, pulse]) => `${block} ${pulse}`)).toEqual([
      "palms 1 of 2",
      "palms 2 of 2",
      "ferns 1 of 1",
      "weeds 1 of 1",
    ]);
  });

  it("takes 40 lines a part and says which they are", () => {
    const numbers = (book: number) => lines(book, "in order of time").map(([, pulse]) => pulse);
    const expected = LONG.map(([, n]) => `${n} of 130`);
    expect([1, 2, 3].map(numbers)).toEqual([expected.slice(0, 40), expected.slice(40, 80), expected.slice(120)]);
    expect(lines(3, "by block")).toHaveLength(10);
    expect(books.map(({ at }) => at("Start times!AD1"))).toEqual([
      "",
      "Part 1 of 4: lines 1 to 40 of 130. Print each part; part:",
      "Part 2 of 4: lines 41 to 80 of 130. Print each part; part:",
      "Part 4 of 4: lines 121 to 130 of 130. Print each part; part:",
    ]);
  });

  it("says that pumps run unattended", () => {
    for (const { at } of books) expect(at("Start times!Z4")).toContain("Pumps run unattended at these times");
  });

  it("marks the first start of other hours and of a new day", () => {
    const turns = ["AP7", "AP8", "AP9", "AP10", "AP11"].map((place) => books[0]!.at(`Start times!${place}`));
    // 20:00 on the first day, 21:30 and 23:00 in the second hours, 0:10 on the second day
    expect(turns).toEqual([1, 2, 2, 102, ""]);
    const marks = START_TIMES.shades!.filter(({ range }) => /^AB\d+:AB\d+$/.test(range));
    expect(marks.map(({ range, formula }) => [range, formula])).toEqual([
      ["AB8:AB46", "IF(COUNT($AP8,$AP7)=2,$AP8<>$AP7,FALSE)"],
    ]);
  });
});
