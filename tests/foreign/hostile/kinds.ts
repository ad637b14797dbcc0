import { zipSync } from "fflate";
import { foreignParts } from "../foreign-parts";
import {
  BOOK,
  before,
  cell,
  changed,
  type Draw,
  ENTITIES,
  FORMULAS,
  NUMBERS,
  type Parts,
  PLACES,
  pick,
  RANGES,
  RELATIONS,
  rule,
  SHEET,
  STYLES,
  without,
} from "./pieces";

export type Kind = [wrong: string, make: (draw: Draw) => Uint8Array];
const parts = (make: (draw: Draw) => Parts) => (draw: Draw) => zipSync(make(draw));

/** Damage to the parts of a file. */
export const PART_KINDS: Kind[] = [
  ["a part is missing", parts((draw) => without(pick(draw, Object.keys(foreignParts()))))],
  [
    "a relationship is missing",
    parts((draw) => changed(RELATIONS, new RegExp(`<Relationship Id="rId${1 + draw(11)}"[^>]*>`), "")),
  ],
  [
    "a relationship leads nowhere",
    parts((draw) =>
      changed(
        RELATIONS,
        /Target="[^"]*"/,
        `Target="${pick(draw, ["../../up.xml", "gone.xml", "", "/", "http://x.invalid/a"])}"`,
      ),
    ),
  ],
  ["a cell has a bad address", parts((draw) => cell(`<c r="${pick(draw, PLACES)}"><v>20</v></c>`))],
  [
    "a row has a bad number",
    parts((draw) => changed(SHEET, '<row r="3">', `<row r="${pick(draw, ["0", "-1", "x", "1048577", "2", "1e3"])}">`)),
  ],
  ["an entity is undefined", parts((draw) => cell(`<c r="A2" t="str"><v>${pick(draw, ENTITIES)}</v></c>`))],
  [
    "merged cells overlap or are none",
    parts((draw) =>
      before(
        "<conditionalFormatting",
        `<mergeCells><mergeCell ref="A1:B2"/><mergeCell ref="${pick(draw, [...RANGES, ...PLACES, "B2:C3"])}"/></mergeCells>`,
      ),
    ),
  ],
  [
    "many merged cells",
    parts((draw) =>
      before(
        "<conditionalFormatting",
        `<mergeCells>${Array.from({ length: 200 + draw(2000) }, (_, i) => `<mergeCell ref="F${30 + i}:Z${30 + i}"/>`).join("")}</mergeCells>`,
      ),
    ),
  ],
  ["a formula never ends or can't be read", parts((draw) => cell(`<c r="A2"><f>${pick(draw, FORMULAS)}</f></c>`))],
  ["a rule's formula never ends", parts((draw) => rule(pick(draw, FORMULAS)))],
  ["a formula is too long", parts((draw) => cell(`<c r="A2"><f>1${"+1".repeat(4000 + draw(9000))}</f></c>`))],
  [
    "a formula has too many levels",
    parts((draw) => {
      const n = 40 + draw(3000);
      return cell(`<c r="A2"><f>${"(".repeat(n)}1${")".repeat(n)}</f></c>`);
    }),
  ],
  [
    "an array over much of the sheet",
    parts((draw) =>
      cell(
        `<c r="A2"><f t="array" ref="${pick(draw, [...RANGES, ...PLACES])}">${pick(draw, FORMULAS)}</f><v>1</v></c>`,
      ),
    ),
  ],
  [
    "a shared formula without its first cell",
    parts((draw) => cell(`<c r="A2"><f t="shared" si="${draw(99)}"/><v>1</v></c>`)),
  ],
  ["a number that is none", parts((draw) => cell(`<c r="A2"><v>${pick(draw, NUMBERS)}</v></c>`))],
  [
    "a date out of range",
    parts((draw) =>
      cell(
        `<c r="A2" s="5" t="${pick(draw, ["d", "n"])}"><v>${pick(draw, ["9999-99-99", "-5", "2958466", "1e12", "0000-00-00T00:00:00"])}</v></c>`,
      ),
    ),
  ],
  [
    "a cell of an unknown kind",
    parts((draw) =>
      cell(
        `<c r="A2" t="${pick(draw, ["x", "s", "e", "b", "shared"])}"><v>${pick(draw, ["-1", "9999999", "#WHAT!", "maybe", "1.5"])}</v></c>`,
      ),
    ),
  ],
  [
    "a style that is not there",
    parts((draw) => cell(`<c r="A2" s="${pick(draw, ["999999", "-1", "x", "4294967296"])}"><v>1</v></c>`)),
  ],
  [
    "styles that refer to each other or to none",
    parts((draw) => changed(STYLES, /xfId="\d"/g, `xfId="${pick(draw, ["1", "7", "-1", "99999999"])}"`)),
  ],
  [
    "a damaged style",
    parts((draw) =>
      changed(
        STYLES,
        pick(draw, [
          '<fonts count="3">',
          '<fills count="4">',
          '<cellXfs count="6">',
          '<dxfs count="2">',
          "</styleSheet>",
        ]),
        pick(draw, ["", "<a>", '<fonts count="-1">']),
      ),
    ),
  ],
  [
    "a check or format on a bad range",
    parts((draw) => changed(SHEET, /sqref="A(1:XFD1|2:A4)"/, `sqref="${pick(draw, [...PLACES, ...RANGES])}"`)),
  ],
  [
    "a huge stated size",
    parts((draw) => changed(SHEET, 'ref="A1:E12"', `ref="${pick(draw, [...RANGES, ...PLACES])}"`)),
  ],
  [
    "columns out of order or of no width",
    parts((draw) =>
      changed(
        SHEET,
        /<cols>.*<\/cols>/,
        `<cols><col min="${pick(draw, ["0", "5", "x", "16385"])}" max="${pick(draw, ["1", "99999999", "-1"])}" width="${pick(draw, ["-5", "NaN", "1e9", "0"])}"/></cols>`,
      ),
    ),
  ],
  [
    "a row of no height",
    parts((draw) => changed(SHEET, 'ht="22.5"', `ht="${pick(draw, ["-1", "NaN", "1e9", "0", ""])}"`)),
  ],
  [
    "a defined name that is none",
    parts((draw) =>
      changed(BOOK, ">2.34<", `>${pick(draw, [...FORMULAS, "#REF!", "Price", "", "'Bed 7'!A0", "&bomb;"])}<`),
    ),
  ],
  [
    "names of sheets that are none",
    parts((draw) =>
      changed(
        BOOK,
        'name="Secret"',
        `name="${pick(draw, ["", "BED 7", "a/b", "x".repeat(300), "[1]", "'", "__proto__"])}"`,
      ),
    ),
  ],
  [
    "a name of a sheet that is not there",
    parts((draw) => changed(BOOK, 'localSheetId="2"', `localSheetId="${pick(draw, ["9", "-1", "x", "99999"])}"`)),
  ],
  [
    "a drawing out of the sheet",
    parts((draw) =>
      changed(
        "xl/drawings/drawing1.xml",
        /<xdr:row>1<\/xdr:row>/,
        `<xdr:row>${pick(draw, ["-5", "99999999", "x", ""])}</xdr:row>`,
      ),
    ),
  ],
  [
    "a picture that is none",
    parts((draw) => ({ ...foreignParts(), "xl/media/image1.png": new Uint8Array(draw(2000)) })),
  ],
  [
    "a part that is no text",
    parts((draw) => ({
      ...foreignParts(),
      [pick(draw, [SHEET, BOOK, STYLES, "xl/comments1.xml"])]: Uint8Array.from({ length: 300 }, () => draw(256)),
    })),
  ],
  ["a note at a bad address", parts((draw) => changed("xl/comments1.xml", 'ref="A3"', `ref="${pick(draw, PLACES)}"`))],
  [
    "a table out of the sheet",
    parts((draw) => changed("xl/tables/table1.xml", /ref="A11:B12"/g, `ref="${pick(draw, [...PLACES, ...RANGES])}"`)),
  ],
  [
    "wrong kinds of content",
    parts((draw) =>
      changed(
        "[Content_Types].xml",
        /spreadsheetml\.[a-zA-Z]+\+xml|sheet\.main\+xml/,
        pick(draw, ["template.main+xml", "x", "sheet.macroEnabled.main+xml"]),
      ),
    ),
  ],
  [
    "tags nested without end",
    parts((draw) => changed("customXml/item1.xml", "<block>7</block>", "<a>".repeat(70 + draw(5000)))),
  ],
  [
    "a document type",
    parts((draw) =>
      changed(
        pick(draw, [SHEET, BOOK, STYLES]),
        /<(worksheet|workbook|styleSheet)/,
        '<!DOCTYPE a [<!ENTITY a "b">]><$1',
      ),
    ),
  ],
  [
    "frozen panes out of the sheet",
    parts((draw) =>
      changed(
        SHEET,
        "<selection",
        `<pane xSplit="${pick(draw, ["-1", "99999", "x"])}" ySplit="${pick(draw, ["-1", "9999999", "0.5"])}" state="frozen"/><selection`,
      ),
    ),
  ],
];
