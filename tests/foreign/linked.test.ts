import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import type { SheetChange } from "../../src/xlsx/desk-file/book";
import { XlsxFile } from "../../src/xlsx/desk-file/desk-file";
import { OFFICE } from "./foreign-parts";
import { rareParts } from "./rare-parts";

const SHEET = "xl/worksheets/sheet2.xml";
const DRAWING_LINKS = "xl/drawings/_rels/drawing1.xml.rels";
const MS = "http://schemas.microsoft.com/office";
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

/** Parts that speak of cells beside formulas: all of the sheet Secret, or of its cell A3. */
function linkedParts(): Record<string, Uint8Array> {
  const parts = rareParts();
  const put = (part: string, text: string) => {
    parts[part] = strToU8(text);
  };
  const more = (part: string, before: string, text: string) => {
    put(
      part,
      strFromU8(parts[part]!).replace(before, () => text + before),
    );
  };
  const related = (id: string, type: string, target: string) =>
    `<Relationship Id="${id}" Type="${type.startsWith("http") ? type : `${OFFICE}/${type}`}" Target="${target}"/>`;
  more(SHEET, "</controls>", '<control><controlPr linkedCell="A3" listFillRange="$A$3:$A$4"/></control>');
  more(
    SHEET,
    "</worksheet>",
    '<webPublishItems count="1"><webPublishItem id="1" sourceRef="A3:B4"/></webPublishItems>',
  );
  more(
    "xl/worksheets/_rels/sheet2.xml.rels",
    "</Relationships>",
    related("rId7", "tableSingleCells", "../tables/tableSingleCells1.xml") +
      related("rId8", `${MS}/2019/04/relationships/namedSheetView`, "../namedSheetViews/namedSheetView1.xml"),
  );
  put(
    "xl/tables/tableSingleCells1.xml",
    `<singleXmlCells xmlns="${MAIN}"><singleXmlCell id="1" r="A3" connectionId="0"/></singleXmlCells>`,
  );
  put(
    "xl/namedSheetViews/namedSheetView1.xml",
    `<namedSheetViews xmlns="${MS}/spreadsheetml/2019/namedsheetviews"><namedSheetView name="v"><nsvFilter ref="A1:C3" tableId="0"><columnFilter colId="2"/></nsvFilter></namedSheetView></namedSheetViews>`,
  );
  put(
    "xl/webextensions/webextension1.xml",
    `<we:webextension xmlns:we="${MS}/webextensions/webextension/2010/11"><we:bindings><we:binding id="b" type="matrix" appref="Secret!A3:B3"/></we:bindings></we:webextension>`,
  );
  more(
    "xl/connections.xml",
    "</connection>",
    '<parameters count="1"><parameter name="p" cell="Secret!$A$3"/></parameters>',
  );
  more(DRAWING_LINKS, "</Relationships>", related("rId9", "hyperlink", "#Secret!A3"));
  more("xl/charts/chart1.xml", "<c:chart>", "<c:pivotSource><c:name>[bed.xlsx]Secret!Pivot</c:name></c:pivotSource>");
  return parts;
}

async function saved(change: Partial<SheetChange>) {
  const parts = linkedParts();
  const file = await XlsxFile.open(zipSync(parts));
  const sheets = file.book().sheets.map(({ key, name }): SheetChange => {
    return { key, name, widths: {}, cells: [], ...(name === "Secret" && change) };
  });
  const after = unzipSync(await file.save({ sheets, addedNames: [], removedNames: [] }));
  return (part: string) => strFromU8(after[part]!);
}

describe("what speaks of cells beside formulas", () => {
  it("follows two rows that are inserted before row 3", async () => {
    const text = await saved({ shifts: [{ axis: "rows", at: 2, count: 2 }] });
    expect(text(SHEET)).toContain('<controlPr linkedCell="A5" listFillRange="$A$5:$A$6"/>');
    expect(text(SHEET)).toContain('<webPublishItem id="1" sourceRef="A5:B6"/>');
    expect(text("xl/tables/tableSingleCells1.xml")).toContain('r="A5"');
    expect(text("xl/namedSheetViews/namedSheetView1.xml")).toContain('<nsvFilter ref="A1:C5" tableId="0">');
    expect(text("xl/webextensions/webextension1.xml")).toContain('appref="Secret!A5:B5"');
    expect(text("xl/connections.xml")).toContain('cell="Secret!$A$5"');
    expect(text(DRAWING_LINKS)).toContain('Target="#Secret!A5"');
  });

  it("keeps a view's filter on its column when one is inserted before it", async () => {
    const text = await saved({ shifts: [{ axis: "columns", at: 1, count: 1 }] });
    const view = '<nsvFilter ref="A1:D3" tableId="0"><columnFilter colId="3"/>';
    expect(text("xl/namedSheetViews/namedSheetView1.xml")).toContain(view);
  });

  it("calls a renamed sheet by its new name", async () => {
    const text = await saved({ name: "Bed 8" });
    expect(text("xl/webextensions/webextension1.xml")).toContain("appref=\"'Bed 8'!A3:B3\"");
    expect(text("xl/connections.xml")).toContain("cell=\"'Bed 8'!$A$3\"");
    expect(text(DRAWING_LINKS)).toContain("Target=\"#'Bed%208'!A3\"");
    expect(text("xl/charts/chart1.xml")).toContain("<c:name>[bed.xlsx]Bed 8!Pivot</c:name>");
  });
});
