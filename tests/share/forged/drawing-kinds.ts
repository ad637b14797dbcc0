import type { Forgery } from "./kinds";
import {
  both,
  CHART,
  DRAWING,
  drawing,
  forgeries,
  from,
  type Kind,
  type Make,
  OFFICE,
  olderDrawing,
  PICTURE,
  part,
  to,
  two,
} from "./makes";

const TEXT_BOX = "<xdr:sp><xdr:txBody><a:p><a:r><a:t>92.0</a:t></a:r></a:p></xdr:txBody></xdr:sp>";
const chart = (from: string | RegExp, to: string): Make => part(CHART, from, to);

const SECOND: readonly Kind[] = [
  [
    "a picture that reaches over figures from beside them",
    drawing(
      "Results",
      `<xdr:oneCellAnchor>${from(20, 60, -90_000_000)}<xdr:ext cx="9000000" cy="9000000"/>${PICTURE}<xdr:clientData/></xdr:oneCellAnchor>`,
    ),
  ],
  [
    "a picture with its place by points",
    drawing(
      "Results",
      `<xdr:absoluteAnchor><xdr:pos x="0" y="0"/><xdr:ext cx="9000000" cy="9000000"/>${PICTURE}<xdr:clientData/></xdr:absoluteAnchor>`,
    ),
  ],
  ["a picture over the empty cells of a report", drawing("Report", two(PICTURE, from(0, 0), to(10, 3)))],
  [
    "a group of shapes beside, with a text box",
    drawing("Results", two(`<xdr:grpSp>${PICTURE}${TEXT_BOX}</xdr:grpSp>`, from(1, 10), to(2, 12))),
  ],
  ["ink over figures", drawing("Results", two('<xdr:contentPart r:id="rId1" xmlns:r="x"/>', from(1, 10), to(2, 12)))],
  [
    "a picture over the chart",
    (file) => {
      const anchor = /<xdr:from>[\s\S]*?<\/xdr:to>/.exec(file.parts.get("xl/drawings/drawing1.xml")!)![0];
      file.change(
        "xl/drawings/drawing1.xml",
        "</xdr:wsDr>",
        `<xdr:twoCellAnchor>${anchor}<xdr:pic/><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>`,
      );
    },
  ],
  [
    "the chart moved over figures",
    (file) => file.change("xl/drawings/drawing1.xml", /<xdr:from>[\s\S]*?<\/xdr:to>/, `${from(0, 2)}${to(7, 30)}`),
  ],
  [
    "the chart made tiny",
    (file) => {
      const begin = /<xdr:from>[\s\S]*?<\/xdr:from>/.exec(file.parts.get("xl/drawings/drawing1.xml")!)![0];
      file.change("xl/drawings/drawing1.xml", /<xdr:to>[\s\S]*?<\/xdr:to>/, begin.replaceAll("from>", "to>"));
    },
  ],
  [
    "a chart with labels typed by hand",
    chart(
      "<c:cat>",
      '<c:dLbls><c:dLbl><c:idx val="0"/><c:tx><c:rich><a:p xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><a:r><a:t>92.0</a:t></a:r></a:p></c:rich></c:tx></c:dLbl></c:dLbls><c:cat>',
    ),
  ],
  [
    "a chart whose axis has another format",
    chart(/<c:axPos val="l"\/>/, '<c:axPos val="l"/><c:numFmt formatCode="&quot;0&quot;" sourceLinked="0"/>'),
  ],
  [
    "a chart with numbers of its own",
    chart(
      /<c:val>[\s\S]*?<\/c:val>/,
      '<c:val><c:numLit><c:ptCount val="1"/><c:pt idx="0"><c:v>1</c:v></c:pt></c:numLit></c:val>',
    ),
  ],
  ["a chart in one colour", chart(/<a:srgbClr val="80CDC1"\/>/, '<a:srgbClr val="FFFFFF"/>')],
  ["a chart with a line laid over", chart("<c:cat>", "<c:trendline/><c:cat>")],
  [
    "a chart with shapes drawn in it",
    (file) => {
      file.change(
        "xl/charts/chart1.xml",
        "</c:chartSpace>",
        `<c:userShapes xmlns:r="${OFFICE}" r:id="rId1"/></c:chartSpace>`,
      );
      file.related("xl/charts/chart1.xml", "rId1", `${OFFICE}/chartUserShapes`, "../drawings/drawing44.xml", "<x/>");
    },
  ],
  [
    "a shape of an old program over cells",
    olderDrawing(
      '<v:rect style="position:absolute;left:0;top:0;width:900pt;height:900pt"><v:textbox>CU 92.0</v:textbox></v:rect>',
    ),
  ],
  [
    "a note shown by its style",
    olderDrawing(
      '<v:shape style="position:absolute;visibility:visible"><x:ClientData ObjectType="Note"><x:Row>11</x:Row></x:ClientData></v:shape>',
    ),
  ],
  [
    "a picture in the header",
    (file) => {
      file.onSheet("Results", "<oddFooter>", "<oddHeader>&amp;C&amp;G</oddHeader><oddFooter>");
      file.onSheet("Results", "</headerFooter>", `</headerFooter><legacyDrawingHF xmlns:r="${OFFICE}" r:id="rId69"/>`);
      file.related(file.part("Results"), "rId69", `${OFFICE}/vmlDrawing`, "../drawings/vmlDrawing3.vml", "<xml/>");
    },
  ],
];

const SHOWN = 'style="position:absolute;margin-left:0;margin-top:0;width:900pt;height:900pt"';
const note = (shape: string): Make =>
  both(olderDrawing(shape), (file) =>
    file.related(
      file.part("Results"),
      "rId96",
      `${OFFICE}/comments`,
      "../comments9.xml",
      '<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author>x</author></authors><commentList><comment ref="B12" authorId="0"><text><t>CU 92.0</t></text></comment></commentList></comments>',
    ),
  );

const THIRD: readonly Kind[] = [
  [
    "a note that some programs show, since its style hides it nowhere",
    note(
      `<v:shape ${SHOWN}><x:ClientData ObjectType="Note"><x:Row>11</x:Row><x:Column>1</x:Column></x:ClientData></v:shape>`,
    ),
  ],
  [
    "a drawing whose part is written in capitals",
    (file) => {
      file.onSheet("Results", "</headerFooter>", `</headerFooter><drawing xmlns:r="${OFFICE}" r:id="rId79"/>`);
      file.related(
        file.part("Results"),
        "rId79",
        `${OFFICE}/drawing`,
        "../drawings/drawing79.xml",
        `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"><xdr:absoluteAnchor><xdr:pos x="0" y="0"/><xdr:ext cx="9000000" cy="9000000"/><xdr:pic/><xdr:clientData/></xdr:absoluteAnchor></xdr:wsDr>`,
      );
      const rels = file.part("Results").replace("worksheets/", "worksheets/_rels/").concat(".rels");
      file.change(rels, "drawing79.xml", "Drawing79.xml");
    },
  ],
  [
    "a text box in a group with the chart",
    part(
      DRAWING,
      /<xdr:graphicFrame[\s\S]*?<\/xdr:graphicFrame>/,
      "<xdr:grpSp>$&<xdr:sp><xdr:txBody><a:p><a:r><a:t>92.0</a:t></a:r></a:p></xdr:txBody></xdr:sp></xdr:grpSp>",
    ),
  ],
  ["a chart of another kind", chart(/<(\/?)c:barChart>/g, "<$1c:areaChart>")],
  ["a chart in shares of the whole", chart('val="stacked"', 'val="percentStacked"')],
  [
    "a column of the chart that is not drawn",
    chart("<c:cat>", '<c:dPt><c:idx val="1"/><c:spPr><a:noFill/></c:spPr></c:dPt><c:cat>'),
  ],
  [
    "a series of the chart drawn as a line only",
    chart(
      /<c:spPr><a:solidFill>(<a:srgbClr val="003C30"\/>)<\/a:solidFill><\/c:spPr>/,
      "<c:spPr><a:noFill/><a:ln><a:solidFill>$1</a:solidFill></a:ln></c:spPr>",
    ),
  ],
  [
    "a picture behind the chart's columns",
    chart("</c:plotArea>", '<c:spPr><a:blipFill><a:blip r:embed="rId9"/></a:blipFill></c:spPr></c:plotArea>'),
  ],
  ["a chart whose columns begin at another number", chart('<c:crosses val="autoZero"/>', '<c:crossesAt val="2000"/>')],
  [
    "a chart in thousands",
    chart(/(<c:crossBetween [^>]*>)/, '$1<c:dispUnits><c:builtInUnit val="thousands"/></c:dispUnits>'),
  ],
  ["a chart without its key", chart(/<c:legend>.*<\/c:legend>/, "")],
  [
    "a chart with white words",
    chart(
      '<a:rPr sz="1200" b="1"/>',
      '<a:rPr sz="1200" b="1"><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill></a:rPr>',
    ),
  ],
  ["a chart with tiny words", chart('sz="1200"', 'sz="100"')],
  [
    "a chart on black",
    chart("</c:plotArea>", '<c:spPr><a:solidFill><a:srgbClr val="000000"/></a:solidFill></c:spPr></c:plotArea>'),
  ],
  ["an axis of the chart not shown", chart(/<c:delete val="0"\/>/, '<c:delete val="1"/>')],
  [
    "a chart that leaves out a series in some programs",
    chart(
      "</c:barChart>",
      '<c:extLst><c:ext uri="{02D57815-91ED-43cb-92C2-25804820EDAC}" xmlns:c15="http://schemas.microsoft.com/office/drawing/2012/chart"><c15:filteredBarSeries/></c:ext></c:extLst></c:barChart>',
    ),
  ],
];

/** Pictures, shapes, notes and charts, of the second round and of the third. */
export const DRAWING_KINDS: readonly Forgery[] = forgeries([...SECOND, ...THIRD]);
