import type { Forgery } from "./kinds";
import { accusingNobody, book, both, CHART, COMPATIBLE, forgeries, type Kind, OFFICE, part, sheet } from "./makes";

const STYLES = "xl/styles.xml";
const STRICT_RELATIONS = "http://purl.oclc.org/ooxml/officeDocument/relationships";
const OWN = 'xmlns:z="urn:z"';

const FILES: readonly Kind[] = [
  [
    "a sheet named by two relations, of which programs read one or the other",
    (file) => {
      const id = /<sheet [^>]*name="Results"[^>]*r:id="(\w+)"/.exec(file.parts.get("xl/workbook.xml")!)![1]!;
      file.related(
        "xl/workbook.xml",
        "rId96",
        `${OFFICE}/worksheet`,
        "worksheets/sheet96.xml",
        file.parts.get(file.part("Results"))!.replaceAll("By area", "Approved"),
      );
      file.inBook(
        /(<sheet [^>]*name="Results"[^>]*)r:id="\w+"/,
        `$1 xmlns:s="${STRICT_RELATIONS}" s:id="${id}" r:id="rId96"`,
      );
    },
  ],
  [
    "looks in an element that some programs unwrap",
    part(
      STYLES,
      "<cellXfs>",
      `<cellXfs><z:w ${OWN}><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></z:w>`,
    ),
  ],
  [
    "fonts in an element that some programs unwrap",
    (file) => {
      file.change(
        STYLES,
        /<fonts([^>]*)>/,
        `<fonts$1><z:w ${OWN} xmlns:mc="${COMPATIBLE}" mc:Ignorable="z" mc:ProcessContent="z:w"><font><sz val="1"/></font></z:w>`,
      );
    },
  ],
  [
    "a sheet in an element that some programs unwrap",
    (file) => {
      file.related(
        "xl/workbook.xml",
        "rId96",
        `${OFFICE}/worksheet`,
        "worksheets/sheet96.xml",
        file.parts.get(file.part("Results"))!,
      );
      file.inBook("</sheets>", `<z:w ${OWN}><sheet name="Results " sheetId="96" r:id="rId96"/></z:w></sheets>`);
    },
  ],
  [
    "a window out of sight in an element that some programs unwrap",
    book("<sheets>", `<bookViews><z:w ${OWN}><workbookView visibility="hidden"/></z:w></bookViews><sheets>`),
  ],
  [
    "names in an element that some programs unwrap",
    book("</definedNames>", `<z:w ${OWN}><definedName name="Used_CU">Results!$B$9</definedName></z:w></definedNames>`),
  ],
  [
    "a cell in small letters beside its twin",
    (file) => {
      const [n, a] = file.place("Used_CU");
      file.cell(n, a, (tag) => `${tag}<c r="${a.toLowerCase()}"><v>92</v></c>`);
    },
  ],
  [
    "a chart with elements of one's own that some programs unwrap",
    part(CHART, "<c:plotArea>", `<c:plotArea><z:layout ${OWN}/>`),
  ],
  [
    "a chart whose cells are named twice, once for no program",
    part(CHART, /<c:val>/, `<z:val ${OWN}><z:f>Results!$A$1</z:f></z:val><c:val>`),
  ],
];

const NAMED: readonly Kind[] = [
  [
    "columns printed on pages of their own by a number of pages",
    sheet("Results", "<pageSetup ", '<pageSetup fitToWidth="6" '),
  ],
  [
    "a page break in every second column",
    sheet(
      "Results",
      "</headerFooter>",
      '</headerFooter><colBreaks count="2" manualBreakCount="2"><brk id="1" max="1048575" man="1"/><brk id="3" max="1048575" man="1"/></colBreaks>',
    ),
  ],
  [
    "several sheets chosen at once",
    both(
      sheet("Results", "<sheetView ", '<sheetView tabSelected="1" '),
      sheet("Report", "<sheetView ", '<sheetView tabSelected="1" '),
    ),
  ],
  [
    "changes that were tracked",
    (file) =>
      file.related(
        "xl/workbook.xml",
        "rId97",
        `${OFFICE}/revisionHeaders`,
        "revisions/revisionHeaders.xml",
        '<headers xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" guid="{00000000-0000-0000-0000-000000000000}"/>',
      ),
  ],
  ["a file that opens as one to repair", book("</definedNames>", '</definedNames><fileRecoveryPr repairLoad="1"/>')],
  [
    "a web page kept beside a sheet",
    book(
      "</definedNames>",
      '</definedNames><webPublishObjects count="1"><webPublishObject id="1" divId="x" destinationFile="\\\\x\\y.htm"/></webPublishObjects>',
    ),
  ],
  [
    "another base for links in the properties",
    (file) =>
      file.change(
        "docProps/app.xml",
        "</Properties>",
        "<HyperlinkBase>https://example.invalid/</HyperlinkBase></Properties>",
      ),
  ],
  ["a protection with a password", sheet("Results", "<sheetProtection ", '<sheetProtection password="CC1A" ')],
  [
    "the tabs of the first sheets pushed away",
    book("<sheets>", '<bookViews><workbookView firstSheet="12" activeTab="13"/></bookViews><sheets>'),
  ],
  [
    "a remark in a conversation without a note",
    (file) =>
      file.related(
        file.part("Results"),
        "rId92",
        "http://schemas.microsoft.com/office/2017/10/relationships/threadedComment",
        "../threadedComments/threadedComment1.xml",
        '<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="B8" dT="2026-01-01T00:00:00" personId="{0}" id="{1}"><text>CU is 92.0</text></threadedComment></ThreadedComments>',
      ),
  ],
];

/** The files of that round, and what of it accuses nobody. */
export const SIXTH_FILE_KINDS: readonly Forgery[] = [...forgeries(FILES), ...accusingNobody(NAMED)];
