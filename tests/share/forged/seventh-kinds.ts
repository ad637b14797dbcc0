import {
  accusingNobody,
  book,
  CHART,
  COMPATIBLE,
  colour,
  DRAWING,
  forgeries,
  type Kind,
  look,
  part,
  sheet,
} from "./makes";

const RELATIONS = "xl/_rels/workbook.xml.rels";
const AXIS = '<c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:crossAx val="100000000"/>';
const numbersAs = (format: string) => part(CHART, AXIS, `<c:numFmt formatCode="${format}" sourceLinked="0"/>${AXIS}`);
const unwrapped = (name: string, end: string, inside: string) =>
  part(
    name,
    end,
    `<mc:AlternateContent xmlns:mc="${COMPATIBLE}"><mc:Fallback>${inside}</mc:Fallback></mc:AlternateContent>${end}`,
  );

const KINDS: readonly Kind[] = [
  ["a chart in a style on a dark ground", part(CHART, "<c:chart>", '<c:style val="48"/><c:chart>')],
  [
    "a chart in a style on a dark ground, for newer programs",
    part(
      CHART,
      "<c:chart>",
      `<mc:AlternateContent xmlns:mc="${COMPATIBLE}"><mc:Choice Requires="c14" xmlns:c14="http://schemas.microsoft.com/office/drawing/2007/8/2/chart"><c14:style val="148"/></mc:Choice><mc:Fallback><c:style val="2"/></mc:Fallback></mc:AlternateContent><c:chart>`,
    ),
  ],
  [
    "columns edged in white, thin enough for a line",
    part(
      CHART,
      '<a:srgbClr val="80CDC1"/></a:solidFill>',
      '<a:srgbClr val="80CDC1"/></a:solidFill><a:ln w="38100"><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill></a:ln>',
    ),
  ],
  ["the money of an axis written as years", numbersAs("yy")],
  ["the numbers of an axis written as strokes", numbersAs("-")],
  ["cells printed over the code at the foot", sheet("Report", 'bottom="0.7"', 'bottom="0"')],
  ["text printed off the page by a margin below 0", sheet("Results", 'left="0.5"', 'left="-3"')],
  [
    "what is printed, given of no sheet",
    book("</definedNames>", '<definedName name="_xlnm.Print_Area">Results!$A$1:$F$9</definedName></definedNames>'),
  ],
  ["a sheet that opens far below its cells", sheet("Results", "<sheetView ", '<sheetView topLeftCell="AZ9000" ')],
  ["a verdict in green letters", look("Verdict_CU", colour('rgb="FF00803C"'))],
  ["a label written by the numbers of its letters", part("xl/sharedStrings.xml", ">Results<", ">Re_x0073_ults<")],
  ["relations from another base", part(RELATIONS, "<Relationships ", '<Relationships xml:base="other/" ')],
  ["a relation with blanks around its name", part(RELATIONS, 'Id="rId8"', 'Id=" rId8"')],
  [
    "a relation that some programs unwrap",
    unwrapped(
      RELATIONS,
      "</Relationships>",
      '<Relationship Id="rId98" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet5.xml"/>',
    ),
  ],
  [
    "a kind of content that some programs unwrap",
    unwrapped(
      "[Content_Types].xml",
      "</Types>",
      '<Override PartName="/xl/worksheets/sheet5.xml" ContentType="application/vnd.ms-excel.macrosheet+xml"/>',
    ),
  ],
];

const NAMED: readonly Kind[] = [
  ["words in the name of a chart", part(DRAWING, 'name="Chart 1"', 'name="CU 92.0, approved"')],
];

/** Kinds of a seventh round. */
export const SEVENTH_KINDS = [...forgeries(KINDS), ...accusingNobody(NAMED)];

/** Texts typed before the copy was made, so that list and code fit them. */
export const TYPED_TEXTS: readonly (readonly [kind: string, text: string, named?: true])[] = [
  ["a text that runs backwards", "North \u202e0.29 UC\u202c"],
  ["a text isolated from right to left", "North \u20670.29 UC\u2069"],
  ["letters struck by signs that join", "N\u0336o\u0336r\u0336t\u0336h"],
  ["a sign of nobody's font", "North \ue000"],
  ["digits that are not seen", "North\u{e0039}\u{e0032}"],
  ["a text pushed out of its cell by empty lines", `${"\n".repeat(12)}North`],
  ["a text under its last empty lines", `North${"\n".repeat(30)}CU 92.0`],
  ["a text behind long blanks", `North${" ".repeat(300)}CU 92.0 % within`],
  ["a text behind tabs", "North\t\t\t\tCU 92.0"],
  ["a name with a letter of another script", "N\u043erth", true],
  ["a name with a sign of no width", "No\u200brth", true],
  ["a name that is nothing but a filler", "\u3164", true],
];
