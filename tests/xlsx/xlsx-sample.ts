import { Workbook } from "@cj-tech-master/excelts";

/** A file with much that the desk does not show; readings 20, 30, 40 in A2:A4. */
export async function sampleFile(): Promise<Uint8Array> {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Bed 7");
  sheet.getCell("A1").value = "Caught [mL]";
  sheet.getCell("A1").font = { name: "Georgia", size: 13, bold: true, color: { argb: "FF543005" } };
  sheet.getCell("A1").border = { bottom: { style: "double", color: { argb: "FF01665E" } } };
  [20, 30, 40].forEach((reading, i) => {
    sheet.getCell(`A${i + 2}`).value = reading;
  });
  sheet.getCell("A2").numFmt = '0.0 "mL"';
  sheet.getCell("A2").fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FFF6E8C3" } };
  sheet.getCell("A3").note = "beside the riser";
  sheet.getCell("A4").dataValidation = {
    type: "decimal",
    operator: "greaterThanOrEqual",
    formulae: [0],
    allowBlank: true,
    showErrorMessage: true,
    error: "a reading is 0 or more",
  };
  sheet.getCell("B1").value = "Driest can";
  sheet.getCell("B2").value = {
    formula: "_xldudf_CANFALL_SC_CAN(A2:A4)",
    result: 1.5,
    shareType: "array",
    ref: "B2",
    isDynamicArray: true,
  };
  sheet.getCell("B3").value = { formula: "CANFALL.SC.QUARTER(A2:A5)", result: 1.5 };
  sheet.getCell("B4").value = { formula: "SUM(A2:A4)", result: 90 };
  sheet.getCell("D1").value = {
    formula: '_xldudf_CANFALL_DEPTH_CAUGHT(A2:A4,"mm")',
    result: 20,
    shareType: "array",
    ref: "D1:D3",
    isDynamicArray: true,
  };
  sheet.getCell("D2").value = 30;
  sheet.getCell("D3").value = 40;
  sheet.addConditionalFormatting({
    ref: "A2:A4",
    rules: [
      {
        type: "cellIs",
        operator: "lessThan",
        formulae: ["25"],
        priority: 1,
        style: { fill: { type: "pattern", pattern: "solid", bgColor: { argb: "FFD8B365" } } },
      },
    ],
  });
  sheet.pageSetup.orientation = "landscape";
  sheet.pageSetup.paperSize = 9;
  sheet.pageSetup.printArea = "A1:D10";
  sheet.headerFooter.oddFooter = "Page &P";
  sheet.views = [{ state: "frozen", xSplit: 0, ySplit: 1 }];
  workbook.addWorksheet("Hidden", { state: "hidden" }).getCell("A1").value = "kept";
  workbook.definedNames.add("'Bed 7'!$A$2:$A$4", "Cans_Readings");
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

/** What must outlast opening and saving. */
export async function unseen(bytes: Uint8Array): Promise<Record<string, unknown>> {
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  const sheet = workbook.getWorksheet("Bed 7")!;
  return {
    head: sheet.getCell("A1").style,
    reading: sheet.getCell("A2").style,
    note: sheet.getCell("A3").note,
    validation: sheet.getCell("A4").dataValidation,
    conditional: sheet.conditionalFormattings,
    orientation: sheet.pageSetup.orientation,
    paper: sheet.pageSetup.paperSize,
    printArea: sheet.pageSetup.printArea,
    footer: sheet.headerFooter.oddFooter,
    views: sheet.views,
    names: workbook.definedNames.getRanges("Cans_Readings").ranges,
    hidden: workbook.getWorksheet("Hidden")?.state,
  };
}
