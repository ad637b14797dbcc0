import { parseA1Ref } from "@borgar/fx/xlsx";
import type { Shift } from "../desk-file/book";
import { type Edit, tagEdit } from "../parts/edits";
import { within, type XmlElement } from "../parts/xml-tree";
import { shiftedList, shiftedPlace, shiftedReference } from "./shift";

function leftOf(reference: string): number {
  const parsed = parseA1Ref(reference);
  return (parsed && "range" in parsed && parsed.range?.left) || 0;
}

/** A filter's columns, which it counts from its own first one: those of deleted columns go. */
function columns(filter: XmlElement, from: string, to: string, shift: Shift): Edit[] {
  return filter.children.flatMap((one) => {
    if (one.name !== "filterColumn" && one.name !== "columnFilter") return [];
    const moved = shiftedPlace(leftOf(from) + Number(one.given.get("colId")), shift);
    if (moved === null) return [{ start: one.start, end: one.end, text: "" }];
    const colId = String(moved - leftOf(to));
    return colId === one.given.get("colId") ? [] : [tagEdit(one, { colId })];
  });
}

/** The edits that let a filter follow inserted or deleted rows or columns; with its last cell it goes. */
export function shiftedFilters(filter: XmlElement, shift: Shift): Edit[] {
  const ref = filter.given.get("ref") ?? "";
  const moved = shiftedReference(ref, shift);
  if (moved === null) return [{ start: filter.start, end: filter.end, text: "" }];
  const sorted = [...within(filter)].flatMap((one) => {
    const held = one.given.get("ref");
    const place = held === undefined ? null : shiftedList(held, shift);
    return place === null || place === held ? [] : [tagEdit(one, { ref: place })];
  });
  const own = moved === ref ? [] : [tagEdit(filter, { ref: moved })];
  return [...own, ...(shift.axis === "columns" ? columns(filter, ref, moved, shift) : []), ...sorted];
}
