import type { Forgery } from "./kinds";
import {
  accusingNobody,
  addedSheet,
  book,
  CHART,
  COMPATIBLE,
  DRAWING,
  drawing,
  forgeries,
  from,
  type Kind,
  MAIN,
  type Make,
  OFFICE,
  PICTURE,
  part,
  sheet,
  to,
  two,
} from "./makes";

const carried =
  (type: string, target: string, at = MAIN): Make =>
  (file) =>
    file.related(at, "rId88", type, target, "<x/>");
const sheetCalled = (name: string) => addedSheet(name, "<sheetData/>");

const SECOND: readonly Kind[] = [
  ["objects not shown", book("<workbookPr ", '<workbookPr showObjects="none" ')],
  [
    "a second window that shows other",
    book(
      "<sheets>",
      '<bookViews><workbookView/><workbookView visibility="hidden" showSheetTabs="0"/></bookViews><sheets>',
    ),
  ],
  [
    "a task pane of an add-in",
    carried(
      "http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes",
      "xl/webextensions/taskpanes.xml",
      "",
    ),
  ],
  [
    "a part of an unknown kind",
    carried("http://schemas.microsoft.com/office/2035/relationships/overlay", "overlay.xml"),
  ],
  [
    "a slicer's data",
    carried("http://schemas.microsoft.com/office/2007/relationships/slicerCache", "slicerCaches/slicerCache1.xml"),
  ],
  [
    "a ribbon of its own",
    carried("http://schemas.microsoft.com/office/2007/relationships/ui/extensibility", "customUI/customUI14.xml", ""),
  ],
  ["a sheet of the same name", sheetCalled("Results")],
  ["a sheet of the same name in capitals", sheetCalled("RESULTS")],
  ["a sheet with one letter less", sheetCalled("Result")],
  ["a sheet with an accent", sheetCalled("R\u00e9sults")],
  ["a sheet with two letters exchanged", sheetCalled("Reprot")],
  ["a sheet with a letter doubled", sheetCalled("Repport")],
  ["a chart for a sheet, named as ours", addedSheet("Report 1", "", "chartsheet")],
  [
    "a name of ours for one sheet of its own",
    (file) => {
      sheetCalled("Mine")(file);
      file.inBook(
        "</definedNames>",
        '<definedName name="Used_CU" localSheetId="15">Mine!$A$1</definedName></definedNames>',
      );
    },
  ],
  [
    "two sheets on one part",
    (file) => {
      const id = /<sheet name="Results"[^>]*r:id="(rId\d+)"/.exec(file.parts.get(MAIN)!)![1]!;
      file.inBook("</sheets>", `<sheet name="Second" sheetId="96" r:id="${id}"/></sheets>`);
    },
  ],
  [
    "a print area of every second row",
    book(
      "</definedNames>",
      '<definedName name="_xlnm.Print_Area" localSheetId="4">Results!$A$1:$F$3,Results!$A$30:$F$47</definedName></definedNames>',
    ),
  ],
  [
    "rows repeated on each page",
    book(
      "</definedNames>",
      '<definedName name="_xlnm.Print_Titles" localSheetId="4">Results!$1:$40</definedName></definedNames>',
    ),
  ],
  [
    "a built-in name as a plain one",
    book(
      "</definedNames>",
      '<definedName name="Print_Area" localSheetId="4">Results!$A$1:$B$3</definedName></definedNames>',
    ),
  ],
];

const THIRD: readonly Kind[] = [
  [
    "a report again, one row down and under another name",
    (file) => {
      const xml = file.parts.get(file.part("Report"))!;
      const rows = /<sheetData>([\s\S]*)<\/sheetData>/.exec(xml)![1]!;
      const down = rows
        .replace(/ s="\d+"/g, "")
        .replace(/<f[^>]*>[^<]*<\/f>|<f[^>]*\/>/g, "")
        .replace(/<row r="(\d+)"/g, (_, row) => `<row r="${Number(row) + 1}"`)
        .replace(/<c r="([A-Z]+)(\d+)"/g, (_, column, row) => `<c r="${column}${Number(row) + 1}"`);
      addedSheet("For the authority", `<sheetData>${down}</sheetData>`)(file);
    },
  ],
  [
    "names in a part that only some programs read",
    book(
      "</workbook>",
      `<z:w xmlns:z="urn:z" xmlns:mc2="${COMPATIBLE}" mc2:Ignorable="z" mc2:ProcessContent="z:w"><definedNames><definedName name="Used_CU">Results!$A$1</definedName></definedNames></z:w></workbook>`,
    ),
  ],
  [
    "a shared text inside a part of another namespace",
    part("xl/sharedStrings.xml", /<si><t([^>]*)>([^<]*)<\/t><\/si>/, '<si><z:w xmlns:z="urn:z"><t$1>$2</t></z:w></si>'),
  ],
  [
    "a shared text in an unknown part",
    part("xl/sharedStrings.xml", /<si><t([^>]*)>([^<]*)<\/t><\/si>/, "<si><w><t$1>$2</t></w></si>"),
  ],
  [
    "a text of a cell in an unknown part",
    (file) => {
      const [name, address] = file.place("Site_Name");
      file.cell(name, address, (tag) =>
        tag.replace(/t="s"><v>\d+<\/v>/, 't="inlineStr"><is><w><t>Example Nursery (invented)</t></w></is>'),
      );
    },
  ],
];

const NAMED: readonly Kind[] = [
  ["printed with notes", sheet("Results", "<pageSetup ", '<pageSetup cellComments="asDisplayed" ')],
  ["a chart with other numbers kept", part(CHART, /(<c:numCache>[\s\S]*?<c:v>)[^<]*/, "$11234567")],
  ["protection taken off", sheet("Results", /<sheetProtection [^>]*>/, "")],
  ["formats allowed by the protection", sheet("Results", "<sheetProtection ", '<sheetProtection formatCells="0" ')],
  [
    "a picture of the file for folders",
    carried(
      "http://schemas.openxmlformats.org/package/2006/relationships/metadata/thumbnail",
      "docProps/thumbnail.jpeg",
      "",
    ),
  ],
  ["data of another program", carried(`${OFFICE}/customXml`, "../customXml/item1.xml")],
  ["a photo beside the cells", drawing("Results", two(PICTURE, from(20, 60), to(24, 70)))],
  [
    "a page number that starts elsewhere",
    sheet("Results", "<pageSetup ", '<pageSetup firstPageNumber="92" useFirstPageNumber="1" '),
  ],
  [
    "a chart that is not shown",
    part(DRAWING, /<xdr:cNvPr ([^>]*)name="Chart 1"/, '<xdr:cNvPr $1 hidden="1" name="Chart 1"'),
  ],
];

/** The list of sheets, names, texts and parts that come with the file, of the second round and of the third. */
export const FILE_KINDS: readonly Forgery[] = [...forgeries([...SECOND, ...THIRD]), ...accusingNobody(NAMED)];
