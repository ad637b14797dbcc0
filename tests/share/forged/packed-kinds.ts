import type { Forgery } from "./kinds";

const u16 = (bytes: Uint8Array, at: number) => bytes[at]! | (bytes[at + 1]! << 8);
const ending = (bytes: Uint8Array) => bytes.length - 22;
const u32 = (bytes: Uint8Array, at: number) => (u16(bytes, at) | (u16(bytes, at + 2) << 16)) >>> 0;
const inFour = (value: number) => [value & 255, (value >> 8) & 255, (value >> 16) & 255, value >>> 24];

function patched(bytes: Uint8Array, changes: readonly (readonly [number, number])[]): Uint8Array {
  const copy = bytes.slice();
  for (const [at, value] of changes) copy[at] = value;
  return copy;
}
const joined = (...all: Uint8Array[]) => new Uint8Array(Buffer.concat(all));
/** An archive with a part of its own in front of its list, to which the list does not lead. */
function withUnlisted(bytes: Uint8Array): Uint8Array {
  const end = bytes.length - 22;
  const list = u32(bytes, end + 16);
  const name = new TextEncoder().encode("xl/worksheets/sheet5.xml");
  const head = new Uint8Array(30);
  head.set([0x50, 0x4b, 3, 4, 20]);
  head[26] = name.length;
  const made = [bytes.slice(0, list), head, name, bytes.slice(list)];
  const all = new Uint8Array(Buffer.concat(made));
  all.set(inFour(list + head.length + name.length), all.length - 6);
  return all;
}

/** The bytes with another method in the first part's own header. */
function withOtherHeader(bytes: Uint8Array): Uint8Array {
  const copy = bytes.slice();
  copy[8] = copy[8] === 0 ? 8 : 0;
  return copy;
}

const PACKED: readonly (readonly [string, (bytes: Uint8Array) => Uint8Array])[] = [
  ["an archive with bytes in front", (bytes) => joined(new Uint8Array(64), bytes)],
  ["an archive behind another", (bytes) => joined(bytes, bytes)],
  [
    "an archive with a second end in its comment",
    (bytes) => {
      const end = bytes.slice(ending(bytes));
      const first = patched(end, [[20, 22]]);
      return joined(bytes.slice(0, ending(bytes)), first, patched(end, [[20, 7]]));
    },
  ],
  [
    "an archive whose list holds one part more than it counts",
    (bytes) => {
      const end = ending(bytes);
      const count = u16(bytes, end + 10) - 1;
      return patched(bytes, [
        [end + 8, count & 255],
        [end + 10, count & 255],
      ]);
    },
  ],
  ["an archive with a part that its list does not name", withUnlisted],
  ["a part that is packed otherwise than the list says", withOtherHeader],
  ["an archive with bytes behind", (bytes) => joined(bytes, new Uint8Array(10))],
];

/** Ways to forge the archive that a copy is packed in. */
export const PACKED_KINDS: readonly Forgery[] = PACKED.map(([kind, packed]) => ({ kind, make: () => {}, packed }));
