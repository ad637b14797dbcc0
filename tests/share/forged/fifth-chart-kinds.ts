import type { ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";
import {
  accusingNobody,
  from as begin,
  CHART,
  COMPATIBLE,
  DRAWING,
  drawing as drawn,
  to as end,
  forgeries,
  type Kind,
  type Make,
  OFFICE,
  PICTURE,
  part,
  two,
} from "./makes";

const chart = (from: string | RegExp, to: string): Make => part(CHART, from, to);
const drawing = (from: string | RegExp, to: string): Make => part(DRAWING, from, to);
const frameOf = (id: string) =>
  `<xdr:graphicFrame><a:graphic><a:graphicData><c:chart xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" xmlns:r="${OFFICE}" r:id="${id}"/></a:graphicData></a:graphic></xdr:graphicFrame>`;

/** Puts a chart of other numbers beside the workbook's own, which the drawing can name. */
const withOther =
  (make: Make): Make =>
  (file) => {
    const other = file.parts.get(CHART)!.replace(/\$F\$81:\$G\$81/g, "$$F$$84:$$G$$84");
    file.related(DRAWING, "rId9", `${OFFICE}/chart`, "../charts/chart9.xml", other);
    make(file);
  };
const WORDS = '<a:rPr sz="1200" b="1"/>';
const words = (attributes: string, inside = ""): Make =>
  chart(WORDS, `<a:rPr sz="1200" b="1" ${attributes}>${inside}</a:rPr>`);
const filled = '<c:spPr><a:solidFill><a:srgbClr val="003C30"/></a:solidFill></c:spPr>';
const line = (width: number, colour: string) =>
  `<a:ln w="${width}"><a:solidFill><a:srgbClr val="${colour}"/></a:solidFill></a:ln>`;
const exchanged = (one: string, other: string) => (file: ForgedFile) => {
  const text = file.parts.get(CHART)!;
  file.parts.set(CHART, text.replaceAll(one, "\u0001").replaceAll(other, one).replaceAll("\u0001", other));
};

const CHARTS: readonly Kind[] = [
  ["the names of two series exchanged", exchanged("$D$81<", "$D$84<")],
  ["the numbers of two series exchanged", exchanged("$F$81:$G$81", "$F$84:$G$84")],
  [
    "the words along an axis and a series' numbers exchanged",
    (file) => {
      const text = file.parts.get(CHART)!;
      const [cat, val] = ["cat", "val"].map((name) => new RegExp(`<c:${name}>(.*?)</c:${name}>`).exec(text)![1]!);
      file.parts.set(
        CHART,
        text
          .replace(cat!, "\u0001")
          .replace(val!, () => cat!)
          .replace("\u0001", () => val!),
      );
    },
  ],
  [
    "the titles of two axes exchanged",
    (file) => {
      file.change(CHART, "<a:t></a:t>", "<a:t>Currency a year.</a:t>");
      file.change(CHART, "<a:t>Currency a year</a:t>", "<a:t></a:t>");
      file.change(CHART, "<a:t>Currency a year.</a:t>", "<a:t>Currency a year</a:t>");
    },
  ],
  [
    "the title of a chart written on an axis too",
    chart("<a:t></a:t>", "<a:t>Cost of a year, needed now and after</a:t>"),
  ],
  [
    "the name of a series in another one's place",
    chart(/'?(&apos;)?Cost(&apos;)?'?!\$D\$84/, "&apos;Cost&apos;!$$D$$81"),
  ],
  [
    "series of a chart in another order",
    (file) => {
      file.change(CHART, '<c:order val="0"/>', '<c:order val="9"/>');
    },
  ],
  [
    "columns of a chart filled white, their own colour on a line",
    chart(filled, `<c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill>${line(9525, "003C30")}</c:spPr>`),
  ],
  [
    "columns of a chart covered by their own white edges",
    chart(filled, filled.replace("</c:spPr>", `${line(900_000, "FFFFFF")}</c:spPr>`)),
  ],
  [
    "columns of a chart that fade away at their edges",
    chart(filled, filled.replace("</c:spPr>", '<a:effectLst><a:softEdge rad="1270000"/></a:effectLst></c:spPr>')),
  ],
  [
    "the colours of a chart's words exchanged with paper",
    chart(
      "<c:roundedCorners",
      '<c:clrMapOvr bg1="dk1" tx1="lt1" bg2="dk2" tx2="lt2" accent1="accent1" accent2="accent2" accent3="accent3" accent4="accent4" accent5="accent5" accent6="accent6" hlink="hlink" folHlink="folHlink"/><c:roundedCorners',
    ),
  ],
  ["columns below nought left white", chart(/<c:cat>/g, '<c:invertIfNegative val="1"/><c:cat>')],
  ["gaps of a chart drawn as noughts", chart('dispBlanksAs val="gap"', 'dispBlanksAs val="zero"')],
  ["words along an axis pushed out of a chart", chart('lblOffset val="100"', 'lblOffset val="1000"')],
  ["words of a chart in a font of signs", words("", '<a:latin typeface="Wingdings"/>')],
  ["words of a chart in signs by number", words("", '<a:sym typeface="Wingdings" charset="2"/>')],
  ["words of a chart struck out", words('strike="sngStrike"')],
  ["words of a chart raised over each other", words('baseline="300000"')],
  ["words of a chart spread apart", words('spc="100000"')],
  ["words of a chart of which only an edge is drawn", words("", line(9525, "FFFFFF"))],
  ["huge words of a chart over what it draws", chart('sz="1200"', 'sz="40000"')],
  ["words of a chart from right to left", chart("<a:p><a:r><a:rPr", '<a:p><a:pPr rtl="1"/><a:r><a:rPr')],
  [
    "a table of numbers under a chart",
    chart("</c:plotArea>", '<c:dTable><c:showKeys val="1"/></c:dTable></c:plotArea>'),
  ],
  [
    "a chart that follows a pivot table",
    chart("<c:chart>", '<c:pivotSource><c:name>[x.xlsx]Cost!P</c:name><c:fmtId val="0"/></c:pivotSource><c:chart>'),
  ],
  ["a chart that counts days from 1904", chart("<c:lang", '<c:date1904 val="1"/><c:lang')],
  ["a chart that leaves out hidden columns", chart('plotVisOnly val="0"', 'plotVisOnly val="1"')],
  ["thick lines of a grid in the colour of paper", chart(/w="9525"/g, 'w="2000000"')],
];

const DRAWINGS: readonly Kind[] = [
  [
    "the chart a second time, over figures",
    drawing(/<xdr:twoCellAnchor>(.*?)<\/xdr:twoCellAnchor>/, `$&${two(frameOf("rId1"), begin(0, 0), end(4, 36))}`),
  ],
  [
    "another chart, by an attribute that only looks right",
    withOther(drawing(/ r:id="rId1"/, ' xmlns:z="urn:z" z:id="rId1" r:id="rId9"')),
  ],
  [
    "another chart for programs that do not know a word",
    withOther(
      drawing(
        /<xdr:graphicFrame.*<\/xdr:graphicFrame>/,
        `<mc:AlternateContent xmlns:mc="${COMPATIBLE}"><mc:Choice xmlns:z="urn:z" Requires="z">$&</mc:Choice><mc:Fallback>${frameOf("rId9")}</mc:Fallback></mc:AlternateContent>`,
      ),
    ),
  ],
  [
    "another chart behind a word of another namespace",
    withOther(
      drawing(
        "<c:chart ",
        '<z:chart xmlns:z="urn:z" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="rId1"/><c:chart ',
      ),
    ),
  ],
  ["a chart that is not printed", drawing("<xdr:clientData/>", '<xdr:clientData fPrintsWithSheet="0"/>')],
  [
    "a chart whose frame leads elsewhere when it is chosen",
    drawing(
      '<xdr:cNvPr id="1" name="Chart 1"/>',
      `<xdr:cNvPr id="1" name="Chart 1"><a:hlinkClick xmlns:r="${OFFICE}" r:id="rId1" tooltip="Approved"/></xdr:cNvPr>`,
    ),
  ],
  [
    "other words for those who hear a chart",
    drawing('name="Chart 1"', 'name="Chart 1" descr="Approved by the authority"'),
  ],
  ["a photo far beside, for which pages shrink", drawn("Results", two(PICTURE, begin(600, 4), end(603, 4)))],
  ["a chart that runs a macro when it is chosen", drawing('macro=""', 'macro="Approve"')],
];

const NAMED: readonly Kind[] = [
  ["a chart that its sheet no longer asks for", (file) => file.onSheet("Cost", /<drawing [^>]*\/>/, "")],
  ["a chart with other words kept", chart("<c:v>Water</c:v>", "<c:v>Savings</c:v>")],
];

/** Charts of the fifth round, tried on 29 November 2026. */
export const FIFTH_CHART_KINDS: readonly Forgery[] = [...forgeries([...CHARTS, ...DRAWINGS]), ...accusingNobody(NAMED)];
