import { strFromU8, strToU8, zipSync } from "fflate";
import { foreignParts } from "./foreign-parts";
import { HOSTILE, type HostileFile } from "./hostile-files";

type Parts = Record<string, Uint8Array>;
/** A number from 0 up to one below `most`. */
type Draw = (most: number) => number;

const SHEET = "xl/worksheets/sheet1.xml";
const BOOK = "xl/workbook.xml";
const STYLES = "xl/styles.xml";
const RELATIONS = "xl/_rels/workbook.xml.rels";

/** Mulberry32: the same files in each run. */
function drawing(seed: number): Draw {
  let state = seed;
  return (most) => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return Math.floor((((t ^ (t >>> 14)) >>> 0) / 4294967296) * most);
  };
}

const pick = <T>(draw: Draw, all: readonly T[]): T => all[draw(all.length)]!;

function changed(part: string, from: string | RegExp, to: string): Parts {
  const parts = foreignParts();
  return { ...parts, [part]: strToU8(strFromU8(parts[part]!).replace(from, () => to)) };
}

const cell = (text: string) => changed(SHEET, '<c r="A2"><v>20</v></c>', text);
const before = (mark: string, text: string) => changed(SHEET, mark, text + mark);
const rule = (formula: string) =>
  before(
    "<dataValidations",
    `<conditionalFormatting sqref="A2:A4"><cfRule type="expression" priority="9"><formula>${formula}</formula></cfRule></conditionalFormatting>`,
  );

const PLACES = [
  "A0",
  "XFE1",
  "A1048577",
  "1A",
  "A",
  "1",
  "",
  "A1:",
  ":B2",
  "A1:B2:C3",
  "$A$0",
  "R1C1",
  "A-1",
  "ZZZZ9",
  "A1 B0",
];
const RANGES = ["A1:XFD1048576", "A:A", "1:1048576", "A:XFD", "A1:A1048576", "B2:A1", "A1:XFE2"];
const FORMULAS = [
  "LET(f,LAMBDA(f,f(f)),f(f))",
  "MAKEARRAY(9000,9000,LAMBDA(r,c,r*c))",
  'REPT("x",999999999)',
  "SEQUENCE(1048576,16384)",
  "REDUCE(0,SEQUENCE(1000000),LAMBDA(a,b,a+b))",
  "OFFSET(A1,0,0,1048576,16384)",
  "SUM(A:XFD)",
  'INDIRECT("A"&amp;ROW())',
  "A2",
  "SUM(A1:A9)",
  "1/0+",
  "))((",
  "'nowhere'!A1",
  "[1]Sheet1!A1",
  "MMULT(SEQUENCE(2000,2000),SEQUENCE(2000,2000))",
  "CANFALL.SC.CAN(A1:ZZ100000)",
  'TEXTJOIN(",",TRUE,A1:XFD9999)',
];
const NUMBERS = ["1e999", "-1e400", "NaN", "0x14", "1,5", "", " ", "--1", "1e", "∞", "2958466", "-1", "1e308"];
const ENTITIES = ["&bomb;", "&#0;", "&#xFFFF;", "&amp", "&lt;&#x1F;", "&nbsp;"];

const without = (name: string): Parts => {
  const { [name]: _, ...rest } = foreignParts();
  return rest;
};

type Kind = [wrong: string, make: (draw: Draw) => Uint8Array];
const parts = (make: (draw: Draw) => Parts) => (draw: Draw) => zipSync(make(draw));

const KINDS: Kind[] = [
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
  [
    "a cut archive",
    (draw) => {
      const file = zipSync(foreignParts());
      return file.slice(0, draw(file.length));
    },
  ],
  [
    "an archive with bytes turned",
    (draw) => {
      const file = zipSync(foreignParts());
      for (let i = 0; i < 20; i += 1) file[draw(file.length)] = draw(256);
      return file;
    },
  ],
  [
    "an archive that grows without end",
    (draw) =>
      zipSync(
        { ...foreignParts(), "xl/media/big.bin": new Uint8Array(150_000_000 + draw(100) * 1_000_000) },
        { level: 9 },
      ),
  ],
  ["no archive", (draw) => Uint8Array.from({ length: draw(3000) }, () => draw(256))],
];

/** A file that no program should write: the known ones come first, then kinds of damage drawn again and again. */
export function hostileFile(number: number, seed = 16): HostileFile {
  const known = HOSTILE[number];
  if (known) return { wrong: known[0], file: zipSync(known[1]()) };
  const i = number - HOSTILE.length;
  const [wrong, make] = KINDS[i % KINDS.length]!;
  return { wrong: `${wrong} (${i})`, file: make(drawing(seed * 10_000 + i)) };
}
