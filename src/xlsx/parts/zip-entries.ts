import { InputError } from "../../core/errors";

/** One file inside an archive, as the archive's own list describes it. */
export interface ZipEntry {
  name: string;
  /** Squeezed with the usual method, or stored as it is. */
  deflated: boolean;
  crc: number;
  /** Stated size when unzipped [bytes]. */
  size: number;
  /** What is in the archive for it. */
  data: Uint8Array;
}

const END = 0x06054b50;
const LISTED = 0x02014b50;
const LOCAL = 0x04034b50;
const LONG_END = 0x06064b50;
/** The longer end with what leads to it. */
const LONG_END_BYTES = 56 + 20;
const UNICODE_NAME = 0x7075;
const STRANGE_NAME = /\\|^\/|(^|\/)\.{1,2}(\/|$)|%[0-9a-f]{2}|\.piece$/i;
const END_BYTES = 22;
const LISTED_BYTES = 46;
const LOCAL_BYTES = 30;
const LONGEST_COMMENT = 0xffff;
const ENCRYPTED = 1;
/** The sizes stand behind the part, not in front of it. */
const SIZES_BEHIND = 8;
/** Stands for a size that is given in a longer field. */
const LONG_SIZE = 0xffffffff;
const STORED = 0;
const DEFLATED = 8;

const broken = (why: string) => new InputError("the file", "be an unbroken .xlsx workbook", why);

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

/** What the archive itself says about how many files it holds. */
export function statedCount(bytes: Uint8Array): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return view.getUint16(endOfArchive(view) + 10, true);
}

/**
 * The files that an archive lists, without unzipping any.
 *
 * @param bytes A .zip archive
 * @returns Its entries in the order of its list
 * @throws InputError if the archive is broken or encrypted, or an entry does not lie where the list says
 */
export function zipEntries(bytes: Uint8Array): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfArchive(view);
  const entries: ZipEntry[] = [];
  const spans: Span[] = [];
  const names = new Set<string>();
  let at = view.getUint32(end + 16, true);
  if (listEnd(view, end) !== at + view.getUint32(end + 12, true)) throw broken("a list of parts in another place");
  for (let left = view.getUint16(end + 10, true); left > 0; left -= 1) {
    if (at + LISTED_BYTES > end || view.getUint32(at, true) !== LISTED) throw broken("a damaged list of parts");
    const nameBytes = view.getUint16(at + 28, true);
    const name = nameAt(bytes, at + LISTED_BYTES, nameBytes);
    if (STRANGE_NAME.test(name)) throw broken("a part whose name programs read in two ways");
    if (names.has(name.toLowerCase())) throw broken("two parts of one name");
    names.add(name.toLowerCase());
    if (view.getUint16(at + 8, true) & ENCRYPTED) throw new InputError("the file", "have no password", name);
    const method = view.getUint16(at + 10, true);
    if (method !== STORED && method !== DEFLATED) throw broken("a part packed in an unknown way");
    const local = view.getUint32(at + 42, true);
    const data = dataOf(bytes, view, name, local, view.getUint32(at + 20, true));
    if (!saysTheSame(view, at, local)) throw broken("a part that is packed in two ways");
    spans.push({ start: local, end: data.byteOffset - bytes.byteOffset + data.length });
    entries.push({
      name,
      deflated: method === DEFLATED,
      crc: view.getUint32(at + 16, true),
      size: view.getUint32(at + 24, true),
      data,
    });
    const extra = at + LISTED_BYTES + nameBytes;
    if (givesOtherName(view, extra, view.getUint16(at + 30, true))) throw broken("a part with a second name");
    at = extra + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  if (at !== listEnd(view, end)) throw broken("parts that its list does not count");
  if (holdsUnlisted(view, spans, view.getUint32(end + 16, true))) throw broken("a part that its list does not name");
  return entries;
}

/** Where a part lies in the archive, with the header in front of it. */
interface Span {
  start: number;
  end: number;
}

/** Whether the header in front of a part says of its packing what the archive's list says. */
function saysTheSame(view: DataView, listed: number, local: number): boolean {
  const flags = view.getUint16(local + 6, true);
  if (flags & ENCRYPTED || view.getUint16(local + 8, true) !== view.getUint16(listed + 10, true)) return false;
  if (flags & SIZES_BEHIND) return true;
  return [0, 4, 8].every((at) => {
    const said = view.getUint32(local + 14 + at, true);
    return said === view.getUint32(listed + 16 + at, true) || (at > 0 && said === LONG_SIZE);
  });
}

/** Whether between the listed parts lies the header of another one, which programs that go by headers read. */
function holdsUnlisted(view: DataView, spans: readonly Span[], list: number): boolean {
  let from = 0;
  for (const { start, end } of [...spans, { start: list, end: list }].sort((one, other) => one.start - other.start)) {
    for (let at = from; at + 4 <= start; at += 1) if (view.getUint32(at, true) === LOCAL) return true;
    from = Math.max(from, end);
  }
  return false;
}

/** Where the list of parts ends: before the archive's end, or before the longer form of it. */
function listEnd(view: DataView, end: number): number {
  const long = end - LONG_END_BYTES;
  return long >= 0 && view.getUint32(long, true) === LONG_END ? long : end;
}

/** Whether the fields behind a listed name give the part another one (APPNOTE 4.6.9). */
function givesOtherName(view: DataView, start: number, length: number): boolean {
  const end = Math.min(start + length, view.byteLength);
  for (let at = start; at + 4 <= end; at += 4 + view.getUint16(at + 2, true)) {
    if (view.getUint16(at, true) === UNICODE_NAME) return true;
  }
  return false;
}

function nameAt(bytes: Uint8Array, at: number, length: number): string {
  return new TextDecoder().decode(bytes.subarray(at, at + length));
}

/** The bytes of an entry; its own header must name it as the list does. */
function dataOf(bytes: Uint8Array, view: DataView, name: string, at: number, length: number): Uint8Array {
  if (at + LOCAL_BYTES > bytes.length || view.getUint32(at, true) !== LOCAL) throw broken("a part that is not there");
  const nameBytes = view.getUint16(at + 26, true);
  if (nameAt(bytes, at + LOCAL_BYTES, nameBytes) !== name) throw broken("a part under another name");
  const start = at + LOCAL_BYTES + nameBytes + view.getUint16(at + 28, true);
  if (start + length > bytes.length) throw broken("a part that is cut off");
  return bytes.subarray(start, start + length);
}
