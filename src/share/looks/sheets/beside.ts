import { columnLetters } from "../../../cells/letters";
import { firstCell, placesOf } from "../../../cells/places";
import { addressParts, placeName } from "../../../cells/sheet-area";
import { isMain } from "../../../xlsx/parts/namespaces";
import type { BookSheet } from "../../../xlsx/parts/workbook-file";
import { childOf, childrenOf, type XmlElement } from "../../../xlsx/parts/xml-tree";
import { type Finding, misleading } from "../../finding";
import { wordsForNothing } from "../cells/cell-looks";
import type { FileLooks } from "../cells/file-looks";
import { ownLook } from "../cells/own-look";
import type { OwnSheet } from "./own-sheet";

const PAPER = "ffffff";
const OTHER_BESIDE = "has another colour or other lines than in the workbook";

/** Cells beside those of the workbook, over which its texts run on or which touch its figures, that have a colour or thick lines. */
export function besideFindings(
  { name, places, used, cells: own }: OwnSheet,
  sheet: BookSheet,
  frame: XmlElement,
  { cells }: FileLooks,
): Finding[] {
  const last = {
    row: Math.max(...used.map(({ row }) => row)),
    column: Math.max(...used.map(({ column }) => column)),
  };
  const mayBeRuled = new Set(own.flatMap((spec) => (ownLook(spec).edged ? placesOf(spec.at) : [firstCell(spec.at)])));
  const isPlain = (style: number) => (cells[style]?.fill ?? PAPER) === PAPER && !isRuled(style);
  const isRuled = (style: number) => cells[style]?.edged === true || cells[style]?.crossed === true;
  const rows = sheet.rows
    .filter(({ number, style = 0 }) => number <= last.row && !isPlain(style))
    .map(({ number }) => misleading(`${name}, row ${number}`, OTHER_BESIDE, "", "", "beside"));
  const words = [...sheet.cells].flatMap(([address, cell]) => {
    const said = places.has(address) ? "" : wordsForNothing(cell, cells[Number(cell.given.get("s") ?? 0)]);
    return said === ""
      ? []
      : [
          misleading(
            placeName(name, address),
            `shows "${said}" by its number format, and holds nothing`,
            "",
            said,
            "stray",
          ),
        ];
  });
  const beside = [...sheet.cells].flatMap(([address, { given }]) => {
    const style = Number(given.get("s") ?? 0);
    if (places.has(address) ? mayBeRuled.has(address) || !isRuled(style) : isPlain(style)) return [];
    const { row, column } = addressParts(address);
    const isNear = row <= last.row && column <= last.column + 1;
    return isNear ? [misleading(placeName(name, address), OTHER_BESIDE, "", "", "beside")] : [];
  });
  const columns = childrenOf(childOf(frame, isMain, "cols"), isMain, "col")
    .filter(({ given }) => Number(given.get("min")) <= last.column && !isPlain(Number(given.get("style") ?? 0)))
    .map(({ given }) =>
      misleading(`${name}, column ${columnLetters(Number(given.get("min")))}`, OTHER_BESIDE, "", "", "beside"),
    );
  return [...words, ...rows, ...columns, ...beside];
}
