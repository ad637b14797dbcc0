// @vitest-environment jsdom
import { File as NodeFile } from "node:buffer";
import { act } from "react";
import { afterEach, describe, expect, it } from "vitest";
import type { Area } from "../../src/cells/area";
import type { Input } from "../../src/cells/cell";
import { dayOf } from "../../src/cells/day-number";
import { caughtDepth } from "../../src/core/application/depth";
import { caughtRate } from "../../src/core/application/rate";
import { canAreas } from "../../src/core/pattern/can-areas";
import { weightedChristiansen, weightedLowQuarter, weightedMean } from "../../src/core/uniformity/weighted";
import { Pane } from "../../src/taskpane/pane";
import { AUDIT_SHEETS } from "../../src/workbook/audit/audit";
import { buildWorkbook } from "../../src/workbook/form/build";
import { type GeneratedAudit, generatedAudits } from "../support/audit-figures";
import { axeFindings } from "../support/axe-findings";
import { type MemoryHost, memoryHost } from "../support/memory-host";
import { screen } from "../support/screen";

let page: Awaited<ReturnType<typeof screen>>;
let host: MemoryHost;
afterEach(() => page.close());

const at = (address: string, sheet = "Register"): Area => ({ sheet, address });
const NAMES: Record<string, Area> = {
  Register_Rows: at("A7:S12"),
  Register_Answers: at("T7:AD12"),
  Register_Block: at("D20"),
  Program_Blocks: at("A30:I33", "Program"),
  Nursery_Name: at("C4", "Nursery"),
};
const letters = (index: number) => (index < 26 ? "" : "A") + String.fromCharCode(65 + (index % 26));
const lineAt = (row: number, column: number, values: readonly Input[]): Record<string, Input> =>
  Object.fromEntries(
    values.flatMap((value, index) => (value === "" ? [] : [[`${letters(column + index)}${row}`, value]])),
  );
const audit = (block: string, day: string, grid = "5 × 5", mar = 12, scQuarter = 1.4): Input[] => [
  "Nursery",
  block,
  dayOf(day),
  25,
  grid,
  "up to 2.2 m/s",
  200,
  mar,
  80,
  70,
  1.8,
  scQuarter,
  "low quarter",
  scQuarter,
  1200,
  360,
  "",
  "typed",
  "",
];
const answers = (said: string, basis = "", retest = "", earlier: Input = "", due: Input = ""): Input[] => [
  said,
  earlier,
  basis,
  "",
  "",
  "",
  "",
  "",
  due,
  "",
  retest,
];

/** A plan whose register holds these lines, each with what the sheet answers. */
function planHost(lines: [Input[], Input[]][] = [], program: Input[][] = []): MemoryHost {
  const register = lines.map(([typed, said], index) => ({
    ...lineAt(7 + index, 0, typed),
    ...lineAt(7 + index, 19, said),
  }));
  const blocks = program.map((line, index) => lineAt(30 + index, 0, line));
  return memoryHost(
    {
      Nursery: { C4: "Nursery" },
      Register: Object.assign({ A1: "Register of audits" }, ...register),
      Program: Object.assign({ A1: "Program" }, ...blocks),
    },
    NAMES,
  );
}

const TYPICAL: [Input[], Input[]][] = [
  [audit("block 3", "2025-09-02"), answers("ok", "no earlier audit of this block", "tested again")],
  [
    audit("block 3", "2026-08-20", "4 × 6", 11),
    answers("ok", "different grid: 5 × 5 and 4 × 6", "not due", dayOf("2025-09-02"), dayOf("2027-08-20")),
  ],
  [
    audit("block 8", "2025-06-30"),
    answers("ok", "no earlier audit of this block", "overdue by 148 days", "", dayOf("2026-06-30")),
  ],
  [audit("", "2025-06-30"), answers("needs a block")],
];

async function open(book: MemoryHost, step = "Register"): Promise<void> {
  host = book;
  page = await screen(<Pane host={host} functions={[]} />);
  await page.step(step);
}

const asFile = (bytes: Uint8Array | string, name: string) =>
  new NodeFile([bytes as Uint8Array<ArrayBuffer> | string], name) as unknown as File;

async function choose(files: File[], label = "Audits to add"): Promise<void> {
  const input = page.place.querySelector<HTMLInputElement>(`input[aria-label="${label}"]`)!;
  Object.defineProperty(input, "files", { value: files, configurable: true });
  await act(async () => input.dispatchEvent(new Event("change", { bubbles: true })));
}

const read = async (address: string, sheet = "Register") => host.read(at(address, sheet));

describe("the step Register", () => {
  it("offers the nursery plan where the workbook has none", async () => {
    await open(memoryHost({ Mine: {} }));
    await page.shows("Add the nursery plan sheets to this workbook");
  });

  it("lists what is due, what may not be compared and why, and lines that take no part", async () => {
    await open(planHost(TYPICAL));
    await page.shows("4 audits in the register.");
    expect(page.text("li")).toEqual([
      "block 8 · Nursery: overdue by 148 days (last tested 2025-06-30, re-test by 2026-06-30)",
      "block 3 · Nursery, 2025-09-02 and 2026-08-20: different grid: 5 × 5 and 4 × 6",
      "Row 10: needs a block",
    ]);
  });

  it("lists no line while the sheet has not yet said what is wrong with it, and names the block that is drawn", async () => {
    await open(planHost([[audit("block 7", "2026-01-01"), answers("")], TYPICAL[0]!]));
    await page.shows("2 audits in the register.");
    expect(page.place.textContent).not.toContain("Lines that take no part");
    await page.shows("none chosen: block 3 · Nursery");
  });

  it("draws a chosen block over time, marks on another basis apart", async () => {
    await open(planHost(TYPICAL));
    await page.shows("One block over time");
    const pictures = [...page.place.querySelectorAll("svg[role=img]")].map((each) => each.getAttribute("aria-label"));
    expect(pictures).toEqual([
      "MAR of block 3: 2025-09-02 12.0 mm/h (other basis); 2026-08-20 11.0 mm/h",
      "CU of block 3: 2025-09-02 80.0 % (other basis); 2026-08-20 80.0 %",
      "SC (low quarter) of block 3: 2025-09-02 1.40 (other basis); 2026-08-20 1.40",
    ]);
    await page.type("Block", "block 8 · Nursery");
    await page.shows("MAR [mm/h], block 8");
    expect(await read("D20")).toEqual([["block 8 · Nursery"]]);
    await page.press("Undo");
    await page.shows("MAR [mm/h], block 3");
  });

  it("has nothing that axe finds, by itself, with a question open and with files skipped", async () => {
    await open(planHost(TYPICAL, [["block 8", "", 100]]));
    await page.shows("One block over time");
    await page.press("Put the latest audit of each block into the Program");
    await page.shows("Replace them");
    await choose([asFile("no workbook", "notes.xlsx")]);
    await page.shows("Not read, and skipped:");
    expect(await axeFindings(page.place)).toEqual([]);
  });
});

/** The figures of a generated audit by core, by area. */
function figures({ readings, across, along, width, length }: GeneratedAudit) {
  const areas = canAreas(across, along, width, length);
  const cans = readings.flatMap((line, i) =>
    line.flatMap((reading, j) => (typeof reading === "number" ? [{ reading, area: areas[i]![j]! }] : [])),
  );
  const [x, w] = [cans.map(({ reading }) => reading), cans.map(({ area }) => area)];
  const mean = weightedMean(x, w);
  return {
    cans: x.length,
    mar: caughtRate(caughtDepth(mean, 104), 20),
    cu: weightedChristiansen(x, w),
    du: (100 * weightedLowQuarter(x, w)) / mean,
    scCan: mean / Math.min(...x),
    scQuarter: mean / weightedLowQuarter(x, w),
  };
}

const AUDITS = [
  "25 cans, uneven places",
  "25 cans, even places",
  "24 cans",
  "a dry long edge",
  "readings with many digits",
];
const chosen = generatedAudits().filter(({ title }) => AUDITS.includes(title));
const file = async ({ entries }: GeneratedAudit, block: string, day: string) =>
  asFile(
    await buildWorkbook(AUDIT_SHEETS, { ...entries, Site_Name: "Nursery", Block_Name: block, Test_Date: dayOf(day) }),
    `${block}.xlsx`,
  );

describe("audits from files", () => {
  it("land in the first empty lines with the figures that core gives, and are taken out again", async () => {
    await open(planHost(TYPICAL.slice(0, 1)));
    await page.shows("1 audit in the register.");
    await act(() => host.type(at("E9"), [["5 × 5"]]));
    const files = [asFile("nothing", "broken.xlsx")];
    for (const [index, one] of chosen.slice(0, 3).entries())
      files.push(await file(one, `bed ${index + 1}`, "2026-10-01"));
    await choose(files, "Folder of audits to add");
    await page.shows("3 audits added from Register!A8:S8 on. Undo takes them out.");
    await page.shows('broken.xlsx: the file must be an .xlsx workbook, got "a file of another kind"');
    const lines = await read("A7:S12");
    expect(lines[2]!.filter((cell) => cell !== null)).toEqual(["5 × 5"]);
    for (const [index, row] of [1, 3, 4].entries()) {
      const line = lines[row]!;
      const ours = figures(chosen[index]!);
      expect(line.slice(0, 4)).toEqual(["Nursery", `bed ${index + 1}`, dayOf("2026-10-01"), ours.cans]);
      for (const [column, value] of [ours.mar, ours.cu, ours.du, ours.scCan, ours.scQuarter].entries()) {
        expect(line[7 + column] as number, `${index} ${column}`).toBeCloseTo(value, 9);
      }
      expect(line[18]).toBe(`bed ${index + 1}.xlsx`);
    }
    await page.press("Undo");
    expect((await read("A8:S12")).flat().filter((cell) => cell !== null)).toEqual(["5 × 5"]);
  });

  it("of a block and date that are there ask before they replace", async () => {
    await open(planHost([[audit("Bed 1 ", "2026-10-01"), answers("ok")]]));
    await page.shows("1 audit in the register.");
    await choose([await file(chosen[0]!, "bed 1", "2026-10-01")]);
    await page.shows("The register has this audit already: bed 1 of 2026-10-01 in row 7.");
    expect((await read("H7"))[0]).toEqual([12]);
    await page.press("Replace");
    await page.shows("1 audit replaced.");
    expect((await read("H7"))[0]![0] as number).toBeCloseTo(figures(chosen[0]!).mar, 9);
    await page.press("Undo");
    expect(await read("B7:H7")).toEqual([["Bed 1 ", dayOf("2026-10-01"), 25, "5 × 5", "up to 2.2 m/s", 200, 12]]);
  });

  it("say so where there is no date, or no line left", async () => {
    const full = Array.from({ length: 6 }, (_, index): [Input[], Input[]] => [
      audit(`b ${index}`, "2026-01-01"),
      answers("ok"),
    ]);
    await open(planHost(full));
    await page.shows("6 audits in the register.");
    const undated = await buildWorkbook(AUDIT_SHEETS, { ...chosen[0]!.entries, Block_Name: "bed 2" });
    await choose([await file(chosen[0]!, "bed 1", "2026-10-01"), asFile(undated, "undated.xlsx")]);
    await page.shows("No audit was added. The register is full: no line is left for bed 1 of 2026-10-01.");
    await page.shows("undated.xlsx: the audit has no date: fill it in on its sheet Block");
  });
});

describe("the latest audit of each block", () => {
  const press = () => page.press("Put the latest audit of each block into the Program");

  it("goes into the Program's row of that name, else into the first empty one", async () => {
    const program: Input[][] = [
      ["other", "herbs", 100, 9, 1.2, "", "", "", 30],
      ["Block 3", "trees", "", "", "", "", 4, 20],
    ];
    await open(planHost(TYPICAL, program));
    await page.shows("4 audits in the register.");
    await press();
    await page.shows(
      "Area, MAR, multiplier and flow updated for 1 block, added for 1 block in Program!A30:I33: block 3, block 8. A new block still needs its group or a depth.",
    );
    expect(await read("A30:I33", "Program")).toEqual([
      ["other", "herbs", 100, 9, 1.2, null, null, null, 30],
      ["Block 3", "trees", 360, 11, 1.4, null, 4, 20, null],
      ["block 8", null, 360, 12, 1.4, null, null, null, null],
      Array(9).fill(null),
    ]);
    await page.press("Undo");
    expect((await read("A31:I32", "Program")).flat().filter((cell) => cell !== null)).toEqual([
      "Block 3",
      "trees",
      4,
      20,
    ]);
  });

  it("says which of them are of another nursery than the plan's", async () => {
    const other = audit("block 8", "2026-01-01");
    other[0] = "Hill Farm";
    await open(planHost([[other, answers("ok")], TYPICAL[0]!]));
    await page.shows("2 audits in the register.");
    await press();
    await page.shows("Of another nursery than this plan's, Nursery: block 8 (Hill Farm).");
  });

  it("replaces other figures only when told so", async () => {
    await open(planHost(TYPICAL, [["block 8", "", 420, 12, 1.4]]));
    await page.shows("4 audits in the register.");
    await press();
    await page.shows("The Program has other figures for block 8. Put those of the register in their place?");
    await page.press("Leave the Program as it is");
    expect((await read("A30:E31", "Program")).flat()).toEqual(["block 8", null, 420, 12, 1.4, ...Array(5).fill(null)]);
  });

  it("is left out where it lacks a figure, or two sites have a block of its name", async () => {
    const lacking = audit("block 1", "2026-01-01");
    lacking[7] = "";
    const other = audit("block 8", "2026-01-01");
    other[0] = "Another";
    await open(
      planHost([
        [lacking, answers("ok")],
        [audit("block 8", "2026-01-01"), answers("ok")],
        [other, answers("ok")],
      ]),
    );
    await page.shows("3 audits in the register.");
    await press();
    await page.shows(
      "There is no audit to put into the Program. Left out: block 1 of 2026-01-01 needs MAR; block 8 of 2026-01-01 two sites have a block of this name; block 8 of 2026-01-01 two sites have a block of this name.",
    );
  });
});

describe("the step Share in a nursery plan", () => {
  it("says that a share copy is of a block audit", async () => {
    await open(planHost(), "Share");
    await page.shows("A share copy is of a block audit, and this workbook is a nursery plan: it has no audit.");
    expect(page.text("button")).not.toContain("Make a share copy");
  });
});
