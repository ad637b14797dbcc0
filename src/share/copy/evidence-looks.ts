import { appended, edited, tagEdit } from "../../xlsx/parts/edits";
import { isMain } from "../../xlsx/parts/namespaces";
import { childOf, xmlTree } from "../../xlsx/parts/xml-tree";

/** The looks of the Evidence sheet, as numbers of cell styles. */
export interface EvidenceLooks {
  title: number;
  heading: number;
  text: number;
  value: number;
  /** A measure, its figure with two decimals. */
  measure: number;
}

/** The format of a measure's figure; 2 is its number in every workbook. */
export const MEASURE_FORMAT = "0.00";
const MEASURE_FORMAT_NUMBER = 2;

const PLAIN: EvidenceLooks = { title: 0, heading: 0, text: 0, value: 0, measure: 0 };
const FONTS =
  '<font><b/><sz val="16"/><color rgb="FF543005"/><name val="Calibri"/><family val="2"/></font>' +
  '<font><b/><sz val="10"/><color rgb="FF3B2206"/><name val="Calibri"/><family val="2"/></font>' +
  '<font><sz val="9"/><name val="Calibri"/><family val="2"/></font>';

const look = (font: number, align: string, format = 0) =>
  `<xf numFmtId="${format}" fontId="${font}" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1" applyAlignment="1">` +
  `<alignment ${align} vertical="top"/></xf>`;

/** The styles of a workbook with those of the Evidence sheet behind them; without where they cannot be added. */
export function withEvidenceLooks(styles: string): { styles: string; looks: EvidenceLooks } {
  const root = xmlTree(styles);
  const font = childOf(root, isMain, "fonts")?.children.length ?? 0;
  const first = childOf(root, isMain, "cellXfs")?.children.length ?? 0;
  const withFonts = appended(styles, "fonts", FONTS);
  const looks = [
    look(font, ""),
    look(font + 1, 'wrapText="1"'),
    look(font + 2, 'wrapText="1"'),
    look(font + 2, 'horizontal="left" wrapText="1"'),
    look(font + 2, 'horizontal="left" wrapText="1"', MEASURE_FORMAT_NUMBER),
  ];
  const longer = withFonts && appended(withFonts, "cellXfs", looks.join(""));
  if (!longer) return { styles, looks: PLAIN };
  return {
    styles: counted(longer),
    looks: { title: first, heading: first + 1, text: first + 2, value: first + 3, measure: first + 4 },
  };
}

/** Takes the stated numbers of fonts and styles out, which need not be stated. */
function counted(styles: string): string {
  const root = xmlTree(styles);
  const lists = ["fonts", "cellXfs"].flatMap((name) => childOf(root, isMain, name) ?? []);
  return edited(
    styles,
    lists.map((list) => tagEdit(list, { count: null })),
  );
}
