import type { Forgery } from "./kinds";
import {
  both,
  CHART,
  COMPATIBLE,
  DRAWING,
  drawing,
  everyRow,
  font,
  forgeries,
  from,
  type Kind,
  lookAt,
  OFFICE,
  olderDrawing,
  PICTURE,
  part,
  rowOf,
  sheet,
  to,
  two,
} from "./makes";

const OWN = 'xmlns:z="urn:z"';

const SHEETS: readonly Kind[] = [
  ["every row 290 points tall, for which the page shrinks", everyRow("Results", () => 290)],
  ["every row four times as tall, for which the page shrinks", everyRow("Results", () => 120)],
  [
    "a row between the figures that is 409 points tall",
    sheet("Results", /<row r="5" /, '<row r="4" ht="409" customHeight="1"/><row r="5" '),
  ],
  [
    "ever row without a height as tall as a page",
    sheet("Results", 'defaultRowHeight="15"', 'defaultRowHeight="299" customHeight="1"'),
  ],
  [
    "every column almost three times as wide, for which the page shrinks",
    (file) =>
      file.parts.set(
        file.part("Results"),
        file.parts
          .get(file.part("Results"))!
          .replace(/width="([\d.]+)"/g, (_, w: string) => `width="${2.9 * Number(w)}"`),
      ),
  ],
  [
    "the last line of a sentence cut off by a row a quarter lower",
    both(rowOf("Report", 3, 'ht="33.2" customHeight="1"')),
  ],
  [
    "a sentence in larger letters than its row has room for",
    lookAt("Report", "A3", font(/<sz [^>]*\/>/, '<sz val="13.5"/>')),
  ],
  [
    "cells that cannot be chosen, so that no formula is seen",
    sheet("Results", "<sheetProtection ", '<sheetProtection selectLockedCells="1" selectUnlockedCells="1" '),
  ],
  [
    "a note shown by a style given twice",
    (file) => {
      olderDrawing(
        '<v:shape style="visibility:hidden;visibility:visible"><x:ClientData ObjectType="Note"><x:Row>7</x:Row><x:Column>1</x:Column></x:ClientData></v:shape>',
      )(file);
      file.related(
        file.part("Results"),
        "rId94",
        `${OFFICE}/comments`,
        "../comments9.xml",
        '<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author>x</author></authors><commentList><comment ref="B8" authorId="0"><text><t>CU 92.0</t></text></comment></commentList></comments>',
      );
    },
  ],
  [
    "a photo placed by elements of one's own first",
    (file) =>
      drawing(
        "Results",
        two(
          PICTURE,
          `<z:from ${OWN}><z:col>9</z:col><z:row>9</z:row></z:from><z:to ${OWN}><z:col>12</z:col><z:row>12</z:row></z:to>`,
          from(1, 5) + to(3, 9),
        ),
      )(file),
  ],
  ["a photo placed twice", drawing("Results", two(PICTURE, from(9, 9) + to(12, 12), from(1, 5) + to(3, 9)))],
  [
    "a photo whose corner is written with letters",
    drawing("Results", two(PICTURE, from(9, 9).replace(">9</xdr:col>", ">0x9</xdr:col>"), to(12, 12))),
  ],
  ["a photo from the far right to the left", drawing("Results", two(PICTURE, from(9, 3), to(0, 20)))],
  [
    "a relations part by another case of its name",
    (file) => {
      file.onSheet("Results", "</headerFooter>", `</headerFooter><drawing xmlns:r="${OFFICE}" r:id="rId1"/>`);
      const [folder, name] = [file.part("Results").replace(/[^/]*$/, ""), file.part("Results").replace(/.*\//, "")];
      file.parts.set(
        `${folder}_rels/${name.toUpperCase()}.rels`,
        `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="${OFFICE}/drawing" Target="../drawings/drawing9.xml"/></Relationships>`,
      );
      file.parts.set(
        "xl/drawings/drawing9.xml",
        `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing">${two(PICTURE, from(1, 5), to(3, 9))}</xdr:wsDr>`,
      );
    },
  ],
  [
    "a drawing to which no relation leads",
    sheet("Results", "</headerFooter>", `</headerFooter><drawing xmlns:r="${OFFICE}" r:id="rId91"/>`),
  ],
  [
    "a chart by another case of its name",
    (file) => {
      file.parts.set("xl/charts/CHART1.xml", file.parts.get(CHART)!);
      file.parts.delete(CHART);
    },
  ],
  [
    "a page number that is made to read as a figure",
    sheet("Results", "<headerFooter>", "<headerFooter><oddHeader>&amp;C&amp;N&amp;P of &amp;N&amp;N</oddHeader>"),
  ],
  [
    "a panes' split by a state of its own",
    sheet(
      "Results",
      /<sheetView ([^>]*)\/>/,
      '<sheetView $1><pane ySplit="20" topLeftCell="A30" activePane="bottomLeft" state="frozensplit"/></sheetView>',
    ),
  ],
  ["text boxes in the group of a chart's frame", part(DRAWING, "</xdr:graphicFrame>", "</xdr:graphicFrame><xdr:sp/>")],
  ["a chart whose frame is turned", part(DRAWING, "<xdr:xfrm>", '<xdr:xfrm rot="10800000" flipH="1">')],
  [
    "a chart in an element that another program unwraps",
    part(
      DRAWING,
      "<xdr:clientData/>",
      `<z:w ${OWN} xmlns:mc="${COMPATIBLE}" mc:Ignorable="z" mc:ProcessContent="z:w"><xdr:pic/></z:w><xdr:clientData/>`,
    ),
  ],
];

/** The sheets of that round. */
export const SIXTH_SHEET_KINDS: readonly Forgery[] = forgeries(SHEETS);
