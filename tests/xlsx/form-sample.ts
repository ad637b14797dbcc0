import { Workbook, type Worksheet } from "@cj-tech-master/excelts";

/** A picture of one pixel. */
const DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

function cans(sheet: Worksheet): void {
  sheet.mergeCells("A1:D1");
  sheet.getCell("A1").value = "Readings";
  sheet.getCell("A1").font = { name: "Arial", size: 16, bold: true, color: { argb: "FF543005" } };
  sheet.getCell("A1").alignment = { vertical: "middle", horizontal: "center" };
  sheet.getRow(1).height = 36;
  sheet.getColumn(1).width = 24;
  sheet.getCell("A3").value = "Water source";
  sheet.getCell("B3").value = "bore";
  sheet.getCell("A4").value = "Crop";
  sheet.getCell("A5").value = "Minutes";
  sheet.getCell("B5").value = 15;
  sheet.getCell("A6").value = "Start";
  sheet.getCell("A7").value = "Sum";
  sheet.getCell("B7").value = { formula: "SUM(A10:D10)", result: 90 };
  sheet.getCell("B7").note = "the sum of the readings";
  for (const cell of ["B3", "B4", "B5", "B6", "A10", "B10", "C10", "D10"]) {
    sheet.getCell(cell).protection = { locked: false };
    sheet.getCell(cell).fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FFFBF4E2" } };
    const line = { style: "thin", color: { argb: "FF8C510A" } } as const;
    sheet.getCell(cell).border = { top: line, left: line, bottom: line, right: line };
  }
  [20, 30, 40].forEach((reading, i) => {
    sheet.getCell(10, i + 1).value = reading;
  });
}

function checks(sheet: Worksheet): void {
  const said = { showErrorMessage: true, errorStyle: "stop", showInputMessage: true } as const;
  sheet.getCell("B3").dataValidation = {
    type: "list",
    formulae: ['"mains,bore,dam,recycled"'],
    allowBlank: true,
    ...said,
    errorTitle: "Water source",
    error: "Choose one from the list",
    promptTitle: "Water source",
    prompt: "Recycled water needs care",
  };
  sheet.getCell("B4").dataValidation = { type: "list", formulae: ["Lists!$A$1:$A$3"], allowBlank: true, ...said };
  sheet.getCell("B5").dataValidation = {
    type: "decimal",
    operator: "between",
    formulae: [1, 600],
    allowBlank: true,
    ...said,
    error: "Minutes must be 1 to 600",
  };
  sheet.getCell("B6").dataValidation = {
    type: "date",
    operator: "greaterThan",
    formulae: [new Date(Date.UTC(2000, 0, 1))],
    allowBlank: true,
    ...said,
  };
  for (const cell of ["A10", "B10", "C10", "D10"]) {
    sheet.getCell(cell).dataValidation = {
      type: "custom",
      formulae: [`OR(${cell}="x",AND(ISNUMBER(${cell}),${cell}>=0))`],
      allowBlank: true,
      ...said,
      error: "A reading is a number of 0 or more, or x",
    };
  }
}

function formats(sheet: Worksheet): void {
  const fill = (argb: string) => ({ type: "pattern", pattern: "solid", bgColor: { argb } }) as const;
  sheet.addConditionalFormatting({
    ref: "A10:D10",
    rules: [
      { type: "cellIs", operator: "lessThan", formulae: [25], priority: 2, style: { fill: fill("FFD8B365") } },
      {
        type: "expression",
        formulae: ["A10=MAX($A$10:$D$10)"],
        priority: 1,
        style: { fill: fill("FF5AB4AC"), font: { bold: true, color: { argb: "FFFFFFFF" } } },
      },
    ],
  });
}

/** A file as a form: protected, with checks, merges, formats, a note and a picture. */
export async function formFile(first = "Cans", name = "Sum_Readings"): Promise<Uint8Array> {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet(first, { properties: { tabColor: { argb: "FF01665E" } } });
  cans(sheet);
  checks(sheet);
  formats(sheet);
  const dot = workbook.addImage({ buffer: Buffer.from(DOT, "base64"), extension: "png" });
  sheet.addImage(dot, "F3:G6");
  sheet.views = [{ state: "frozen", xSplit: 0, ySplit: 1, showGridLines: false }];
  sheet.pageSetup.printArea = "A1:G12";
  sheet.pageSetup.orientation = "landscape";
  sheet.headerFooter.oddFooter = "Page &P";
  await sheet.protect("", { selectLockedCells: true, selectUnlockedCells: true });
  const lists = workbook.addWorksheet(first === "Cans" ? "Lists" : `${first} lists`, { state: "hidden" });
  ["violets", "ferns", "herbs"].forEach((crop, i) => {
    lists.getCell(i + 1, 1).value = crop;
  });
  workbook.definedNames.add(`'${first}'!$B$7`, name);
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}
