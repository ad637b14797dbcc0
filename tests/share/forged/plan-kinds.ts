import type { CellLook, ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";
import { everyRow } from "./makes";

type Make = (file: ForgedFile) => void;

/** A cell of the area behind a name, by its row and column from 0. */
const cellOf = (file: ForgedFile, name: string, down: number, across: number): [sheet: string, address: string] => {
  const [sheet, address] = file.place(name);
  const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(address)!;
  return [sheet, `${String.fromCharCode(letters.charCodeAt(0) + across)}${Number(row) + down}`];
};
const value =
  (name: string, to: string | number, down = 0, across = 0): Make =>
  (file) =>
    file.value(...cellOf(file, name, down, across), to);
const text =
  (name: string, to: string, down = 0, across = 0): Make =>
  (file) =>
    file.text(...cellOf(file, name, down, across), to);
const look =
  (name: string, to: CellLook, down = 0, across = 0): Make =>
  (file) =>
    file.look(...cellOf(file, name, down, across), to);
const sheet =
  (name: string, from: string | RegExp, to: string): Make =>
  (file) =>
    file.onSheet(name, from, to);
const white = (font: string) =>
  font.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, '$1<color rgb="FFFFFFFF"/>');

const KINDS: readonly (readonly [string, Make])[] = [
  ["the weather of a month", value("Weather_Typed", 12, 6, 1)],
  ["what the weather gives", value("Weather_ET0", 1.23, 6)],
  ["the rain that counts", value("Weather_Rain", 0.5, 6)],
  ["the demand of a month", value("Demand_Depths", 1.5, 6)],
  ["a word in place of the demand of a month", text("Demand_Depths", "fine", 6)],
  [
    "a word in place of what the demand's formula gives",
    (file) =>
      file.cell(...cellOf(file, "Demand_Depths", 6, 0), (tag) =>
        tag.replace("<c ", '<c t="str" ').replace(/<v>[^<]*/, "<v>fine"),
      ),
  ],
  ["a weighing", value("Weighings_Typed", 999, 0, 3)],
  ["the mean of weighings", value("Weighed_Mean_mL", 12, 6)],
  ["what a leaching test gives", value("Leaching_Measured", 0.1)],
  ["what a leaching test says", text("Leaching_Said", "Fine as it is.")],
  ["a line of the register", value("Register_Rows", 99, 0, 5)],
  ["an answer of the register", text("Register_Answers", "fine")],
  ["the name of the nursery", text("Nursery_Name", "Another nursery")],
  ["a format on the demand", look("Demand_Depths", { format: "&quot;1.0&quot;" }, 6)],
  ["white text on the demand", look("Demand_Depths", { font: white }, 6)],
  ["white text on a weighing", look("Weighings_Typed", { font: white }, 0, 3)],
  ["a hidden row of the Program", sheet("Program", /<row r="7"/, '<row hidden="1" r="7"')],
  [
    "a hidden column of the start times",
    sheet("Start times", "<cols>", '<cols><col min="1" max="2" width="0" hidden="1"/>'),
  ],
  [
    "the Start times hidden",
    (file) => file.inBook('<sheet name="Start times"', '<sheet state="hidden" name="Start times"'),
  ],
  ["words in the footer of the Program", sheet("Program", "&amp;CCanfall", "&amp;CApproved Canfall")],
  [
    "a page for each column of the Program",
    sheet(
      "Program",
      "</headerFooter>",
      `</headerFooter><colBreaks>${[1, 2, 3, 4].map((id) => `<brk id="${id}" man="1"/>`).join("")}</colBreaks>`,
    ),
  ],
  [
    "columns of the plan's chart behind each other",
    (file) => file.change("xl/charts/chart1.xml", /(<c:gapWidth [^>]*>)/, '$1<c:overlap val="100"/>'),
  ],
  [
    "a chart of the plan with another title",
    (file) => file.change("xl/charts/chart1.xml", /<a:t>[^<]+<\/a:t>/, "<a:t>Approved</a:t>"),
  ],
  [
    "a sheet of the plan again",
    (file) => {
      const xml = file.parts.get(file.part("Program"))!.replace(/ s="\d+"/g, "");
      const rows = /<sheetData>([\s\S]*)<\/sheetData>/.exec(xml)![1]!.replace(/<f[^>]*>[^<]*<\/f>|<f[^>]*\/>/g, "");
      const part = `<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData>${rows}</sheetData></worksheet>`;
      file.related(
        "xl/workbook.xml",
        "rId96",
        "http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet",
        "worksheets/sheet96.xml",
        part,
      );
      file.inBook("</sheets>", '<sheet name="Agreed" sheetId="96" r:id="rId96"/></sheets>');
    },
  ],
  ["a line of the Program hidden by a flag of 2", sheet("Program", '<row r="12" ', '<row r="12" hidden="2" ')],
  [
    "columns of the Program hidden by a flag of two digits",
    sheet("Program", '<col min="3" ', '<col hidden="01" min="3" '),
  ],
  [
    "zeros of the Program not shown by a flag of two digits",
    sheet("Program", "<sheetView ", '<sheetView showZeros="00" '),
  ],
  ["rows of the Program so tall that its end is far down", everyRow("Program", () => 200)],
  [
    "a nought of the register that is left out",
    (file) => file.cell("Register", "AK21", (tag) => tag.replace(/<v>0<\/v>/, "")),
  ],
  [
    "looks of a plan in an element that some programs unwrap",
    (file) => file.change("xl/styles.xml", "<cellXfs>", '<cellXfs><z:w xmlns:z="urn:z"><xf numFmtId="0"/></z:w>'),
  ],
  [
    "the title of a plan at the other side of its cell",
    (file) => file.look("Program", "A1", { align: 'horizontal="right"' }),
  ],
  [
    "cells of the Program that cannot be chosen",
    sheet("Program", "<sheetProtection ", '<sheetProtection selectLockedCells="1" '),
  ],
  [
    "the hash of a plan",
    (file) => {
      const xml = file.parts.get(file.part("Evidence"))!;
      const row = /<c r="A(\d+)"[^>]*><is><t[^>]*>SHA-256/.exec(xml)![1]!;
      file.text("Evidence", `B${row}`, "0".repeat(64));
    },
  ],
];

/** Ways to forge the copy of a nursery plan. */
export const PLAN_KINDS: readonly Forgery[] = KINDS.map(([kind, make]) => ({ kind: `plan: ${kind}`, make }));
