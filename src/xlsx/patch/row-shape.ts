import { type Edit, edited } from "../parts/edits";
import { sheetContent } from "../parts/sheet-cells";
import { xmlTree } from "../parts/xml-tree";

const PIXELS_A_POINT = 4 / 3;

type Attributes = Record<string, string | null>;

function attributesOf(height: number | undefined, own: boolean, hidden: boolean | undefined): Attributes {
  return {
    ...(height !== undefined && { ht: String(height / PIXELS_A_POINT), ...(own && { customHeight: "1" }) }),
    ...(hidden !== undefined && { hidden: hidden ? "1" : null }),
  };
}

/** An opening tag of a row, whose attributes hold no `>`, with other attributes. */
function retagged(tag: string, changes: Attributes): string {
  let text = tag;
  for (const [name, value] of Object.entries(changes)) {
    const attribute = new RegExp(`\\s${name}=("[^"]*"|'[^']*')`);
    const written = value === null ? "" : ` ${name}="${value}"`;
    text = attribute.test(text) ? text.replace(attribute, written) : text.replace(/\s*(\/?>)$/, `${written}$1`);
  }
  return text;
}

/** A sheet's part with these heights of rows [px] and with rows hidden or shown; rows from 0. */
export function withRows(
  xml: string,
  texts: readonly string[],
  heights: Readonly<Record<number, number>> = {},
  hidden: Readonly<Record<number, boolean>> = {},
  fitted: readonly number[] = [],
): string {
  const places = [...new Set([...Object.keys(heights), ...Object.keys(hidden)])].map(Number).sort((a, b) => a - b);
  if (places.length === 0) return xml;
  const { rows, table } = sheetContent(xml, texts);
  const { prefix: p } = xmlTree(xml, (name) => name === "sheetData");
  const byNumber = new Map(rows.map((row) => [row.number, row]));
  const edits: Edit[] = [];
  const fresh: { before: number | undefined; text: string }[] = [];
  for (const place of places) {
    const changes = attributesOf(heights[place], !fitted.includes(place), hidden[place]);
    const row = byNumber.get(place + 1);
    if (row) {
      const end = xml.indexOf(">", row.start) + 1;
      edits.push({ start: row.start, end, text: retagged(xml.slice(row.start, end), changes) });
    } else {
      const text = retagged(`<${p}row r="${place + 1}"/>`, changes);
      fresh.push({ before: rows.find(({ number }) => number > place + 1)?.start, text });
    }
  }
  if (fresh.length > 0 && table.openEnd === table.end) {
    const text = `>${fresh.map((one) => one.text).join("")}</${p}sheetData>`;
    edits.push({ start: xml.lastIndexOf("/", table.end), end: table.end, text });
  } else {
    for (const { before, text } of fresh) {
      const at = before ?? table.closeStart;
      edits.push({ start: at, end: at, text });
    }
  }
  return edited(xml, edits);
}
