import type { CellLook, ForgedFile } from "./forged-file";
import type { Forgery } from "./kinds";

export const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
export const COMPATIBLE = "http://schemas.openxmlformats.org/markup-compatibility/2006";
export const MAIN = "xl/workbook.xml";
export const CHART = "xl/charts/chart1.xml";
export const DRAWING = "xl/drawings/drawing1.xml";

export type Make = (file: ForgedFile) => void;
export type Kind = readonly [string, Make];

export const forgeries = (kinds: readonly Kind[]): Forgery[] => kinds.map(([kind, make]) => ({ kind, make }));
export const accusingNobody = (kinds: readonly Kind[]): Forgery[] =>
  kinds.map(([kind, make]) => ({ kind, make, named: true }));

export const both =
  (...makes: Make[]): Make =>
  (file) => {
    for (const make of makes) make(file);
  };
export const part =
  (name: string, from: string | RegExp, to: string): Make =>
  (file) =>
    file.change(name, from, to);
export const sheet =
  (name: string, from: string | RegExp, to: string): Make =>
  (file) =>
    file.onSheet(name, from, to);
export const book =
  (from: string | RegExp, to: string): Make =>
  (file) =>
    file.inBook(from, to);
export const look =
  (name: string, change: CellLook): Make =>
  (file) =>
    file.look(...file.place(name), change);
export const at =
  (name: string, make: (file: ForgedFile, sheet: string, address: string) => void): Make =>
  (file) =>
    make(file, ...file.place(name));

export const lookAt =
  (name: string, address: string, change: CellLook): Make =>
  (file) =>
    file.look(name, address, change);
export const font = (from: RegExp | string, to: string): CellLook => ({ font: (own) => own.replace(from, to) });
export const colour = (given: string): CellLook => ({
  font: (own) => own.replace(/<color[^>]*\/>/, "").replace(/(<sz [^>]*\/>)/, `$1<color ${given}/>`),
});
export const everyRow =
  (name: string, height: (number: number) => number | string): Make =>
  (file) =>
    file.parts.set(
      file.part(name),
      file.parts
        .get(file.part(name))!
        .replace(
          /<row r="(\d+)"(?: ht="[^"]*")?(?: customHeight="1")?/g,
          (_, number: string) => `<row r="${number}" ht="${height(Number(number))}" customHeight="1"`,
        ),
    );
export const rowOf = (name: string, row: number, given: string): Make =>
  sheet(name, new RegExp(`<row r="${row}"(?: ht="[^"]*")?(?: customHeight="1")?`), `<row r="${row}" ${given}`);

/** Adds a sheet with this root element. */
export const addedSheet =
  (name: string, inside: string, kind = "worksheet"): Make =>
  (file) => {
    const xml = `<${kind} xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">${inside}</${kind}>`;
    file.related(MAIN, "rId96", `${OFFICE}/${kind}`, `${kind}s/sheet96.xml`, xml);
    file.inBook("</sheets>", `<sheet name="${name}" sheetId="96" r:id="rId96"/></sheets>`);
  };
/** Puts a drawing on a sheet. */
export const drawing =
  (name: string, anchor: string): Make =>
  (file) => {
    file.onSheet(name, "</headerFooter>", `</headerFooter><drawing xmlns:r="${OFFICE}" r:id="rId79"/>`);
    const xml = `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main">${anchor}</xdr:wsDr>`;
    file.related(file.part(name), "rId79", `${OFFICE}/drawing`, "../drawings/drawing79.xml", xml);
  };
/** Puts a drawing of the older kind on Results. */
export const olderDrawing =
  (shapes: string): Make =>
  (file) => {
    file.onSheet("Results", "</headerFooter>", `</headerFooter><legacyDrawing xmlns:r="${OFFICE}" r:id="rId95"/>`);
    const xml = `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:x="urn:schemas-microsoft-com:office:excel">${shapes}</xml>`;
    file.related(file.part("Results"), "rId95", `${OFFICE}/vmlDrawing`, "../drawings/vmlDrawing9.vml", xml);
  };
export const PICTURE = "<xdr:pic/>";
const corner = (name: string, column: number, row: number, offset = 0) =>
  `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>${offset}</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>${offset}</xdr:rowOff></xdr:${name}>`;
export const from = (column: number, row: number, offset = 0) => corner("from", column, row, offset);
export const to = (column: number, row: number) => corner("to", column, row);
export const two = (inside: string, begin: string, end: string) =>
  `<xdr:twoCellAnchor>${begin}${end}${inside}<xdr:clientData/></xdr:twoCellAnchor>`;
