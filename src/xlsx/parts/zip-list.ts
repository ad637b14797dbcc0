import { InputError } from "../../core/errors";

const END = 0x06054b50;
const LONG_END = 0x06064b50;
/** The longer end with what leads to it. */
const LONG_END_BYTES = 56 + 20;
const END_BYTES = 22;
const LONGEST_COMMENT = 0xffff;
/** Stand for a number that is given in a longer field. */
const LONG_COUNT = 0xffff;
export const LONG_SIZE = 0xffffffff;
const LONG_FIELD = 1;

export const broken = (why: string) => new InputError("the file", "be an unbroken .xlsx workbook", why);

/** An archive's list of its files (APPNOTE 4.3.16, 4.3.14). */
export interface ZipList {
  count: number;
  start: number;
  end: number;
}

function endOfArchive(view: DataView): number {
  const last = view.byteLength - END_BYTES;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at -= 1) {
    if (view.getUint32(at, true) !== END) continue;
    if (at + END_BYTES + view.getUint16(at + 20, true) !== view.byteLength)
      throw broken("bytes behind the archive's end");
    return at;
  }
  throw broken("an archive without an end");
}

const longNumber = (view: DataView, at: number): number => Number(view.getBigUint64(at, true));

/** Where the list of an archive is: by its longer end, where there is one, with which the other agrees or is all ones. */
export function zipList(view: DataView): ZipList {
  const end = endOfArchive(view);
  const long = end - LONG_END_BYTES;
  const isLong = long >= 0 && view.getUint32(long, true) === LONG_END;
  const stated = (short: number, none: number, at: number) => {
    const said = isLong ? longNumber(view, long + at) : short;
    if (short !== said && short !== none) throw broken("an archive whose two ends differ");
    return said;
  };
  const start = stated(view.getUint32(end + 16, true), LONG_SIZE, 48);
  const size = stated(view.getUint32(end + 12, true), LONG_SIZE, 40);
  const listEnd = isLong ? long : end;
  if (start + size !== listEnd) throw broken("a list of parts in another place");
  return { count: stated(view.getUint16(end + 10, true), LONG_COUNT, 32), start, end: listEnd };
}

/** Where the content of a field behind a listed file is, and where it ends; null where there is none of the kind. */
function fieldOf(view: DataView, kind: number, start: number, length: number): [from: number, to: number] | null {
  const end = Math.min(start + length, view.byteLength);
  for (let at = start; at + 4 <= end; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) === kind) return [at + 4, Math.min(at + 4 + view.getUint16(at + 2, true), end)];
  }
  return null;
}

export const hasField = (view: DataView, kind: number, start: number, length: number): boolean =>
  fieldOf(view, kind, start, length) !== null;

/** Numbers of a listed file; those that are all ones follow each other in its longer field (APPNOTE 4.5.3). */
export function longNumbers(view: DataView, numbers: readonly number[], start: number, length: number): number[] {
  let [from, to] = fieldOf(view, LONG_FIELD, start, length) ?? [0, 0];
  return numbers.map((number) => {
    if (number !== LONG_SIZE) return number;
    if (from + 8 > to) throw broken("a damaged list of parts");
    from += 8;
    return longNumber(view, from - 8);
  });
}
