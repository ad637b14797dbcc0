import { InputError } from "../../core/errors";
import { broken, hasField, LONG_SIZE, longNumbers, zipList } from "./zip-list";

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

const LISTED = 0x02014b50;
const LOCAL = 0x04034b50;
const UNICODE_NAME = 0x7075;
const STRANGE_NAME = /\\|^\/|(^|\/)\.{1,2}(\/|$)|%[0-9a-f]{2}|\.piece$/i;
const LISTED_BYTES = 46;
const LOCAL_BYTES = 30;
const ENCRYPTED = 1;
/** The sizes stand behind the part, not in front of it. */
const SIZES_BEHIND = 8;
const STORED = 0;
const DEFLATED = 8;

const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** What the archive itself says about how many files it holds. */
export const statedCount = (bytes: Uint8Array): number => zipList(viewOf(bytes)).count;

/**
 * The files that an archive lists, without unzipping any.
 *
 * @param bytes A .zip archive
 * @returns Its entries in the order of its list
 * @throws InputError if the archive is broken or encrypted, or an entry does not lie where the list says
 */
export function zipEntries(bytes: Uint8Array): ZipEntry[] {
  const view = viewOf(bytes);
  const list = zipList(view);
  const entries: ZipEntry[] = [];
  const spans: Span[] = [];
  const names = new Set<string>();
  let at = list.start;
  for (let left = list.count; left > 0; left -= 1) {
    if (at + LISTED_BYTES > list.end || view.getUint32(at, true) !== LISTED) throw broken("a damaged list of parts");
    const nameBytes = view.getUint16(at + 28, true);
    const name = nameAt(bytes, at + LISTED_BYTES, nameBytes);
    if (STRANGE_NAME.test(name)) throw broken("a part whose name programs read in two ways");
    if (names.has(name.toLowerCase())) throw broken("two parts of one name");
    names.add(name.toLowerCase());
    if (view.getUint16(at + 8, true) & ENCRYPTED) throw new InputError("the file", "have no password", name);
    const method = view.getUint16(at + 10, true);
    if (method !== STORED && method !== DEFLATED) throw broken("a part packed in an unknown way");
    const extra = [at + LISTED_BYTES + nameBytes, view.getUint16(at + 30, true)] as const;
    const short = [24, 20, 42].map((field) => view.getUint32(at + field, true));
    const [size, packed, local] = longNumbers(view, short, ...extra) as [number, number, number];
    const crc = view.getUint32(at + 16, true);
    const data = dataOf(bytes, view, name, local, packed);
    if (!saysTheSame(view, local, { method, numbers: [crc, packed, size] }))
      throw broken("a part that is packed in two ways");
    spans.push({ start: local, end: data.byteOffset - bytes.byteOffset + data.length });
    entries.push({ name, deflated: method === DEFLATED, crc, size, data });
    if (hasField(view, UNICODE_NAME, ...extra)) throw broken("a part with a second name");
    at = extra[0] + extra[1] + view.getUint16(at + 32, true);
  }
  if (at !== list.end) throw broken("parts that its list does not count");
  if (holdsUnlisted(view, spans, list.start)) throw broken("a part that its list does not name");
  return entries;
}

/** Where a part lies in the archive, with the header in front of it. */
interface Span {
  start: number;
  end: number;
}

/** Whether the header in front of a part says of its packing what the archive's list says: its code, size packed, size. */
function saysTheSame(view: DataView, local: number, listed: { method: number; numbers: number[] }): boolean {
  const flags = view.getUint16(local + 6, true);
  if (flags & ENCRYPTED || view.getUint16(local + 8, true) !== listed.method) return false;
  if (flags & SIZES_BEHIND) return true;
  return listed.numbers.every((number, i) => {
    const said = view.getUint32(local + 14 + 4 * i, true);
    return said === number || (i > 0 && said === LONG_SIZE);
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
