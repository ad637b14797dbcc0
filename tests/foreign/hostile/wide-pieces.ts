import { strFromU8, strToU8 } from "fflate";
import { columnLetters } from "../../../src/cells/letters";
import { foreignParts } from "../foreign-parts";
import { type Parts, SHEET } from "./pieces";

export const ALL = "A1:XFD1048576";
export const NEARLY_ALL = "A1:XFC1048575";
/** The first of the rows that are added. */
const FIRST = 100;

export type Change = [part: string, from: string | RegExp, to: string];

/** The parts of the file with changes that all have to fit. */
export function altered(...changes: Change[]): Parts {
  const parts = foreignParts();
  for (const [part, from, to] of changes) {
    const text = strFromU8(parts[part]!);
    const after = text.replace(from, () => to);
    if (after === text) throw new Error(`${part} holds no ${from}`);
    parts[part] = strToU8(after);
  }
  return parts;
}

export const times = (count: number, text: (i: number) => string, between = "") =>
  Array.from({ length: count }, (_, i) => text(i)).join(between);
const inSheet = (mark: string, text: string): Change => [SHEET, mark, text + mark];

export const format = (ranges: string, formula = "A1&gt;25", priority = 9) =>
  `<conditionalFormatting sqref="${ranges}"><cfRule type="expression" dxfId="0" priority="${priority}"><formula>${formula}</formula></cfRule></conditionalFormatting>`;
export const formats = (text: string) => inSheet("<dataValidations", text);
export const check = (ranges: string, least = 0) =>
  `<dataValidation type="decimal" operator="greaterThan" allowBlank="1" sqref="${ranges}"><formula1>${least}</formula1></dataValidation>`;
export const checks = (text: string) => inSheet("</dataValidations>", text);
/** Without its own checks and conditional formats. */
export const noChecks: Change = [SHEET, /<conditionalFormatting.*<\/dataValidations>/s, ""];
export const columns = (text: string): Change => [SHEET, /<cols>.*<\/cols>/, `<cols>${text}</cols>`];
export const everyColumn = times(16383, (i) => `${columnLetters(i + 1)}1:${columnLetters(i + 1)}1048576`, " ");
export const merges = (text: string) => inSheet("<conditionalFormatting", `<mergeCells>${text}</mergeCells>`);

export const row = (number: number, content: string, given = "") => `<row r="${number}"${given}>${content}</row>`;
/** Rows from 100 on. */
export const rows = (count: number, content: (number: number) => string, given = "") =>
  inSheet(
    "</sheetData>",
    times(count, (i) => row(FIRST + i, content(FIRST + i), given)),
  );
export const formulas = (count: number, formula: (row: number) => string) =>
  rows(count, (i) => `<c r="B${i}"><f>${formula(i)}</f><v>1</v></c>`);
export const array = (ref: string, formula = "1") =>
  `<c r="${ref.slice(0, ref.indexOf(":"))}"><f t="array" ref="${ref}">${formula}</f><v>1</v></c>`;
export const cellAt = (address: string) =>
  inSheet("</sheetData>", row(Number(/\d+/.exec(address)), `<c r="${address}"><v>7</v></c>`));
export const lastRow = (given: string) => inSheet("</sheetData>", row(1_048_576, "", given));

const PICTURE = /<xdr:twoCellAnchor[^>]*><xdr:from>(?:(?!<xdr:from>).)*<xdr:pic>.*?<\/xdr:twoCellAnchor>/s;
const DRAWN =
  '<xdr:pic><xdr:nvPicPr><xdr:cNvPr id="5" name="Photo"/><xdr:cNvPicPr/></xdr:nvPicPr><xdr:blipFill><a:blip r:embed="rId3"/></xdr:blipFill><xdr:spPr/></xdr:pic><xdr:clientData/>';
type Spot = [column: number, row: number];
const spot = (tag: string, [column, line]: Spot) =>
  `<xdr:${tag}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${line}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${tag}>`;
const picture = (anchor: string): Change => ["xl/drawings/drawing1.xml", PICTURE, anchor];
export const pictureBetween = (from: Spot, to: Spot) =>
  picture(`<xdr:twoCellAnchor>${spot("from", from)}${spot("to", to)}${DRAWN}</xdr:twoCellAnchor>`);
export const pictureOf = (size: string) =>
  picture(`<xdr:oneCellAnchor>${spot("from", [1, 1])}<xdr:ext cx="${size}" cy="${size}"/>${DRAWN}</xdr:oneCellAnchor>`);
